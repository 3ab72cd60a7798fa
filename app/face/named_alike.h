#pragma once
// Faces that bear another family's name as well. Debian's fixed-pitch B612 Mono also calls itself B612, and it is
// chance which of the two a program then shows by that name.

namespace app::face {

// Leaves a family out of what this program finds among the machine's fonts. Call it before the first text is measured.
// Where fonts are not found through fontconfig it does nothing, since families are not mixed up there.
void leaveOutFamily(const char* family);

}  // namespace app::face
