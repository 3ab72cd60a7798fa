#include "core/sheets/cut_drawing.h"

#include <algorithm>

namespace core::sheets {
namespace {

using cutting::Area;
using cutting::SheetCut;

class SheetDrawer {
 public:
  SheetDrawer(const materials::PlanSheet& sheet, const design::Stock& stock)
      : m_sheet(sheet), m_stock(stock), m_margin(stock.usableMargin.inMillimetres()) {}

  Drawing run() {
    m_drawing.width = m_stock.width.inMillimetres();
    m_drawing.height = m_stock.height.inMillimetres();
    add("sheet", Role::Sheet, corners({0, 0}, {m_drawing.width, m_drawing.height}));
    if (m_margin > 0) add("sheet", Role::Guide, corners(fromOf(usable()), toOf(usable())));
    number("piece", m_sheet.pieces, [&](const std::string& element, const materials::PieceOnSheet& piece) {
      add(element, Role::BoardFace, corners(fromOf(piece.at), toOf(piece.at)));
    });
    number("kept", m_sheet.offcuts, [&](const std::string& element, const Area& area) { hatch(element, area); });
    number("cut", m_sheet.cuts, [&](const std::string& element, const SheetCut& cut) { addCut(element, cut); });
    return std::move(m_drawing);
  }

 private:
  template <typename Items, typename Draw>
  void number(const char* kind, const Items& items, Draw draw) {
    std::size_t number = 0;
    for (const auto& item : items) draw(std::string(kind) + '.' + std::to_string(++number), item);
  }

  Area usable() const {
    const auto less = 2 * m_stock.usableMargin;
    return {{}, {}, m_stock.width - less, m_stock.height - less};
  }
  Point at(double x, double y) const { return {x + m_margin, y + m_margin}; }
  Point fromOf(const Area& area) const { return at(area.x.inMillimetres(), area.y.inMillimetres()); }
  Point toOf(const Area& area) const {
    return at((area.x + area.width).inMillimetres(), (area.y + area.height).inMillimetres());
  }

  static Stroke corners(Point from, Point to) { return {{from, {to.x, from.y}, to, {from.x, to.y}}, true}; }

  void add(const std::string& element, Role role, Stroke stroke) {
    m_drawing.primitives.push_back({element, role, std::move(stroke)});
  }

  // Slanting lines across a rectangle, a tenth of the sheet's shorter side apart.
  void hatch(const std::string& element, const Area& area) {
    const Point from = fromOf(area);
    const Point to = toOf(area);
    constexpr double kLines = 24;
    const double step = std::min(m_drawing.width, m_drawing.height) / kLines;
    const double width = to.x - from.x;
    const double height = to.y - from.y;
    for (double sum = step; sum < width + height; sum += step) {
      const Point low = sum <= height ? Point{from.x, from.y + sum} : Point{from.x + (sum - height), to.y};
      const Point high = sum <= width ? Point{from.x + sum, from.y} : Point{to.x, from.y + (sum - width)};
      add(element, Role::Guide, {{low, high}, false});
    }
  }

  void addCut(const std::string& element, const SheetCut& cut) {
    add(element + ".part", Role::BoardEdge, corners(fromOf(cut.part), toOf(cut.part)));
    const Point from = fromOf(cut.part);
    const Point to = toOf(cut.part);
    const double fence = cut.fence.inMillimetres();
    const Stroke line = cut.upright ? Stroke{{{from.x + fence, from.y}, {from.x + fence, to.y}}, false}
                                    : Stroke{{{from.x, from.y + fence}, {to.x, from.y + fence}}, false};
    add(element, Role::Line, line);
  }

  const materials::PlanSheet& m_sheet;
  const design::Stock& m_stock;
  double m_margin;
  Drawing m_drawing;
};

}  // namespace

Drawing drawCutSheet(const materials::PlanSheet& sheet, const design::Stock& stock) {
  return SheetDrawer(sheet, stock).run();
}

}  // namespace core::sheets
