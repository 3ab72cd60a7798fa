#include "core/sheets/measure.h"

#include <cmath>
#include <set>
#include <string_view>
#include <utility>

#include "core/sheets/card_lines.h"

namespace core::sheets {
namespace {

constexpr double kLevelWithin = 1e-6;
// How far a witness line goes on past the dimension, in cap heights.
constexpr double kPast = 0.3;

// What the hand draws or cuts at the end of the measure; at the ends of all others something lies already.
bool givesLine(const design::Figure& figure) {
  static const std::set<std::string_view> kKinds = {"outer.width",
                                                    "outer.height",
                                                    "band.strip.horizontal",
                                                    "band.strip.vertical",
                                                    "band.strip.width",
                                                    "band.dryEnd",
                                                    "band.glueFrom",
                                                    "band.firstMotif.horizontal",
                                                    "band.firstMotif.vertical",
                                                    "board.mark.left",
                                                    "board.mark.right",
                                                    "board.mark.top",
                                                    "board.mark.bottom",
                                                    "board.back.left",
                                                    "board.back.right",
                                                    "board.border.top",
                                                    "board.border.bottom",
                                                    "board.border.left",
                                                    "board.border.right",
                                                    "line.offset",
                                                    "line.fromFace.sides",
                                                    "line.fromFace.topBottom",
                                                    "spandrel.width",
                                                    "spandrel.height",
                                                    "wash.fromFace.sides",
                                                    "wash.fromFace.topBottom"};
  return kKinds.contains(figure.kind);
}

}  // namespace

bool Measure::isLevel() const { return std::fabs(from.y - to.y) < kLevelWithin; }

bool beginAtEdge(Point& from, Point& to, double width, double height) {
  const auto isSame = [](double one, double other) { return std::fabs(one - other) < kLevelWithin; };
  const bool level = isSame(from.y, to.y);
  const bool upright = isSame(from.x, to.x);
  const auto onEdge = [&](const Point& point) {
    return (level && (isSame(point.x, 0) || isSame(point.x, width))) ||
           (upright && (isSame(point.y, 0) || isSame(point.y, height)));
  };
  if (onEdge(to) && !onEdge(from)) std::swap(from, to);
  return onEdge(from);
}

std::optional<Measure> measureOf(const std::vector<Primitive>& dimension, const design::Figure& figure, double width,
                                 double height) {
  const Stroke* line = nullptr;
  for (const Primitive& primitive : dimension) {
    if (primitive.role != Role::Dimension) continue;
    const auto* stroke = std::get_if<Stroke>(&primitive.shape);
    if (stroke == nullptr) return std::nullopt;
    // The strokes at its ends come after it.
    if (line == nullptr) line = stroke;
  }
  if (line == nullptr || line->points.size() != 2) return std::nullopt;
  Measure measure{line->points[0], line->points[1], false, givesLine(figure) ? Gives::Line : Gives::Distance};
  if (!measure.isLevel() && std::fabs(measure.from.x - measure.to.x) >= kLevelWithin) return std::nullopt;
  measure.fromEdge = beginAtEdge(measure.from, measure.to, width, height);
  return measure;
}

std::vector<Primitive> measureLines(const Measure& measure, const geometry::Rectangle& edges, double beside,
                                    double cap) {
  detail::CardPlace place;
  place.scale = 1;
  place.edges = edges;
  place.cap = cap;
  CardMeasure lines;
  lines.from = measure.from;
  lines.to = measure.to;
  lines.fromEdge = measure.fromEdge;
  lines.gives = measure.gives;
  const bool level = measure.isLevel();
  const auto aside = [&](Point point) {
    (level ? point.y : point.x) = beside;
    return point;
  };
  std::vector<Primitive> list;
  for (const Point& end : {measure.from, measure.to}) {
    Point past = aside(end);
    double& at = level ? past.y : past.x;
    at += (at < (level ? end.y : end.x) ? -kPast : kPast) * cap;
    list.push_back({"", Role::Setting, Stroke{{end, past}, false}});
  }
  detail::addDatum(list, place, lines);
  detail::addGiven(list, place, lines);
  detail::addDimension(list, place, lines, aside(measure.from), aside(measure.to));
  return list;
}

}  // namespace core::sheets
