// Which figures stand on the cutter's card, and in which order a hand takes them.
#include <algorithm>
#include <cmath>
#include <set>

#include "core/base/text.h"
#include "core/design/setting_out.h"
#include "core/sheets/card.h"
#include "core/sheets/measure.h"
#include "core/sheets/piece.h"
#include "core/sheets/places.h"

namespace core::sheets {
namespace {

using design::Figure;
using workflow::WorkflowFigure;

constexpr double kSame = 1e-6;  // mm

// What a figure is to the hand that sets out a window; the order is the hand's. What is taken from the side edge comes
// first, so that the rule changes its edge once.
enum class Turn { CentreLine, Side, Springing, Level, Centre, Radius, Point, Check, None };

struct KindOfTurn {
  const char* begins;
  Turn turn;
};

// A kind that begins as an earlier row does is the earlier row's.
constexpr KindOfTurn kTurns[] = {
    {"board.axis", Turn::CentreLine},    {"board.springing", Turn::Springing}, {"board.mark.left", Turn::Side},
    {"board.mark.right", Turn::Side},    {"board.back.", Turn::Side},          {"board.border.left", Turn::Side},
    {"board.border.right", Turn::Side},  {"board.mark.", Turn::Level},         {"board.border.", Turn::Level},
    {"board.arc.centre.", Turn::Centre}, {"board.oval.semi", Turn::Centre},    {"board.oval.focus", Turn::Centre},
    {"board.arc.radius", Turn::Radius},  {"board.point.", Turn::Point},        {"board.oval.from", Turn::Point},
    {"board.sight.width", Turn::Check},  {"board.sight.height", Turn::Check},  {"board.diagonal.", Turn::Check},
};

Turn turnOf(const Figure& figure) {
  for (const KindOfTurn& row : kTurns) {
    if (base::startsWith(figure.kind, row.begins)) return row.turn;
  }
  return Turn::None;
}

bool isSettingOut(Turn turn) { return turn != Turn::Check && turn != Turn::None; }

Gives givenBy(Turn turn) {
  switch (turn) {
    case Turn::CentreLine:
    case Turn::Springing:
    case Turn::Side:
    case Turn::Level: return Gives::Line;
    case Turn::Centre:
    case Turn::Point: return Gives::Place;
    case Turn::Radius: return Gives::Curve;
    case Turn::Check:
    case Turn::None: break;
  }
  return Gives::Distance;
}

// Places that are told twice or in a number nobody sets: from the edges where the lines are nearer, and sweeps.
bool isOfNoUse(const Figure& figure) {
  static const std::set<std::string_view> kKinds = {"board.arc.sweep",  "board.arc.centre.left", "board.arc.centre.top",
                                                    "board.point.left", "board.point.top",       "board.oval.left",
                                                    "board.oval.top"};
  return kKinds.contains(figure.kind);
}

const design::BoardLayout* boardOf(const design::Design& design, const Figure& figure) {
  return figure.element.empty() ? nullptr : design.layout.board(figure.element);
}

// The half nearest the marked corner lies right of the centre line as seen from the back.
bool isNear(const design::BoardLayout& board, Point point) { return design::fromAxis(board, point) > -kSame; }

bool isOfNearHalf(const design::Design& design, const Figure& figure) {
  const design::BoardLayout* board = boardOf(design, figure);
  if (board == nullptr || figure.number == 0) return true;
  const auto index = static_cast<std::size_t>(board - design.layout.boards.data());
  const design::SettingOut setting = design::settingOut(design.layout, index);
  if (base::startsWith(figure.kind, "board.arc.")) {
    for (const design::SettingArc& arc : setting.arcs) {
      if (arc.number != figure.number || arc.from == arc.to) continue;
      return isNear(*board,
                    geometry::pointAt(board->sightOutline.segments()[static_cast<std::size_t>(arc.from) - 1], 0.5));
    }
  }
  if (base::startsWith(figure.kind, "board.point.")) {
    for (const design::SettingPoint& point : setting.points) {
      if (point.number == figure.number) return isNear(*board, point.at);
    }
  }
  return true;
}

// Lines drawn before: what ends on one needs no measure of its own.
class Drawn {
 public:
  // Returns whether the measure ends on a line that was drawn, and draws its line.
  bool add(const CardMeasure& measure) {
    if (measure.gives == Gives::Curve) return false;
    const bool across = std::fabs(measure.from.y - measure.to.y) < kSame;
    std::vector<double>& lines = across ? m_upright : m_level;
    const double at = across ? measure.to.x : measure.to.y;
    const bool known = std::any_of(lines.begin(), lines.end(), [&](double one) { return std::fabs(one - at) < kSame; });
    if (!known) lines.push_back(at);
    return known;
  }

 private:
  std::vector<double> m_upright, m_level;
};

Datum datumOf(const design::Design& design, const CardMeasure& measure, bool across) {
  if (measure.gives == Gives::Curve) return Datum::Centre;
  if (measure.fromEdge && across)
    return measure.from.x > design.layout.outerWidth / 2 ? Datum::RightEdge : Datum::LeftEdge;
  if (measure.fromEdge) return measure.from.y < design.layout.outerHeight / 2 ? Datum::TopEdge : Datum::BottomEdge;
  if (measure.gives == Gives::Distance) return Datum::Opening;
  return across ? Datum::CentreLine : Datum::SpringingLine;
}

Half halfOf(const design::Design& design, const CardMeasure& measure, bool across) {
  if (measure.gives != Gives::Line && measure.gives != Gives::Place) return Half::Neither;
  const design::BoardLayout& board = *design.layout.board(measure.element);
  const detail::Rectangle sight = detail::sightOf(board);
  const double aside =
      across ? measure.to.x - (design.layout.outerWidth - board.axis) : measure.to.y - (sight.top + sight.bottom) / 2;
  // An axis of the window, or a place on one, is of no half.
  if (!measure.ofWindow && (measure.gives == Gives::Line || std::fabs(aside) < kSame)) return Half::Neither;
  if (across) return aside > 0 ? Half::Right : Half::Left;
  return aside < 0 ? Half::Upper : Half::Lower;
}

}  // namespace

std::optional<CardMeasure> cardMeasure(const design::Design& design, const std::string& figureId) {
  const Figure* figure = design.figures.find(figureId);
  if (figure == nullptr || turnOf(*figure) == Turn::None || boardOf(design, *figure) == nullptr) return std::nullopt;
  auto drawn = drawFigure(design, figureId);
  if (!drawn) return std::nullopt;
  turnToBack(*drawn, design);
  CardMeasure measure;
  measure.figure = figureId;
  measure.element = figure->element;
  measure.gives = givenBy(turnOf(*figure));
  bool placed = false;
  for (const Primitive& primitive : drawn->primitives) {
    if (primitive.role != Role::Dimension) continue;
    if (const auto* path = std::get_if<Path>(&primitive.shape)) measure.arc = path->segments.front();
    const auto* stroke = std::get_if<Stroke>(&primitive.shape);
    if (stroke == nullptr || placed) continue;
    measure.from = stroke->points[0];
    measure.to = stroke->points[1];
    placed = true;
  }
  if (!placed) return std::nullopt;
  const bool across = std::fabs(measure.from.y - measure.to.y) < kSame;
  measure.fromEdge = beginAtEdge(measure.from, measure.to, design.layout.outerWidth, design.layout.outerHeight);
  measure.ofWindow = turnOf(*figure) == Turn::Side || turnOf(*figure) == Turn::Level;
  measure.datum = datumOf(design, measure, across);
  measure.half = halfOf(design, measure, across);
  return measure;
}

std::string boardOfCard(const design::Design& design, const std::vector<WorkflowFigure>& figures) {
  std::string board;
  int placed = 0;
  for (const WorkflowFigure& figure : figures) {
    const auto measure = cardMeasure(design, figure.id);
    if (!measure) continue;
    if (board.empty()) board = measure->element;
    if (measure->element != board) return "";
    ++placed;
  }
  return placed < 2 ? "" : board;
}

std::vector<WorkflowFigure> inOrderOfTheHand(const design::Design& design, const std::vector<WorkflowFigure>& figures) {
  std::vector<std::pair<Turn, WorkflowFigure>> settingOut;
  std::vector<WorkflowFigure> ordered;
  std::optional<std::size_t> place;
  bool string = false;
  for (const WorkflowFigure& one : figures) {
    const Figure* figure = design.figures.find(one.id);
    if (figure == nullptr || isOfNoUse(*figure)) continue;
    string = string || figure->kind == "board.oval.string";
    const Turn turn = turnOf(*figure);
    if (!isSettingOut(turn)) {
      ordered.push_back(one);
      continue;
    }
    if (!place) place = ordered.size();
    if (isOfNearHalf(design, *figure)) settingOut.emplace_back(turn, one);
  }
  if (!place) return ordered;
  std::stable_sort(settingOut.begin(), settingOut.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  Drawn drawn;
  std::vector<WorkflowFigure> kept;
  for (auto& [turn, one] : settingOut) {
    const Figure& figure = *design.figures.find(one.id);
    // With the string round its pins an oval needs no points along it.
    if (string && base::startsWith(figure.kind, "board.oval.from")) continue;
    const auto measure = cardMeasure(design, one.id);
    if (measure && !drawn.add(*measure)) kept.push_back(std::move(one));
  }
  ordered.insert(ordered.begin() + static_cast<std::ptrdiff_t>(*place), kept.begin(), kept.end());
  return ordered;
}

}  // namespace core::sheets
