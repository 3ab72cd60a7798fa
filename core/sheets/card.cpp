#include "core/sheets/card.h"

#include <algorithm>
#include <cmath>

#include "core/sheets/card_lines.h"
#include "core/sheets/card_room.h"
#include "core/sheets/places.h"

namespace core::sheets {
namespace {

using geometry::Rectangle;

// Shares of the numbers' cap height.
constexpr double kAir = 0.2;     // above the highest number
constexpr double kLine = 1.3;    // a line of text
constexpr double kToLane = 0.5;  // from the number to its dimension line
constexpr double kOff = 1.0;     // from the dimension line to the board
constexpr double kGoesOn = 1.0;  // of the board below its lowest line
constexpr double kAside = 1.25;  // the same beside the board
constexpr double kMargin = 0.4;  // between a word and what is beside it
constexpr double kPast = 0.45;   // a witness line goes on past its dimension line
constexpr double kHair = 1e-6;   // mm

// The edge of the board beside which a dimension lies.
enum class Beside { Top, Right, Nothing };

Beside besideOf(const CardMeasure& measure) {
  if (measure.gives == Gives::Curve) return Beside::Nothing;
  if (std::fabs(measure.from.y - measure.to.y) < kHair) return Beside::Top;
  if (std::fabs(measure.from.x - measure.to.x) < kHair) return Beside::Right;
  return Beside::Nothing;
}

std::string textOf(const design::Figure& figure) {
  return (figure.kind == "board.arc.radius" ? "R " : "") + figure.display;
}

struct Placed {
  CardMeasure measure;
  std::string text;
  double width = 0;
  Beside edge = Beside::Nothing;
};

class Layouter {
 public:
  Layouter(const design::Design& design, const std::vector<std::string>& ids, const CardRoom& room)
      : m_design(design), m_room(room), m_cap(room.capHeight) {
    m_place.cap = m_cap;
    for (const std::string& id : ids) {
      const auto measure = cardMeasure(design, id);
      if (!measure || (!m_placed.empty() && m_placed.front().measure.element != measure->element)) continue;
      Placed placed{*measure, textOf(*design.figures.find(id)), 0, besideOf(*measure)};
      placed.width = room.widthOf(placed.text);
      m_placed.push_back(std::move(placed));
    }
  }

  Card layOut() {
    if (m_placed.empty() || !place()) return {};
    const std::string& board = m_placed.front().measure.element;
    m_card.board = detail::boardLines(m_place, m_design, board);
    m_opening = detail::openingOf(m_place, m_design, board);
    words();
    for (const Placed& placed : m_placed) {
      CardNumber number{placed.measure.figure, placed.text, {}, false, {}, std::nullopt, {}};
      number.made = detail::madeLines(m_place, m_design, placed.measure, m_opening);
      number.tick = detail::tickOf(m_place, placed.measure, number.made, m_opening);
      if (placed.edge == Beside::Nothing) {
        inPlace(number, placed);
      } else {
        beside(number, placed);
      }
      m_card.numbers.push_back(std::move(number));
    }
    m_card.fits = true;
    return std::move(m_card);
  }

 private:
  bool any(Datum datum) const {
    return std::any_of(m_placed.begin(), m_placed.end(), [&](const Placed& one) { return one.measure.datum == datum; });
  }

  // The lowest of what is measured and of the opening, mm from the board's upper edge.
  double lowest() const {
    double lowest = detail::sightOf(*m_design.layout.board(m_placed.front().measure.element)).bottom;
    for (const Placed& one : m_placed) lowest = std::max({lowest, one.measure.from.y, one.measure.to.y});
    return lowest;
  }

  // Finds the board's scale and place: what words and dimensions leave of the room. Returns whether that can be read.
  bool place() {
    const double hatch = (detail::kHatchShare + 0.1) * m_cap;
    double above = hatch, beside = kMargin * 1.3 * m_cap + m_room.side;
    for (const Placed& one : m_placed) {
      if (one.edge == Beside::Top) above = std::max(above, (kAir + kLine + kToLane + kOff) * m_cap);
      if (one.edge == Beside::Right) beside = std::max(beside, (kAside + kToLane) * m_cap + one.width);
    }
    const double below = any(Datum::BottomEdge) ? hatch : 0.2 * m_cap;
    const double before = m_room.side + kMargin * m_cap + (any(Datum::LeftEdge) ? hatch : 0);
    const double wide = m_design.layout.outerWidth, high = m_design.layout.outerHeight;
    const double across = m_room.width - before - beside;
    const double down = m_room.height - above - below;
    // What lies below the lowest line is of no use: the board goes on out of the room, and is the larger for it.
    const double whole = down / high;
    const double used = (m_room.height - above - kGoesOn * m_cap) / lowest();
    const double scale = std::min(across / wide, any(Datum::BottomEdge) ? whole : std::max(whole, used));
    if (scale * std::min(wide, high) < std::max(m_room.shortest, m_cap)) return false;
    m_place.scale = m_card.scale = scale;
    // A board with air round it stands in the middle of what words and numbers leave.
    m_place.origin = {before + (across - wide * scale) / 2, above + std::max(0.0, down - high * scale) / 2};
    const Point end = m_place.on(Point{wide, high});
    m_place.edges = m_card.edges = {m_place.origin.x, m_place.origin.y, end.x, end.y};
    return true;
  }

  Rectangle boxAt(Point middle, double width) const {
    const double x = std::clamp(middle.x, width / 2, std::max(width / 2, m_room.width - width / 2));
    const double half = kLine * m_cap / 2;
    const double y = std::clamp(middle.y, half, std::max(half, m_room.height - half));
    return {x - width / 2, y - half, x + width / 2, y + half};
  }

  void words() {
    const Rectangle& edges = m_place.edges;
    const double gap = kMargin * m_cap + (any(Datum::LeftEdge) ? (detail::kHatchShare + 0.1) * m_cap : 0);
    const double before = edges.left - gap - m_room.side / 2;
    // The words for top and right stand beside the corner, where neither a dimension nor its number ever lies.
    const double above = edges.top - kLine * m_cap / 2;
    m_card.top = boxAt({before, above}, m_room.side);
    m_card.left = boxAt({before, (edges.top + std::min(edges.bottom, m_room.height)) / 2}, m_room.side);
    const bool lane =
        std::any_of(m_placed.begin(), m_placed.end(), [](const Placed& one) { return one.edge == Beside::Right; });
    const double after = ((lane ? kAside : 0) + kMargin * 1.3) * m_cap;
    m_card.right = boxAt({edges.right + after + m_room.side / 2, above}, m_room.side);
    const double wide = m_room.window + m_cap;
    if (m_room.window <= 0 || m_opening.right - m_opening.left < wide) return;
    if (m_opening.bottom - m_opening.top < 3 * kLine * m_cap) return;
    const double low = m_opening.bottom - 1.2 * kLine * m_cap;
    m_card.window = boxAt({(m_opening.left + m_opening.right) / 2, low}, m_room.window);
  }

  // From a place on the board to the dimension line beside it.
  Point off(Beside edge, Point point, double further = 0) const {
    if (edge == Beside::Top) return {point.x, m_place.edges.top - kOff * m_cap - further};
    return {m_place.edges.right + kAside * m_cap + further, point.y};
  }

  void beside(CardNumber& number, const Placed& one) {
    const std::string& element = one.measure.element;
    const Point from = m_place.on(one.measure.from), to = m_place.on(one.measure.to);
    const Point lineFrom = off(one.edge, from), lineTo = off(one.edge, to);
    const bool level = one.edge == Beside::Top;
    const Point middle = 0.5 * (lineFrom + lineTo);
    const double away = kToLane * m_cap + (level ? kLine * m_cap / 2 : one.width / 2);
    number.box = boxAt(level ? Point{middle.x, middle.y - away} : Point{middle.x + away, middle.y}, one.width);
    detail::addDatum(number.ink, m_place, one.measure);
    detail::addGiven(number.ink, m_place, one.measure);
    // A line right across the board carries its witness line itself.
    const auto witness = [&](Point at, bool right) {
      const Point edge = level ? Point{at.x, m_place.edges.top} : Point{m_place.edges.right, at.y};
      number.ink.push_back(
          {element, Role::Setting, Stroke{{right ? edge : at, off(one.edge, at, kPast * m_cap)}, false}});
    };
    witness(to, one.measure.gives == Gives::Line);
    witness(from, one.measure.fromEdge);
    detail::addDimension(number.ink, m_place, one.measure, lineFrom, lineTo);
  }

  // A radius or a diagonal lies where it is; its number is as near as there is room for it.
  void inPlace(CardNumber& number, const Placed& one) {
    const Point from = m_place.on(one.measure.from), to = m_place.on(one.measure.to);
    std::vector<Stroke> lines = detail::chordsOf(m_card.board);
    lines.push_back({{from, to}, false});
    // It stands on the board, where its line is; where that is too small, beside it.
    const Stroke own{{from, to}, false};
    const double wide = one.width + 0.3 * m_cap;
    Rectangle seen = m_place.edges;
    seen.bottom = std::min(seen.bottom, m_room.height);
    number.box = nearestRoom(own, wide, kLine * m_cap, seen, {m_card.window}, lines);
    number.inside = !number.box.empty();
    if (!number.inside) {
      number.box = nearestRoom(own, wide, kLine * m_cap, {0, 0, m_room.width, m_room.height},
                               {m_place.edges, m_card.top, m_card.left, m_card.right}, lines);
    }
    const Point middle = 0.5 * (from + to);
    const Point nearest = nearestOn(number.box, middle);
    // What does not stand at its line has a line to it.
    if (!number.box.empty() && geometry::distance(middle, nearest) >= 1.2 * m_cap)
      number.ink.push_back({one.measure.element, Role::Setting, Stroke{{middle, nearest}, false}});
    detail::addGiven(number.ink, m_place, one.measure);
    detail::addDimension(number.ink, m_place, one.measure, from, to);
  }

  const design::Design& m_design;
  const CardRoom& m_room;
  double m_cap;
  std::vector<Placed> m_placed;
  Rectangle m_opening;
  detail::CardPlace m_place;
  Card m_card;
};

}  // namespace

Card drawCard(const design::Design& design, const std::vector<std::string>& figureIds, const CardRoom& room) {
  return Layouter(design, figureIds, room).layOut();
}

}  // namespace core::sheets
