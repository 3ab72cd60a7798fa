#include "core/design/outer_size.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "core/units/length_entry.h"

namespace core::design {
namespace {

using base::Message;
using base::Millimetres;
using units::Rounding;
using units::UnitSystem;

using Nm = std::int64_t;

Length nm(Nm count) { return Length::nanometres(count); }

std::string literal(Length length, UnitSystem system) { return '"' + units::entryText(length, system) + '"'; }

// A size that is whole, or that the maker entered, stays to the nanometre; any other is written on the steps of a rule.
Length kept(const std::optional<Length>& wanted, double now, bool entered, UnitSystem system) {
  if (wanted) return *wanted;
  return entered || isWhole(now, system) ? units::nearestLength(now) : units::onStep(now, system, Rounding::Nearest);
}

OuterAndWeighting byOuter(const Weighting& weighting, bool entered, const Layout& layout, const OuterSize& size,
                          UnitSystem system) {
  return {kept(size.width, layout.outerWidth, entered, system), kept(size.height, layout.outerHeight, entered, system),
          weighting};
}

// An opening that is no whole number of nanometres leaves the mount larger by less than one, so that it is not shown a
// step too small.
Length above(double millimetres) {
  constexpr double kLastBit = 1e-3;  // nm
  return nm(static_cast<Nm>(std::ceil(millimetres * static_cast<double>(units::kNanometresPerMillimetre) - kLastBit)));
}

FourBorders byFour(const FourBorders& four, const Layout& layout, const OuterSize& size) {
  FourBorders to = four;
  const Box& sight = layout.boards.front().sight;
  if (size.width) {
    const Length both = above(size.width->inMillimetres() - sight.width);
    const Nm more = (both - four.left - four.right).inNanometres();
    to.left = four.left + nm(more / 2);
    to.right = both - to.left;
  }
  if (size.height) {
    const Length both = above(size.height->inMillimetres() - sight.height);
    const double share = four.top.inMillimetres() / (four.top + four.bottom).inMillimetres();
    to.top = units::nearestLength(both.inMillimetres() * share);
    to.bottom = both - to.top;
  }
  return to;
}

struct SizedBorders {
  const Layout& layout;
  const OuterSize& size;
  UnitSystem system;

  decltype(Borders::entry) operator()(const FourBorders& entry) const { return byFour(entry, layout, size); }
  decltype(Borders::entry) operator()(const SidesAndWeighting& entry) const {
    return byOuter(entry.weighting, false, layout, size, system);
  }
  decltype(Borders::entry) operator()(const OuterAndWeighting& entry) const {
    return byOuter(entry.weighting, true, layout, size, system);
  }
};

// The weighting stays where it is in the file: only what stands beside it changes.
std::vector<JobEdit> editsOf(const Job& job, const Borders& to) {
  const std::string& at = job.borders.place.pointer;
  const auto text = [&](Length length) { return literal(length, job.units); };
  std::vector<JobEdit> edits;
  if (const auto* four = std::get_if<FourBorders>(&to.entry)) {
    const std::string sides = four->left == four->right
                                  ? R"("sides": )" + text(four->left)
                                  : R"("left": )" + text(four->left) + R"(, "right": )" + text(four->right);
    edits.push_back(
        {at, R"({"top": )" + text(four->top) + R"(, "bottom": )" + text(four->bottom) + ", " + sides + "}"});
    return edits;
  }
  const auto& outer = std::get<OuterAndWeighting>(to.entry);
  if (const auto* was = std::get_if<OuterAndWeighting>(&job.borders.entry)) {
    if (outer.width != was->width) edits.push_back({at + "/outer/width", text(outer.width)});
    if (outer.height != was->height) edits.push_back({at + "/outer/height", text(outer.height)});
    return edits;
  }
  edits.push_back({at + "/sides", ""});
  edits.push_back({at + "/outer", R"({"width": )" + text(outer.width) + R"(, "height": )" + text(outer.height) + "}"});
  return edits;
}

// A difference that the display does not show is none to the maker.
bool differs(double was, double now, UnitSystem system, Rounding rounding) {
  return units::onStep(was, system, rounding) != units::onStep(now, system, rounding);
}

void say(const Job& job, const Layout& was, const Layout& now, const OuterSize& wanted, SizeChange& change) {
  // As the figures of the size are shown.
  const auto size = [&](const char* id, double before, double after, bool asked) {
    if (std::fabs(before - after) < 1e-6) return;
    const std::string from = units::lengthText(before, job.units, Rounding::Down);
    const std::string to = units::lengthText(after, job.units, Rounding::Down);
    if (from != to) {
      change.sizes.push_back(Message(id).with("was", from).with("now", to));
    } else if (asked) {
      // Lengths that look alike are told apart by the words.
      change.sizes.push_back(Message(id).with("was", Millimetres{before}).with("now", Millimetres{after}));
    }
  };
  size("sized.width", was.outerWidth, now.outerWidth, wanted.width.has_value());
  size("sized.height", was.outerHeight, now.outerHeight, wanted.height.has_value());
  const auto border = [&](const char* id, double before, double after) {
    if (!differs(before, after, job.units, Rounding::Nearest)) return;
    change.borders.push_back(Message(id).with("was", Millimetres{before}).with("now", Millimetres{after}));
  };
  const BoardLayout& from = was.boards.front();
  const BoardLayout& to = now.boards.front();
  if (from.borderLeft == from.borderRight && to.borderLeft == to.borderRight) {
    border("sized.border-sides", from.borderLeft, to.borderLeft);
  } else {
    border("sized.border-left", from.borderLeft, to.borderLeft);
    border("sized.border-right", from.borderRight, to.borderRight);
  }
  border("sized.border-top", from.borderTop, to.borderTop);
  border("sized.border-bottom", from.borderBottom, to.borderBottom);
  if (std::holds_alternative<SidesAndWeighting>(job.borders.entry)) change.besides.emplace_back("sized.by-outer");
}

}  // namespace

SizeChange sizedTo(const Job& job, const Layout& layout, const OuterSize& size) {
  SizeChange change;
  const auto cost = [](const std::optional<Length>& to, double now) {
    return to ? std::abs((*to - units::nearestLength(now)).inNanometres()) : Nm{0};
  };
  const Nm wider = cost(size.width, layout.outerWidth);
  const Nm higher = cost(size.height, layout.outerHeight);
  change.to = job.borders;
  // Off by less than a nanometre a size is what it is to be.
  if (wider == 0 && higher == 0) return change;
  change.cost = nm(wider + higher);
  change.to.entry = std::visit(SizedBorders{layout, size, job.units}, job.borders.entry);
  change.edits = editsOf(job, change.to);
  Job changed = job;
  changed.borders = change.to;
  const Layout after = layOut(changed, change.problems);
  if (!change.problems.hasErrors()) say(job, layout, after, size, change);
  return change;
}

Length wholeStep(UnitSystem system) {
  constexpr Nm kEighths = 8;
  return nm(system == UnitSystem::Inches ? units::kNanometresPerInch / kEighths : units::kNanometresPerMillimetre);
}

bool isWhole(double millimetres, UnitSystem system) {
  constexpr double kLess = 1e-6;
  const double steps = millimetres / wholeStep(system).inMillimetres();
  return std::fabs(steps - std::round(steps)) * wholeStep(system).inMillimetres() <= kLess;
}

std::vector<SizeChange> wholeSizes(const Job& job, const Layout& layout) {
  // What is whole stays; what is not may become the next whole size either way.
  const auto choices = [&](double now) -> std::vector<std::optional<Length>> {
    if (isWhole(now, job.units)) return {std::nullopt};
    const Nm step = wholeStep(job.units).inNanometres();
    const Nm steps = static_cast<Nm>(std::floor(now / wholeStep(job.units).inMillimetres()));
    std::vector<std::optional<Length>> both = {nm((steps + 1) * step)};
    if (steps > 0) both.insert(both.begin(), nm(steps * step));
    return both;
  };
  std::vector<SizeChange> changes;
  for (const auto& width : choices(layout.outerWidth)) {
    for (const auto& height : choices(layout.outerHeight)) {
      SizeChange change = sizedTo(job, layout, {width, height});
      if (!change.edits.empty() && !change.problems.hasErrors()) changes.push_back(std::move(change));
    }
  }
  std::stable_sort(changes.begin(), changes.end(),
                   [](const SizeChange& a, const SizeChange& b) { return a.cost < b.cost; });
  return changes;
}

}  // namespace core::design
