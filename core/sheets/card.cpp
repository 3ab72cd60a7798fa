#include "core/sheets/card.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/sheets/card_lines.h"
#include "core/sheets/card_spread.h"

namespace core::sheets {
namespace {

using geometry::Rectangle;

// Shares of the numbers' cap height.
constexpr double kLine = 1.5;    // a line of text
constexpr double kBeside = 0.7;  // the least gap between texts side by side
constexpr double kOff = 0.9;     // from the board's edge to the nearest dimension line
constexpr double kLane = 0.85;   // from one dimension line to the next
constexpr double kLeader = 0.9;  // from the last dimension line to the numbers
constexpr double kHair = 1e-6;   // mm

// The edge of the board beside which a number stands.
enum class Beside { Top, Right, Bottom, Left, Nothing };
constexpr std::array kEdges = {Beside::Top, Beside::Right, Beside::Bottom, Beside::Left};

bool isLevel(Beside edge) { return edge == Beside::Top || edge == Beside::Bottom; }

Beside besideOf(const CardMeasure& measure) {
  if (measure.gives == Gives::Curve) return Beside::Nothing;
  if (std::fabs(measure.from.y - measure.to.y) < kHair) return measure.fromEdge ? Beside::Top : Beside::Bottom;
  if (std::fabs(measure.from.x - measure.to.x) < kHair) return measure.fromEdge ? Beside::Right : Beside::Left;
  return Beside::Nothing;
}

std::string textOf(const design::Figure& figure) {
  std::string text = figure.kind == "board.arc.radius" ? "R " : "";
  if (figure.shown.approximate) text += "\u2248";
  if (figure.shown.negative) text += "\u2212";
  text += figure.shown.whole;
  if (figure.shown.denominator == 0) return text;
  if (!figure.shown.whole.empty()) text += ' ';
  return text + std::to_string(figure.shown.numerator) + "/" + std::to_string(figure.shown.denominator);
}

struct Placed {
  CardMeasure measure;
  std::string text;
  double width = 0;
  Beside edge = Beside::Nothing;
  std::size_t lane = 0;
  bool running = false;  // others start at its datum on its line: its number stands where it ends
  double along(Point point) const { return isLevel(edge) ? point.x : point.y; }
};

class Layouter {
 public:
  Layouter(const design::Design& design, const std::vector<std::string>& ids, const CardRoom& room)
      : m_design(design), m_room(room), m_cap(room.capHeight) {
    m_place.cap = m_cap;
    for (const std::string& id : ids) {
      const auto measure = cardMeasure(design, id);
      if (!measure || (!m_placed.empty() && m_placed.front().measure.element != measure->element)) continue;
      Placed placed{*measure, textOf(*design.figures.find(id)), 0, besideOf(*measure), 0, false};
      placed.width = room.widthOf(placed.text);
      m_placed.push_back(std::move(placed));
    }
  }

  Card layOut() {
    for (const Beside edge : kEdges) lanes(edge);
    if (m_placed.empty() || !place()) return {};
    m_card.board = detail::boardLines(m_place, m_design, m_placed.front().measure.element);
    for (const Placed& placed : m_placed)
      m_card.numbers.push_back({placed.measure.figure, placed.text, {}, false, {}, {}});
    for (const Beside edge : kEdges) {
      if (!beside(edge)) return {};
    }
    for (std::size_t i = 0; i < m_placed.size(); ++i) {
      if (m_placed[i].edge == Beside::Nothing) inPlace(i);
    }
    m_card.fits = true;
    return std::move(m_card);
  }

 private:
  // What stands beside one edge of the board.
  struct Rim {
    std::size_t lanes = 0;     // of dimension lines
    std::size_t rows = 0;      // of numbers
    double needed = 0;         // by the numbers, along the edge
    double low = 0, high = 0;  // between which they stand
    double widest = 0;         // of them
    double row = 0;            // how far a row of them reaches
    double start = 0;          // from the edge to the first row
    double thickness() const { return start + row * static_cast<double>(rows); }
  };
  Rim& side(Beside edge) { return m_sides[static_cast<std::size_t>(edge)]; }

  std::vector<std::size_t> at(Beside edge) const {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < m_placed.size(); ++i) {
      if (m_placed[i].edge == edge) found.push_back(i);
    }
    return found;
  }

  // Dimensions share a line where they start at one datum, or do not reach each other.
  void lanes(Beside edge) {
    std::vector<std::vector<std::size_t>> lanes;
    for (const std::size_t i : at(edge)) {
      Placed& one = m_placed[i];
      const auto room = std::find_if(lanes.begin(), lanes.end(), [&](const auto& lane) {
        return std::all_of(lane.begin(), lane.end(),
                           [&](std::size_t other) { return shareLine(one, m_placed[other]); });
      });
      one.lane = static_cast<std::size_t>(room - lanes.begin());
      if (room == lanes.end()) lanes.emplace_back();
      lanes[one.lane].push_back(i);
    }
    for (const auto& lane : lanes) {
      for (const std::size_t i : lane) {
        m_placed[i].running = std::any_of(lane.begin(), lane.end(), [&](std::size_t other) {
          return other != i && sameDatum(m_placed[i], m_placed[other]);
        });
      }
    }
    side(edge).lanes = lanes.size();
  }

  static bool sameDatum(const Placed& a, const Placed& b) {
    return std::fabs(a.along(a.measure.from) - b.along(b.measure.from)) < kHair;
  }
  static bool shareLine(const Placed& a, const Placed& b) {
    if (sameDatum(a, b)) return true;
    const auto span = [](const Placed& one) {
      return std::minmax({one.along(one.measure.from), one.along(one.measure.to)});
    };
    const std::pair<double, double> first = span(a);
    const std::pair<double, double> second = span(b);
    return first.second <= second.first + kHair || second.second <= first.first + kHair;
  }

  double sizeAlong(const Placed& placed) const {
    return isLevel(placed.edge) ? placed.width + kBeside * m_cap : kLine * m_cap;
  }

  // Finds how many rows the numbers beside an edge need where they have so much of it, and how far they reach.
  void measure(Beside edge, double extent) {
    Rim& one = side(edge);
    one.start = (detail::kHatchShare + 0.1) * m_cap;
    for (const std::size_t i : at(edge)) {
      one.needed += sizeAlong(m_placed[i]);
      one.widest = std::max(one.widest, m_placed[i].width);
    }
    if (one.needed == 0) return;
    one.rows = one.needed <= extent ? 1 : 2;
    one.row = isLevel(edge) ? kLine * m_cap : one.widest + kBeside * m_cap;
    one.start = (kOff + kLane * (static_cast<double>(one.lanes) - 1) + kLeader) * m_cap;
  }

  // Finds the board's scale and place: what the numbers leave of the room. Returns whether that can be read.
  bool place() {
    // The corners belong to the numbers above and below, whose rows are the longer ones.
    Rim &above = side(Beside::Top), &below = side(Beside::Bottom);
    Rim &left = side(Beside::Left), &right = side(Beside::Right);
    measure(Beside::Top, m_room.width);
    measure(Beside::Bottom, m_room.width);
    measure(Beside::Left, m_room.height - above.thickness() - below.thickness());
    measure(Beside::Right, m_room.height - above.thickness() - below.thickness());
    const double wide = m_design.layout.outerWidth, high = m_design.layout.outerHeight;
    const double across = m_room.width - left.thickness() - right.thickness();
    const double down = m_room.height - above.thickness() - below.thickness();
    m_place.scale = m_card.scale = std::min(across / wide, down / high);
    const double slack = (down - high * m_place.scale) / 2;
    m_place.origin =
        m_card.origin = {left.thickness() + (across - wide * m_place.scale) / 2, above.thickness() + slack};
    const Point end = m_place.on(Point{wide, high});
    m_place.edges = {m_place.origin.x, m_place.origin.y, end.x, end.y};
    // Many numbers beside a low board need the height that is left; those above and below then stand further off.
    const double beside = high * m_place.scale + above.start + below.start;
    for (const Rim* one : {&left, &right}) {
      if (one->rows == 0 || one->needed / static_cast<double>(one->rows) + kLine * m_cap <= beside) continue;
      above.start = m_place.origin.y - static_cast<double>(above.rows) * above.row;
      below.start = m_room.height - m_place.edges.bottom - static_cast<double>(below.rows) * below.row;
      break;
    }
    for (Rim* one : {&above, &below}) one->high = m_room.width;
    for (Rim* one : {&left, &right}) {
      one->low = m_place.edges.top - above.start;
      one->high = m_place.edges.bottom + below.start;
    }
    return m_place.scale * std::min(wide, high) >= std::max(m_room.shortest, m_cap);
  }

  // From a place along an edge and a distance off it.
  Point off(Beside edge, double along, double distance) const {
    switch (edge) {
      case Beside::Top: return {along, m_place.edges.top - distance};
      case Beside::Bottom: return {along, m_place.edges.bottom + distance};
      case Beside::Left: return {m_place.edges.left - distance, along};
      case Beside::Right: return {m_place.edges.right + distance, along};
      case Beside::Nothing: break;
    }
    return {};
  }

  // Numbers beside one edge. Returns whether all have room.
  bool beside(Beside edge) {
    std::vector<std::size_t> numbers = at(edge);
    if (numbers.empty()) return true;
    const bool level = isLevel(edge);
    const auto wanted = [&](std::size_t i) {
      const Placed& one = m_placed[i];
      const Point from = m_place.on(one.measure.from), to = m_place.on(one.measure.to);
      return one.running ? one.along(to) : (one.along(from) + one.along(to)) / 2;
    };
    std::stable_sort(numbers.begin(), numbers.end(),
                     [&](std::size_t a, std::size_t b) { return wanted(a) < wanted(b); });
    std::vector<Label> labels;
    for (const std::size_t i : numbers) labels.push_back({wanted(i), sizeAlong(m_placed[i]), 0, 0, 0});
    if (!spread(labels, side(edge).low, side(edge).high, side(edge).rows)) return false;
    const double first = (kOff + kLane * (static_cast<double>(side(edge).lanes) - 1)) * m_cap;
    const double start = side(edge).start;
    for (std::size_t k = 0; k < numbers.size(); ++k) {
      const Placed& one = m_placed[numbers[k]];
      CardNumber& number = m_card.numbers[numbers[k]];
      const Label& label = labels[k];
      const double near = start + side(edge).row * static_cast<double>(label.row);
      const double lane = (kOff + kLane * static_cast<double>(one.lane)) * m_cap;
      const Point textAt = off(edge, label.at, near + (level ? kLine * m_cap / 2 : one.width / 2 + 0.2 * m_cap));
      number.box = {textAt.x - one.width / 2, textAt.y - kLine * m_cap / 2, textAt.x + one.width / 2,
                    textAt.y + kLine * m_cap / 2};
      lines(number, one, edge, lane, [&](std::vector<Primitive>& list) {
        // Its own line to the number, past the numbers nearer to the board.
        Stroke leader{{off(edge, label.wanted, lane), off(edge, label.wanted, first)}, false};
        if (label.row > 0) {
          leader.points.push_back(off(edge, label.through, start));
          leader.points.push_back(off(edge, label.through, near));
        }
        leader.points.push_back(off(edge, label.at, near));
        list.push_back({one.measure.element, Role::Setting, leader});
      });
    }
    return true;
  }

  template <typename Leader>
  void lines(CardNumber& number, const Placed& one, Beside edge, double lane, const Leader& leader) {
    const std::string& element = one.measure.element;
    const Point from = m_place.on(one.measure.from), to = m_place.on(one.measure.to);
    const Point lineFrom = off(edge, one.along(from), lane), lineTo = off(edge, one.along(to), lane);
    for (std::vector<Primitive>* list : {&number.pencil, &number.ink}) {
      list->push_back({element, Role::Setting, Stroke{{to, lineTo}, false}});
      if (!one.measure.fromEdge) list->push_back({element, Role::Setting, Stroke{{from, lineFrom}, false}});
      leader(*list);
    }
    detail::addDimension(number.pencil, m_place, one.measure, lineFrom, lineTo, false);
    detail::addDatum(number.ink, m_place, one.measure);
    detail::addGiven(number.ink, m_place, one.measure);
    detail::addDimension(number.ink, m_place, one.measure, lineFrom, lineTo, true);
  }

  // A radius or a diagonal lies where it is; its number is as near as there is room for it.
  void inPlace(std::size_t index) {
    const Placed& one = m_placed[index];
    CardNumber& number = m_card.numbers[index];
    const Point from = m_place.on(one.measure.from), to = m_place.on(one.measure.to);
    std::vector<Rectangle> taken;
    std::vector<Stroke> lines = detail::chordsOf(m_card.board);
    for (const CardNumber& other : m_card.numbers) {
      if (!other.box.empty()) taken.push_back(other.box);
      for (Stroke& line : detail::chordsOf(other.pencil)) lines.push_back(std::move(line));
    }
    for (const Placed& other : m_placed) {
      if (other.edge == Beside::Nothing)
        lines.push_back({{m_place.on(other.measure.from), m_place.on(other.measure.to)}, false});
    }
    const Rectangle whole{0, 0, m_room.width, m_room.height};
    number.box = nearestRoom(Stroke{{from, to}, false}, one.width + 0.3 * m_cap, kLine * m_cap, whole, taken, lines);
    number.inside = true;
    const Point middle = 0.5 * (from + to);
    const Point nearest = nearestOn(number.box, middle);
    // What does not stand at its line has a line to it.
    for (std::vector<Primitive>* list : {&number.pencil, &number.ink}) {
      if (geometry::distance(middle, nearest) < 0.8 * m_cap) continue;
      list->push_back({one.measure.element, Role::Setting, Stroke{{middle, nearest}, false}});
    }
    detail::addDimension(number.pencil, m_place, one.measure, from, to, false);
    detail::addGiven(number.ink, m_place, one.measure);
    detail::addDimension(number.ink, m_place, one.measure, from, to, true);
  }

  const design::Design& m_design;
  const CardRoom& m_room;
  double m_cap;
  std::vector<Placed> m_placed;
  std::array<Rim, 4> m_sides;
  detail::CardPlace m_place;
  Card m_card;
};

}  // namespace

Card drawCard(const design::Design& design, const std::vector<std::string>& figureIds, const CardRoom& room) {
  return Layouter(design, figureIds, room).layOut();
}

}  // namespace core::sheets
