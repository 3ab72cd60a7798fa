#include "core/design/setting_out.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace core::design {
namespace {

using geometry::Arc;
using geometry::OvalArc;
using geometry::Point;
using geometry::Segment;

constexpr double kDegrees = 180 / std::numbers::pi;
// Points along a quarter of an oval, besides its ends.
constexpr int kOrdinates = 9;

void addOval(const OvalArc& oval, bool innermost, SettingOut& out) {
  if (innermost) {
    SettingOval setting;
    setting.semiMajor = std::max(oval.semiX, oval.semiY);
    setting.semiMinor = std::min(oval.semiX, oval.semiY);
    setting.focus = std::sqrt(setting.semiMajor * setting.semiMajor - setting.semiMinor * setting.semiMinor);
    setting.string = 2 * setting.semiMajor + 2 * setting.focus;
    out.oval = setting;
  }
  for (int i = 1; i <= kOrdinates; ++i) {
    // Left of the centre line as seen from the face is right of it from the back; up is towards less y.
    const double t = std::numbers::pi + std::numbers::pi / 2 * i / (kOrdinates + 1);
    out.ordinates.push_back({i, geometry::oval::pointAt(oval, t)});
  }
}

}  // namespace

double fromAxis(const BoardLayout& board, Point point) { return board.axis - point.x; }
double fromSpringing(const BoardLayout& board, Point point) { return board.springing - point.y; }

SettingOut settingOut(const Layout& layout, std::size_t board) {
  SettingOut out;
  if (!layout.shaped) return out;
  const std::vector<Segment>& segments = layout.boards[board].sightOutline.segments();
  const int count = static_cast<int>(segments.size());
  for (int i = 0; i < count; ++i) {
    const Segment& segment = segments[static_cast<std::size_t>(i)];
    if (const auto* oval = std::get_if<OvalArc>(&segment)) {
      addOval(*oval, board + 1 == layout.boards.size(), out);
      continue;
    }
    out.points.push_back({i + 1, geometry::startOf(segment)});
    if (const auto* arc = std::get_if<Arc>(&segment)) {
      out.arcs.push_back({static_cast<int>(out.arcs.size()) + 1, arc->centre, arc->radius,
                          std::fabs(arc->sweep) * kDegrees, i + 1, (i + 1) % count + 1});
    }
  }
  return out;
}

}  // namespace core::design
