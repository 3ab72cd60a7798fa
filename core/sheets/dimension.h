#pragma once
// The dimension of one figure while it is being drawn. Only figure_dimension.cpp and setting_dimension.cpp use this.
#include <algorithm>
#include <cmath>
#include <optional>
#include <string>

#include "core/design/setting_out.h"
#include "core/sheets/piece.h"
#include "core/sheets/places.h"

namespace core::sheets::detail {

using design::Figure;

// Half the length of the strokes that end a dimension line: a share of the longer edge.
inline constexpr double kEndShare = 0.012;

// Everything as seen from the face; turned over at the end where the figure is measured on the back.
class Dimension {
 public:
  Dimension(const design::Design& design, const Figure& figure)
      : m_design(design), m_layout(design.layout), m_figure(figure) {
    m_end = std::max(m_layout.outerWidth, m_layout.outerHeight) * kEndShare;
  }

  std::optional<FigureDimension> draw() {
    const bool placed = m_figure.element.empty() ? ofPiece() : ofElement();
    if (!placed) return std::nullopt;
    if (m_result.side == Side::Back) turn(m_result.primitives, m_layout.outerWidth);
    return std::move(m_result);
  }

 private:
  bool is(std::string_view kind) const { return m_figure.kind == kind; }
  std::string element() const { return m_figure.element.empty() ? "piece" : m_figure.element; }

  bool along(const Point& from, const Point& to) {
    const double length = std::hypot(to.x - from.x, to.y - from.y);
    if (length <= 0) return false;
    const Point across{-(to.y - from.y) / length * m_end, (to.x - from.x) / length * m_end};
    add(Role::Dimension, Stroke{{from, to}, false});
    for (const Point& end : {from, to}) {
      add(Role::Dimension, Stroke{{{end.x - across.x, end.y - across.y}, {end.x + across.x, end.y + across.y}}, false});
    }
    add(Role::DimensionText, Text{{(from.x + to.x) / 2, (from.y + to.y) / 2}, m_figure.display, 0});
    return true;
  }
  bool across(double from, double to, double y) { return along({from, y}, {to, y}); }
  bool down(double from, double to, double x) { return along({x, from}, {x, to}); }

  template <typename Shape>
  void add(Role role, Shape shape) {
    m_result.primitives.push_back({element(), role, std::move(shape)});
  }

  static double middleX(const Rectangle& r) { return (r.left + r.right) / 2; }
  static double middleY(const Rectangle& r) { return (r.top + r.bottom) / 2; }

  // The height at which an outline reaches its own left bound: half way along a jamb, or level with an arc's centre.
  static double sideLevel(const geometry::Outline& outline);

  // Width or height of a rectangle, through its middle.
  bool sizeOf(const Rectangle& r, std::string_view prefix) { return sizeOf(r, middleY(r), prefix); }
  bool sizeOf(const Rectangle& r, double level, std::string_view prefix);

  // From an inner edge outwards by a size on each side: borders.
  bool borderOf(const Rectangle& r, double level, std::string_view prefix, double top, double bottom, double left,
                double right);

  bool ofPiece();
  bool ofArt();
  bool ofSheet();
  bool ofShownPart(const geometry::Rectangle& opening);
  bool ofElement();
  bool ofBoard(const design::BoardLayout& board, const design::BoardLayout* above);
  void guide(const Point& from, const Point& to) {
    m_result.primitives.push_back({element(), Role::Setting, Stroke{{from, to}, false}});
  }

  // A point off the marked edges, the centre line or the springing line.
  bool ofPoint(const design::BoardLayout& board, std::string_view prefix, const Point& at);
  bool ofSettingOut(const design::BoardLayout& board);
  // Runs from the centre to the middle of the arc, which is highlighted against the rest of the outline.
  bool ofRadius(const design::BoardLayout& board, const design::SettingArc& arc);
  bool ofOval(const design::BoardLayout& board);
  bool ofSpandrel(const design::SpandrelLayout& spandrel);
  // Draws it where the distance of the two edges is the figure's value.
  bool ofWash(const design::WashLayout& wash);
  bool ofBand(const design::BandLayout& band);
  bool ofLine(const design::Line& line, const design::LineLayout& placed);
  // Beside a shaped window distances are shown where its edge runs straight or level: at the side and the sill.
  bool ofCurvedLine(const Rectangle& face, const design::LineLayout& placed);

  const design::Design& m_design;
  const design::Layout& m_layout;
  const Figure& m_figure;
  double m_end = 0;
  FigureDimension m_result;
};

}  // namespace core::sheets::detail
