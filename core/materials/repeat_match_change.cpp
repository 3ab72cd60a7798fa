// Applies a change to the job, and writes it into the file.
#include <cstdlib>

#include "core/base/text.h"
#include "core/materials/repeat_match_internal.h"
#include "core/units/length_entry.h"

namespace core::materials::detail {
namespace {

using design::Centring;

Length nm(Nm count) { return Length::nanometres(count); }

Centring other(Centring centring) { return centring == Centring::Motif ? Centring::Ground : Centring::Motif; }

design::FourBorders fourBorders(const design::Layout& layout) {
  const design::BoardLayout& top = layout.boards.front();
  return {units::nearestLength(top.borderTop), units::nearestLength(top.borderBottom),
          units::nearestLength(top.borderLeft), units::nearestLength(top.borderRight)};
}

// Borders given by a rule (a ratio, an outer size) are written out as four where the rule could not keep the others.
void changeBorders(design::Job& job, const design::Layout& layout, Nm sides, Nm topBottom) {
  if (sides == 0 && topBottom == 0) return;
  auto& entry = job.borders.entry;
  if (auto* outer = std::get_if<design::OuterAndWeighting>(&entry)) {
    if (topBottom == 0 || outer->weighting.byAddition) {
      outer->width = outer->width + nm(2 * sides);
      outer->height = outer->height + nm(2 * topBottom);
      return;
    }
  }
  design::FourBorders four = fourBorders(layout);
  if (const auto* entered = std::get_if<design::FourBorders>(&entry)) four = *entered;
  four.left = four.left + nm(sides);
  four.right = four.right + nm(sides);
  four.top = four.top + nm(topBottom);
  four.bottom = four.bottom + nm(topBottom);
  entry = four;
}

bool within(Length length, Length least) { return length >= least && length <= units::kLongestLength; }

bool bordersWithin(const design::Borders& borders) {
  if (const auto* four = std::get_if<design::FourBorders>(&borders.entry)) {
    for (const Length border : {four->top, four->bottom, four->left, four->right}) {
      if (!within(border, nm(1))) return false;
    }
  } else if (const auto* outer = std::get_if<design::OuterAndWeighting>(&borders.entry)) {
    return within(outer->width, nm(1)) && within(outer->height, nm(1));
  }
  return true;
}

// A length as a value of the file.
std::string literal(Length length, units::UnitSystem system) { return '"' + units::entryText(length, system) + '"'; }

std::string word(Centring centring) { return centring == Centring::Motif ? "\"motif\"" : "\"ground\""; }

void editBorders(const design::Job& job, const design::Job& changed, std::vector<JobEdit>& edits) {
  const std::string& at = changed.borders.place.pointer;
  const auto text = [&](Length length) { return literal(length, job.units); };
  if (const auto* outer = std::get_if<design::OuterAndWeighting>(&changed.borders.entry)) {
    const auto& was = std::get<design::OuterAndWeighting>(job.borders.entry);
    if (outer->width != was.width) edits.push_back({at + "/outer/width", text(outer->width)});
    if (outer->height != was.height) edits.push_back({at + "/outer/height", text(outer->height)});
    return;
  }
  const auto& four = std::get<design::FourBorders>(changed.borders.entry);
  edits.push_back({at, R"({"top": )" + text(four.top) + R"(, "bottom": )" + text(four.bottom) + R"(, "left": )" +
                           text(four.left) + R"(, "right": )" + text(four.right) + "}"});
}

// Brings now + by to the nearest step.
void settle(Nm& by, Length now, Nm step) {
  if (by == 0) return;
  const Nm whole = now.inNanometres() + by;
  const Nm half = whole < 0 ? -(step / 2) : step / 2;
  by = (whole + half) / step * step - now.inNanometres();
}

}  // namespace

Nm cost(const Change& change) {
  Nm sum = std::abs(change.borderSides) + std::abs(change.borderTopBottom);
  for (const BandChange& band : change.bands) {
    sum += std::abs(band.sides) + std::abs(band.topBottom) + std::abs(band.width);
  }
  return sum;
}

std::optional<design::Job> applied(const design::Job& job, const design::Layout& layout, const Change& change) {
  design::Job changed = job;
  for (std::size_t i = 0; i < change.bands.size(); ++i) {
    const BandChange& by = change.bands[i];
    design::Band& band = changed.bands[i];
    band.offsetSides = band.offsetSides + nm(by.sides);
    band.offsetTopBottom = band.offsetTopBottom + nm(by.topBottom);
    band.width = band.width + nm(by.width);
    if (by.flipHorizontal) band.centreHorizontal = other(band.centreHorizontal);
    if (by.flipVertical) band.centreVertical = other(band.centreVertical);
    if (!within(band.offsetSides, Length()) || !within(band.offsetTopBottom, Length()) || !within(band.width, nm(1))) {
      return std::nullopt;
    }
  }
  changeBorders(changed, layout, change.borderSides, change.borderTopBottom);
  if (!bordersWithin(changed.borders)) return std::nullopt;
  return changed;
}

std::vector<MeasureChange> measuresOf(const Change& change) {
  std::vector<MeasureChange> measures;
  const auto add = [&](Measure measure, std::size_t band, Nm by) {
    if (by != 0) measures.push_back({measure, band, nm(by)});
  };
  for (std::size_t i = change.bands.size(); i-- > 0;) {
    add(Measure::Sides, i, change.bands[i].sides);
    add(Measure::TopBottom, i, change.bands[i].topBottom);
    add(Measure::Width, i, change.bands[i].width);
  }
  add(Measure::BorderSides, 0, change.borderSides);
  add(Measure::BorderTopBottom, 0, change.borderTopBottom);
  return measures;
}

std::vector<CentringChange> centringsOf(const Change& change, const design::Job& changed) {
  std::vector<CentringChange> centrings;
  for (std::size_t i = 0; i < change.bands.size(); ++i) {
    if (change.bands[i].flipHorizontal) centrings.push_back({i, true, changed.bands[i].centreHorizontal});
    if (change.bands[i].flipVertical) centrings.push_back({i, false, changed.bands[i].centreVertical});
  }
  return centrings;
}

std::vector<JobEdit> editsOf(const Change& change, const design::Job& job, const design::Job& changed) {
  std::vector<JobEdit> edits;
  for (std::size_t i = 0; i < change.bands.size(); ++i) {
    const BandChange& by = change.bands[i];
    const design::Band& band = changed.bands[i];
    const std::string& at = band.place.pointer;
    const std::string sides = literal(band.offsetSides, job.units);
    const std::string topBottom = literal(band.offsetTopBottom, job.units);
    if (by.sides != 0 || by.topBottom != 0) {
      const bool alike = band.offsetSides == band.offsetTopBottom;
      edits.push_back(
          {at + "/offset", alike ? sides : R"({"sides": )" + sides + R"(, "topBottom": )" + topBottom + "}"});
    }
    if (by.width != 0) edits.push_back({at + "/width", literal(band.width, job.units)});
    if (by.flipHorizontal || by.flipVertical) {
      edits.push_back({at + "/centre", R"({"horizontal": )" + word(band.centreHorizontal) + R"(, "vertical": )" +
                                           word(band.centreVertical) + "}"});
    }
  }
  if (change.borderSides != 0 || change.borderTopBottom != 0) editBorders(job, changed, edits);
  return edits;
}

Change onSteps(const Change& change, const design::Job& job) {
  const Nm step =
      job.units == units::UnitSystem::Inches ? units::kNanometresPerInch / 32 : units::kNanometresPerMillimetre / 10;
  Change settled = change;
  for (std::size_t i = 0; i < settled.bands.size(); ++i) {
    settle(settled.bands[i].sides, job.bands[i].offsetSides, step);
    settle(settled.bands[i].topBottom, job.bands[i].offsetTopBottom, step);
    settle(settled.bands[i].width, job.bands[i].width, step);
  }
  // Borders follow a rule of the maker's own; what they change by is set, not what they come to.
  settle(settled.borderSides, Length(), step);
  settle(settled.borderTopBottom, Length(), step);
  return settled;
}

}  // namespace core::materials::detail
