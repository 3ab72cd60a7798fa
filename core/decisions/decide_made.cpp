#include "core/decisions/decide_made.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/decisions/made_changes.h"
#include "core/jobs/bench_place.h"
#include "core/record/happening.h"

namespace core::decisions {

// This file uses the types of the record throughout.
using namespace record;
namespace {

using base::Message;

std::optional<Message> firstError(const base::Problems& problems) {
  for (const base::Problem& problem : problems.sorted()) {
    if (problem.severity == base::Severity::Error) return problem.message;
  }
  return std::nullopt;
}

// A step whose turn has come, or will have come within the act on the bench: it may be measured at once, or when the
// maker comes back to it.
bool isReached(const jobs::JobAt& job, std::size_t index) {
  if (job.state().steps[index].status != jobs::StepStatus::Ahead || job.canStart(index)) return true;
  const std::vector<std::size_t> act = jobs::benchPlace(job).steps;
  return std::count(act.begin(), act.end(), index) > 0;
}

}  // namespace

bool isCut(const jobs::JobState& state, const std::string& board) {
  const std::string prefix = "board." + board + '.';
  for (const char* name : {"sight.width", "sight.height", "face.width", "face.height"}) {
    if (state.measures.contains(prefix + name)) return true;
  }
  const auto& steps = state.plan->workflow.steps;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (state.steps[i].status != jobs::StepStatus::Done) continue;
    const bool marked = std::any_of(steps[i].figures.begin(), steps[i].figures.end(), [&](const auto& figure) {
      return base::startsWith(figure.id, prefix + "mark.") || base::startsWith(figure.id, prefix + "point.");
    });
    if (marked) return true;
  }
  return false;
}

std::optional<Message> refusalOf(const jobs::JobState& state, const std::string& figure, units::Length value,
                                 const std::string& overrules) {
  // Against what would be there without it, so that measuring again is held to the same as measuring first.
  const design::ReadDesign without = designWithout(state, figure);
  const design::Design& planned = without.design ? *without.design : state.plan->design;
  if (const design::Figure* computed = planned.figures.find(figure)) {
    if (auto slip = design::implausible(figure, value, computed->value)) return slip;
  }
  return firstError(designWith(state, figure, value, overrules).problems);
}

MadeDecision decideMeasure(const jobs::JobAt& job, const intents::EnterAsMade& intent) {
  const jobs::JobState& state = job.state();
  const workflow::Workflow& workflow = state.plan->workflow;
  const auto index = workflow.indexOf(intent.step);
  if (!index) return Message("record.no-such-step").with("step", intent.step);
  const workflow::WorkflowStep& step = workflow.steps[*index];
  const bool here = std::count(step.asMade.begin(), step.asMade.end(), intent.figure) > 0;
  if (!here || !design::isPinnable(intent.figure)) {
    return Message("record.not-measured-here").with("step", step.title).with("figure", intent.figure);
  }
  if (!isReached(job, *index)) return Message("record.not-yet-measured").with("step", step.title);
  if (!intent.overrules.empty() && !state.measures.contains(intent.overrules)) {
    return Message("record.not-measured").with("figure", intent.overrules);
  }
  if (state.design->figures.find(intent.figure) == nullptr)
    return Message("record.not-measured-here").with("step", step.title).with("figure", intent.figure);
  if (const auto refused = refusalOf(state, intent.figure, intent.value, intent.overrules)) return *refused;
  return std::vector{draftOf(Measured{intent.step, intent.figure, intent.value.inNanometres(), intent.overrules})};
}

MadeDecision decideForget(const jobs::JobAt& job, const intents::ForgetAsMade& intent) {
  if (!job.state().measures.contains(intent.figure)) {
    return Message("record.not-measured").with("figure", intent.figure);
  }
  const design::ReadDesign without = designWithout(job.state(), intent.figure);
  if (const auto error = firstError(without.problems)) return *error;
  return std::vector{draftOf(MeasureForgotten{job.state().measures.at(intent.figure).step, intent.figure})};
}

MadeDecision decideFollow(const jobs::JobAt& job, const intents::ChooseFollow& intent) {
  const auto& boards = job.state().plan->design.job.boards;
  const bool inner = std::any_of(boards.begin() + 1, boards.end(),
                                 [&](const design::Board& board) { return board.id == intent.board; });
  if (!inner) return Message("record.no-such-board").with("board", intent.board);
  if (isCut(job.state(), intent.board)) return Message("record.window-already-cut").with("board", intent.board);
  const auto follow = intent.keepReveal ? design::Follow::Reveal : design::Follow::Cover;
  const design::ReadDesign with = designWith(job.state(), intent.board, follow);
  if (const auto error = firstError(with.problems)) return *error;
  return std::vector{draftOf(FollowChosen{intent.board, follow})};
}

}  // namespace core::decisions
