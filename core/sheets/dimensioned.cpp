#include "core/sheets/dimensioned.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/base/text.h"
#include "core/design/setting_out.h"
#include "core/sheets/piece.h"

namespace core::sheets {
namespace {

using geometry::Rectangle;

// Shares of the piece's longer edge.
constexpr double kTextShare = 1.0 / 55;
constexpr double kLaneShare = 1.0 / 18;
// A character's width in cap heights, with the gap beside it: wider than any digit of a common typeface.
constexpr double kCharacter = 0.95;

// Characters of a UTF-8 text.
double charactersOf(const std::string& text) {
  return static_cast<double>(std::count_if(text.begin(), text.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

bool meet(const Rectangle& a, const Rectangle& b) {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

struct Line {
  Point from, to;
  std::string text;
  std::string element;
  std::vector<Primitive> beside;  // what else its figure shows: an arc, a centre line
};

// The dimension of one figure, as drawFigure gives it: line, ends, text.
std::optional<Line> lineOf(const design::Design& design, Side side, const std::string& id) {
  const auto figure = drawFigure(design, id);
  if (!figure || figure->side != side) return std::nullopt;
  std::optional<Line> line;
  std::vector<Primitive> beside;
  for (const Primitive& primitive : figure->primitives) {
    const auto* stroke = std::get_if<Stroke>(&primitive.shape);
    if (primitive.role == Role::Dimension && stroke != nullptr) {
      if (!line) line = Line{stroke->points[0], stroke->points[1], "", primitive.element, {}};
    } else if (const auto* text = std::get_if<Text>(&primitive.shape)) {
      if (line) line->text = text->text;
    } else if (primitive.role != Role::Setting) {
      beside.push_back(primitive);
    }
  }
  if (line) line->beside = std::move(beside);
  return line;
}

// Returns whether two dimensions are the same: as long, between the same lines.
bool sameMeasure(const Line& a, const Line& b) {
  constexpr double kSame = 1e-6;
  const auto near = [](double one, double other) { return std::fabs(one - other) < kSame; };
  const bool level = near(a.from.y, a.to.y) && near(b.from.y, b.to.y);
  const bool upright = near(a.from.x, a.to.x) && near(b.from.x, b.to.x);
  if (level) {
    return (near(a.from.x, b.from.x) && near(a.to.x, b.to.x)) || (near(a.from.x, b.to.x) && near(a.to.x, b.from.x));
  }
  if (upright) {
    return (near(a.from.y, b.from.y) && near(a.to.y, b.to.y)) || (near(a.from.y, b.to.y) && near(a.to.y, b.from.y));
  }
  return false;
}

// Lanes beside the piece in which spans lie without touching.
class Lanes {
 public:
  // Returns the first lane with room from `low` to `high`.
  std::size_t place(double low, double high) {
    for (std::size_t lane = 0; lane < m_lanes.size(); ++lane) {
      const bool free = std::none_of(m_lanes[lane].begin(), m_lanes[lane].end(),
                                     [&](const auto& span) { return low < span.second && span.first < high; });
      if (!free) continue;
      m_lanes[lane].emplace_back(low, high);
      return lane;
    }
    m_lanes.push_back({{low, high}});
    return m_lanes.size() - 1;
  }
  std::size_t count() const { return m_lanes.size(); }

 private:
  std::vector<std::vector<std::pair<double, double>>> m_lanes;
};

class Dimensioner {
 public:
  Dimensioner(const design::Design& design, Side side) : m_drawing(drawPiece(design, side)) {
    const double longer = std::max(m_drawing.width, m_drawing.height);
    m_text = longer * kTextShare;
    m_lane = longer * kLaneShare;
  }

  void add(std::vector<Line> lines) {
    // Short ones lie nearest to the piece, so that the lines to the long ones cross none of them.
    std::stable_sort(lines.begin(), lines.end(), [](const Line& a, const Line& b) {
      return geometry::distance(a.from, a.to) < geometry::distance(b.from, b.to);
    });
    for (const Line& line : lines) m_widest = std::max(m_widest, widthOf(line.text));
    for (const Line& line : lines) {
      if (line.from.y == line.to.y) below(line);
    }
    for (const Line& line : lines) {
      if (line.from.x == line.to.x) beside(line);
    }
    for (const Line& line : lines) {
      if (line.from.x != line.to.x && line.from.y != line.to.y) inPlace(line);
    }
  }

  // Everything moved so that nothing lies left of or above the origin.
  Drawing take() {
    for (const Rectangle& box : m_reach) m_bounds = around(m_bounds, box);
    m_bounds = around(m_bounds, {0, 0, m_drawing.width, m_drawing.height});
    const Point by{-m_bounds.left, -m_bounds.top};
    for (Primitive& primitive : m_drawing.primitives) shift(primitive, by);
    m_drawing.width = m_bounds.right - m_bounds.left;
    m_drawing.height = m_bounds.bottom - m_bounds.top;
    return std::move(m_drawing);
  }

 private:
  double widthOf(const std::string& text) const { return charactersOf(text) * kCharacter * m_text; }

  void primitive(const Line& line, Role role, Stroke stroke) {
    for (const Point& point : stroke.points) m_reach.push_back({point.x, point.y, point.x, point.y});
    m_drawing.primitives.push_back({line.element, role, std::move(stroke)});
  }

  void text(const Line& line, Point at) {
    const Text text{at, line.text, m_text};
    const Rectangle box = boxOf(text);
    m_reach.push_back(box);
    m_texts.push_back(box);
    m_drawing.primitives.push_back({line.element, Role::DimensionText, text});
  }

  void line(const Line& line, Point from, Point to) {
    for (const Primitive& other : line.beside) m_drawing.primitives.push_back(other);
    primitive(line, Role::Dimension, {{from, to}, false});
    const double length = geometry::distance(from, to);
    const Point across = (m_text / 2 / length) * Point{-(to.y - from.y), to.x - from.x};
    for (const Point& end : {from, to}) primitive(line, Role::Dimension, {{end - across, end + across}, false});
  }

  // Across: in a lane below the piece, the text over the line's middle, or beyond its right end where it is shorter.
  void below(const Line& dimension) {
    const double left = std::min(dimension.from.x, dimension.to.x);
    const double right = std::max(dimension.from.x, dimension.to.x);
    const double width = widthOf(dimension.text);
    const bool fits = width <= right - left;
    const double middle = fits ? (left + right) / 2 : right + m_text + width / 2;
    const double high = fits ? right : middle + width / 2;
    const auto lane = m_below.place(left - m_text / 2, high + m_text / 2);
    const double y = m_drawing.height + m_lane * (static_cast<double>(lane) + 1);
    for (const Point& end : {dimension.from, dimension.to}) {
      primitive(dimension, Role::Setting, {{end, {end.x, y}}, false});
    }
    line(dimension, {left, y}, {right, y});
    text(dimension, {middle, fits ? y - m_text : y});
  }

  // Down: in a lane right of the piece, the text beside the line. A lane is as wide as its widest text.
  void beside(const Line& dimension) {
    const double top = std::min(dimension.from.y, dimension.to.y);
    const double bottom = std::max(dimension.from.y, dimension.to.y);
    const double half = std::max((bottom - top) / 2, m_text);
    const double middle = (top + bottom) / 2;
    const auto lane = m_beside.place(middle - half - m_text / 2, middle + half + m_text / 2);
    const double x = m_drawing.width + m_lane + (m_widest + 2 * m_text) * static_cast<double>(lane);
    for (const Point& end : {dimension.from, dimension.to}) {
      primitive(dimension, Role::Setting, {{end, {x, end.y}}, false});
    }
    line(dimension, {x, top}, {x, bottom});
    text(dimension, {x + m_text / 2 + widthOf(dimension.text) / 2, middle});
  }

  // Aslant, a radius or a mitre: where it lies, its text at the first place along it that is free.
  void inPlace(const Line& dimension) {
    line(dimension, dimension.from, dimension.to);
    const Point along = dimension.to - dimension.from;
    const double width = widthOf(dimension.text);
    for (int step = 0; step <= 60; ++step) {
      // From the middle outwards, then on beyond the end.
      const double share = step <= 20 ? 0.5 + (step % 2 == 0 ? 1 : -1) * 0.02 * step : 1 + 0.05 * (step - 20);
      const Point at = dimension.from + share * along;
      for (const double side : {1.0, -1.0}) {
        const Text wanted{{at.x + side * (width / 2 + m_text / 2), at.y}, dimension.text, m_text};
        const Rectangle box = boxOf(wanted);
        const bool taken =
            std::any_of(m_texts.begin(), m_texts.end(), [&](const Rectangle& other) { return meet(box, other); });
        if (taken) continue;
        text(dimension, wanted.at);
        return;
      }
    }
    // Nothing is free along it: in a lane of its own, below everything else.
    const auto lane = m_below.place(-1e6, 1e6);
    text(dimension, {m_drawing.width / 2, m_drawing.height + m_lane * (static_cast<double>(lane) + 1)});
  }

  static Rectangle around(const Rectangle& a, const Rectangle& b) {
    return {std::min(a.left, b.left), std::min(a.top, b.top), std::max(a.right, b.right), std::max(a.bottom, b.bottom)};
  }

  struct Shift {
    Point by;
    void operator()(Frame& frame) const {
      const bool hole = !(frame.innerFrom == frame.innerTo);
      frame.outerFrom = frame.outerFrom + by;
      frame.outerTo = frame.outerTo + by;
      if (!hole) return;
      frame.innerFrom = frame.innerFrom + by;
      frame.innerTo = frame.innerTo + by;
    }
    void operator()(Stroke& stroke) const {
      for (Point& point : stroke.points) point = point + by;
    }
    void operator()(Text& text) const { text.at = text.at + by; }
    void operator()(geometry::Patch& patch) const {
      patch.outer = patch.outer.shifted(by);
      patch.inner = patch.inner.shifted(by);
    }
    void operator()(Path& path) const {
      for (geometry::Segment& segment : path.segments) segment = geometry::shifted(segment, by);
    }
  };
  static void shift(Primitive& primitive, Point by) { std::visit(Shift{by}, primitive.shape); }

  Drawing m_drawing;
  double m_text = 0, m_lane = 0, m_widest = 0;
  Lanes m_below, m_beside;
  std::vector<Rectangle> m_texts, m_reach;
  Rectangle m_bounds;
};

}  // namespace

Rectangle boxOf(const Text& text) {
  const double half = charactersOf(text.text) * kCharacter * text.height / 2;
  return {text.at.x - half, text.at.y - text.height * 0.75, text.at.x + half, text.at.y + text.height * 0.75};
}

Drawing drawDimensioned(const design::Design& design, Side side, const std::vector<std::string>& figureIds) {
  Dimensioner dimensioner(design, side);
  std::vector<Line> lines;
  for (const std::string& id : figureIds) {
    auto line = lineOf(design, side, id);
    if (!line) continue;
    // A centre and an apex are often on one level: one dimension is enough.
    const bool said =
        std::any_of(lines.begin(), lines.end(), [&](const Line& other) { return sameMeasure(*line, other); });
    if (!said) lines.push_back(std::move(*line));
  }
  dimensioner.add(std::move(lines));
  return dimensioner.take();
}

std::vector<std::string> markingOut(const design::Design& design, const std::string& board) {
  std::vector<std::string> ids;
  const std::string prefix = "board." + board + '.';
  const design::Layout& layout = design.layout;
  const auto add = [&](const std::string& name) {
    if (design.figures.find(prefix + name) != nullptr) ids.push_back(prefix + name);
  };
  for (const char* name : {"mark.left", "mark.right", "mark.top", "mark.bottom", "axis", "springing"}) add(name);
  const auto index = static_cast<std::size_t>(layout.board(board) - layout.boards.data());
  const design::SettingOut setting = design::settingOut(layout, index);
  // Right of the centre line as seen from the back lies the marked corner.
  const auto near = [&](geometry::Point point) { return design::fromAxis(layout.boards[index], point) > -1e-9; };
  for (const design::SettingArc& arc : setting.arcs) {
    const auto& from = setting.points[static_cast<std::size_t>(arc.from) - 1].at;
    if (!near(from)) continue;
    const std::string part = "arc." + std::to_string(arc.number) + '.';
    for (const char* name : {"radius", "centre.fromAxis", "centre.fromSpringing"}) add(part + name);
  }
  for (const design::SettingPoint& point : setting.points) {
    if (!near(point.at)) continue;
    const std::string part = "point." + std::to_string(point.number) + '.';
    for (const char* name : {"fromAxis", "fromSpringing"}) add(part + name);
  }
  for (const char* name : {"oval.semiMajor", "oval.semiMinor", "oval.focus"}) add(name);
  return ids;
}

}  // namespace core::sheets
