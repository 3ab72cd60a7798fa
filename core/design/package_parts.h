#pragma once
// What a package holds beside boards and glazing: the strips of a spacer, and the board that a float is raised on.
#include <optional>

#include "core/design/job.h"
#include "core/design/layout.h"

namespace core::design {

// A strip lies behind the lip by this much, or it is seen from one side. Common practice, no source.
inline constexpr Length kBehindLip = Length::wholeMillimetres(2);
// A narrower strip cannot be fixed. Common practice, no source.
inline constexpr Length kNarrowestSpacer = Length::wholeMillimetres(2);
// A support stays behind each edge of the sheet by this much. Common practice, no source.
inline constexpr Length kBehindSheet = Length::wholeMillimetres(10);

// Returns whether a spacer holds the glazing off the face.
bool hasSpacer(const Job& job);

// What the lip hides at the top, where it hides least: the package settles on the lower lip, and all the play is above.
Length hiddenAtTop(const Rebate& rebate);

// Returns how wide a spacer may be to stay out of sight on every side; nothing where no strip is narrow enough.
std::optional<Length> widestHiddenSpacer(const Rebate& rebate);

// Returns the width entered; otherwise the widest that is hidden, or the narrowest that can be fixed where none is.
Length spacerWidth(const Job& job);

// Returns what is left between the artwork and the glazing: boards and spacer, less support and artwork. Below nothing
// the artwork would have to lie in the glazing.
Length airOf(const Job& job);

// The strips of a spacer: two as long as the mount is wide, and two between them.
struct SpacerStrips {
  Length width;
  double horizontal = 0, vertical = 0;  // mm
};
// Nothing where the piece has no spacer, or strips so wide would meet in the middle.
std::optional<SpacerStrips> spacerOf(const Job& job, const Layout& layout);

struct Support {
  Length thickness, width, height;
};
// Nothing where the artwork is not raised: its sheet is covered, lies flat, or is too small for a support.
std::optional<Support> supportOf(const Job& job);

}  // namespace core::design
