#include "core/geometry/window_form.h"

#include <algorithm>

#include "core/geometry/heads.h"

namespace core::geometry {
namespace {

using base::Message;
using base::Millimetres;

void addStraight(std::vector<Segment>& segments, Point from, Point to) {
  if (!(from == to)) segments.push_back(Straight{from, to});
}

Point startAt(const std::vector<Segment>& segments, std::size_t index) { return startOf(segments[index]); }

// The four corners cut by something that begins and ends `cut` from each corner.
template <typename Corner>
WindowForm cornered(double width, double height, double cut, Corner corner) {
  const double x = width / 2;
  const double y = height / 2;
  // Clockwise from the top left; `in` points from the corner towards the middle.
  const struct {
    Point at, in;
  } corners[] = {{{-x, -y}, {1, 1}}, {{x, -y}, {-1, 1}}, {{x, y}, {-1, -1}}, {{-x, y}, {1, -1}}};
  std::vector<Segment> pieces;
  for (int i = 0; i < 4; ++i) {
    const Point at = corners[i].at;
    const Point in = corners[i].in;
    const Point alongX{at.x + in.x * cut, at.y};
    const Point alongY{at.x, at.y + in.y * cut};
    // Coming clockwise, the top left and the bottom right are entered along y.
    const bool entersAlongY = i % 2 == 0;
    pieces.push_back(corner(at, entersAlongY ? alongY : alongX, entersAlongY ? alongX : alongY,
                            Point{at.x + in.x * cut, at.y + in.y * cut}));
  }
  std::vector<Segment> segments;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    segments.push_back(pieces[i]);
    addStraight(segments, endOf(pieces[i]), startAt(pieces, (i + 1) % pieces.size()));
  }
  return {Outline(std::move(segments)), -y + cut};
}

base::Result<WindowForm, ShapeProblem> withCorners(const ShapeEntry& entry, double width, double height) {
  const double cut = entry.corner.inMillimetres();
  const double most = std::min(width, height) / 2;
  if (cut > most) {
    return ShapeProblem{"corner", Message("shape.corner-too-large")
                                      .with("value", Millimetres{cut})
                                      .with("most", Millimetres{most})
                                      .with("by", Millimetres{cut - most})};
  }
  return cornered(width, height, cut, [&](Point corner, Point from, Point to, Point within) -> Segment {
    if (entry.shape == Shape::Rounded) return arcAbout(within, from, to, true);
    if (entry.shape == Shape::Scalloped) return arcAbout(corner, from, to, false);
    return Straight{from, to};
  });
}

WindowForm ovalForm(double width, double height) {
  OvalArc oval;
  oval.semiX = width / 2;
  oval.semiY = height / 2;
  oval.sweep = 2 * std::acos(-1.0);
  return {Outline({oval}), 0};
}

WindowForm roundForm(double width) {
  const Point left{-width / 2, 0};
  return {Outline({arcAbout({}, left, left, true)}), 0};
}

base::Result<WindowForm, ShapeProblem> arch(const ShapeEntry& entry, double width, double height) {
  auto made = detail::head(entry, width);
  if (!made) return made.error();
  detail::HeadOutline head = std::move(made).value();
  const double jamb = height - head.rise;
  if (jamb < -1e-9) {
    const bool entered = entry.rise > units::Length();
    return ShapeProblem{entered                       ? "rise"
                        : entry.head == Head::Trefoil ? "topCentre"
                                                      : "head",
                        Message("shape.head-too-high")
                            .with("value", Millimetres{head.rise})
                            .with("most", Millimetres{height})
                            .with("by", Millimetres{-jamb})};
  }
  std::vector<Segment> segments = std::move(head.segments);
  const Point left = startOf(segments.front());
  const Point right = endOf(segments.back());
  const double sill = jamb > 1e-9 ? jamb : 0;
  const Point bottomRight{right.x, sill};
  const Point bottomLeft{left.x, sill};
  addStraight(segments, right, bottomRight);
  addStraight(segments, bottomRight, bottomLeft);
  addStraight(segments, bottomLeft, left);
  return WindowForm{Outline(std::move(segments)), 0};
}

}  // namespace

base::Result<WindowForm, ShapeProblem> construct(const ShapeEntry& entry, double width, double height) {
  switch (entry.shape) {
    case Shape::Rectangle: {
      const double x = width / 2;
      const double y = height / 2;
      return WindowForm{outlineOf(Rectangle{-x, -y, x, y}), -y};
    }
    case Shape::Rounded:
    case Shape::Scalloped:
    case Shape::Chamfered: return withCorners(entry, width, height);
    case Shape::Oval: return ovalForm(width, height);
    case Shape::Round:
      if (width != height) {
        return ShapeProblem{"shape", Message("shape.round-not-square")
                                         .with("width", Millimetres{width})
                                         .with("height", Millimetres{height})
                                         .with("by", Millimetres{std::fabs(width - height)})};
      }
      return roundForm(width);
    case Shape::Arch: return arch(entry, width, height);
  }
  return arch(entry, width, height);
}

}  // namespace core::geometry
