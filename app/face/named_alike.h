#pragma once
// Faces that bear another family's name as well. Debian's fixed-pitch B612 Mono also calls itself B612, and which of the
// two a program then shows by that name is chance.

namespace app::face {

// Leaves a family out of what this program finds among the machine's fonts. To be called before the first text is
// measured. Where fonts are not found through fontconfig it does nothing: families keep apart there.
void leaveOutFamily(const char* family);

}  // namespace app::face
