#include "core/decisions/made_changes.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/base/text.h"
#include "core/decisions/decide_made.h"

namespace core::decisions {

// This file uses the types of the record throughout.
using namespace record;
namespace {

using design::Figure;

// Elements something was measured of between the two designs: their own figures differ because they were measured.
std::set<std::string> measuredElements(const design::Design& before, const design::Design& after) {
  std::set<std::string> elements;
  const auto note = [&](const design::Design& one, const design::Design& other) {
    for (const auto& [id, value] : one.made.pins) {
      if (other.made.pin(id) == value) continue;
      const Figure* figure = one.figures.find(id);
      if (figure != nullptr) elements.insert(figure->element);
    }
  };
  note(before, after);
  note(after, before);
  return elements;
}

double toleranceOf(const Figure& figure) {
  return figure.unit == design::FigureUnit::Millimetre ? design::toleranceOf(figure.id).within.inMillimetres() : 0;
}

}  // namespace

MadeChanges changesBetween(const jobs::JobState& state, const design::Design& before, const design::Design& after) {
  MadeChanges changes;
  const auto measured = measuredElements(before, after);
  const auto& steps = state.plan->workflow.steps;
  for (const Figure& now : after.figures.all()) {
    const Figure* was = before.figures.find(now.id);
    if (was == nullptr || was->display == now.display || now.made) continue;
    FigureChange change{now.id, was->value, now.value, was->display, now.display, false};
    const bool off = std::fabs(now.value - was->value) > toleranceOf(now) + 1e-9;
    for (std::size_t i = 0; i < steps.size(); ++i) {
      const auto& used = steps[i].figures;
      if (std::none_of(used.begin(), used.end(), [&](const auto& figure) { return figure.id == now.id; })) continue;
      if (state.steps[i].status != jobs::StepStatus::Done) {
        change.ahead = true;
      } else if (off && !measured.contains(now.element)) {
        changes.contradicted.push_back({i, change});
      }
    }
    changes.figures.push_back(std::move(change));
  }
  return changes;
}

design::ReadDesign designWith(const jobs::JobState& state, const std::string& figure, units::Length value,
                              const std::string& overrules) {
  design::AsMade made = state.made();
  if (!overrules.empty()) made.pins.erase(overrules);
  made.pins[figure] = value;
  return design::remeasured(state.plan->design, std::move(made));
}

design::ReadDesign designWith(const jobs::JobState& state, const std::string& board, design::Follow follow) {
  design::AsMade made = state.made();
  made.follows[board] = follow;
  return design::remeasured(state.plan->design, std::move(made));
}

design::ReadDesign designWithout(const jobs::JobState& state, const std::string& figure) {
  design::AsMade made = state.made();
  made.pins.erase(figure);
  return design::remeasured(state.plan->design, std::move(made));
}

std::string boardToFollow(const jobs::JobState& state) {
  const auto& planned = state.plan->design.layout.boards;
  const auto& boards = state.design->layout.boards;
  for (std::size_t i = 1; i < boards.size(); ++i) {
    const auto off = [&](double now, double then) { return std::fabs(now - then) > 1e-9; };
    if (!off(boards[i - 1].sight.width, planned[i - 1].sight.width) &&
        !off(boards[i - 1].sight.height, planned[i - 1].sight.height)) {
      continue;
    }
    if (!isCut(state, boards[i].id)) return boards[i].id;
  }
  return "";
}

std::optional<Kept> keptBy(const jobs::JobState& state, const std::string& board, design::Follow follow) {
  const design::ReadDesign read = designWith(state, board, follow);
  if (!read.design) return std::nullopt;
  const auto shown = [&](const char* name) {
    const design::Figure* found = read.design->figures.find("board." + board + name);
    return found == nullptr ? std::string() : found->display;
  };
  Kept kept{shown(".reveal"), shown(".reveal.flat"), shown(".sight.width"), shown(".sight.height"), std::nullopt};
  if (read.design->job.window.floats) return kept;
  const auto& visible = read.design->layout.visible;
  const design::Artwork& art = read.design->job.artwork;
  kept.cover = std::min(art.width.inMillimetres() - visible.width, art.height.inMillimetres() - visible.height) / 2;
  return kept;
}

}  // namespace core::decisions
