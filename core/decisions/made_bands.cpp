#include "core/decisions/made_bands.h"

#include <algorithm>
#include <cmath>

#include "core/decisions/decide_made.h"
#include "core/decisions/made_changes.h"
#include "core/units/length_entry.h"

namespace core::decisions {
namespace {

constexpr double kHairsbreadth = 1e-9;
constexpr double kNanometre = 1e-6;

}  // namespace

MadeOutcome outcomeOf(const jobs::JobState& state, const design::Design& planned, const std::string& figure,
                      units::Length value) {
  MadeOutcome found;
  if (const auto refused = refusalOf(state, figure, value)) {
    found.outcome = Outcome::Refused;
    found.refusal = refused->id;
    return found;
  }
  const design::Figure* drawn = planned.figures.find(figure);
  const double within = design::toleranceOf(figure).within.inMillimetres();
  if (drawn != nullptr && std::fabs(value.inMillimetres() - drawn->value) <= within + kHairsbreadth) return found;
  found.outcome = Outcome::Follows;
  const design::ReadDesign with = designWith(state, figure, value);
  if (!with.design) return found;
  const MadeChanges changes = changesBetween(state, planned, *with.design);
  if (!changes.contradicted.empty()) found.outcome = Outcome::Contradicts;
  for (const FigureChange& change : changes.figures) {
    if (change.ahead) found.follow.insert(change.figure.substr(0, change.figure.find('.')));
  }
  return found;
}

std::vector<MadeBand> bandsBetween(const jobs::JobState& state, const design::Design& planned,
                                   const std::string& figure, double from, double to, double reading) {
  const auto at = [&](double value) { return outcomeOf(state, planned, figure, units::nearestLength(value)); };
  std::vector<MadeBand> bands;
  // Adds what lies between two values, each of which may belong to what lies beyond it.
  const auto add = [&](double begin, double end) {
    if (end - begin <= 2 * kNanometre) return;
    double start = begin;
    MadeOutcome here = at(begin + kNanometre);
    while (start < end) {
      const double next = std::min(end, start + reading);
      const MadeOutcome there = at(std::min(next, end - kNanometre));
      double edge = next;
      if (there != here) {
        double low = start;
        double high = next;
        while (high - low > reading / 4) {
          const double middle = (low + high) / 2;
          (at(middle) == here ? low : high) = middle;
        }
        edge = (low + high) / 2;
      }
      const bool goesOn = !bands.empty() && bands.back().outcome == here;
      if (goesOn) {
        bands.back().to = edge;
      } else {
        bands.push_back({start, edge, here});
      }
      if (there != here && next == end) bands.push_back({edge, end, there});
      start = there == here || next == end ? next : edge;
      here = there;
    }
  };
  const design::Figure* drawn = planned.figures.find(figure);
  const double within = design::toleranceOf(figure).within.inMillimetres();
  const double low = drawn == nullptr ? to : std::clamp(drawn->value - within, from, to);
  const double high = drawn == nullptr ? to : std::clamp(drawn->value + within, from, to);
  add(from, low);
  add(low, high);
  add(high, to);
  return bands;
}

}  // namespace core::decisions
