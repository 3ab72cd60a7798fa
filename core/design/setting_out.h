#pragma once
// The measures a maker needs to draw a board's opening on its back with compass and rule: every joint and corner of the
// outline as a point, every arc by its centre, radius and the points it runs between, and of an oval its axes, foci and
// points along it.
#include <optional>
#include <vector>

#include "core/design/layout.h"

namespace core::design {

// Numbered from the springing point on the marked corner's side, over the head. Their coordinates are on the mount as
// seen from the face; fromAxis and fromSpringing give them as seen from the back.
struct SettingPoint {
  int number = 0;
  geometry::Point at;
};

struct SettingArc {
  int number = 0;
  geometry::Point centre;
  double radius = 0;
  double sweep = 0;      // degrees, > 0
  int from = 0, to = 0;  // numbers of points; the same for a whole circle
};

// Set for the innermost board alone: only its opening is an ellipse, the others run parallel to one.
struct SettingOval {
  double semiMajor = 0, semiMinor = 0;
  double focus = 0;   // each from the middle, along the longer axis
  double string = 0;  // length of the loop round both foci and the pencil
};

struct SettingOut {
  std::vector<SettingArc> arcs;
  std::vector<SettingPoint> points;
  std::optional<SettingOval> oval;
  std::vector<SettingPoint> ordinates;  // of an oval, in the quarter right of the centre line and above, from the back
};

// Returns the opening marked on the back: the sight outline. Empty for a plain rectangle.
SettingOut settingOut(const Layout& layout, std::size_t board);

// Signed, as seen from the back: right of the centre line and above the springing line are positive.
double fromAxis(const BoardLayout& board, geometry::Point point);
double fromSpringing(const BoardLayout& board, geometry::Point point);

}  // namespace core::design
