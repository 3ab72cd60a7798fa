#pragma once
// The names that the screens use for things of a job.
#include <QString>
#include <QStringList>

#include "app/convert/text.h"
#include "app/words/words.h"
#include "core/jobs/job_state.h"
#include "core/jobs/touch_tests.h"
#include "core/workflow/acts.h"

namespace app::viewmodels {

using words::capitalised;

// The board, strip or field a step is done for, where its title does not name it already; "" otherwise.
inline QString thingBeside(const core::workflow::WorkflowStep& step) {
  const QString thing = convert::toQt(step.thingName);
  return convert::toQt(step.title).contains(thing, Qt::CaseInsensitive) ? QString() : capitalised(thing);
}

// The act and its object, so that steps with the same title can be distinguished.
inline QString actName(const core::workflow::WorkflowStep& step) {
  const QString thing = thingBeside(step);
  const QString title = convert::toQt(step.title);
  return thing.isEmpty() ? title : title + QStringLiteral(" · ") + convert::toQt(step.thingName);
}

// The title of the act that steps of one way are worked in, or of what is left of it.
inline QString actTitle(const core::workflow::Workflow& workflow, core::craft::Way way,
                        const std::vector<std::size_t>& steps) {
  if (steps.empty()) return {};
  const core::workflow::Act& act = workflow.acts(way)[workflow.actOf(way, steps.front())];
  return convert::toQt(core::workflow::titleOf(workflow, act, steps));
}

// The same with its object, where it is one step.
inline QString actName(const core::workflow::Workflow& workflow, core::craft::Way way,
                       const std::vector<std::size_t>& steps) {
  return steps.size() == 1 ? actName(workflow.steps[steps.front()]) : actTitle(workflow, way, steps);
}

// The part of a piece's title that distinguishes it from others: up to the first comma.
inline QString pieceName(const std::string& title) { return convert::toQt(title).section(QLatin1Char(','), 0, 0); }

// The names of a touch test's answers; "" for one the wait cannot have.
struct TestAnswers {
  QString notYet;
  QString found;
  QString pastIt;
  core::intents::Verdict verdict = core::intents::Verdict::Dry;  // of `found`
};

inline TestAnswers answersTo(const core::workflow::WorkflowWait& wait) {
  using core::intents::Verdict;
  TestAnswers answers;
  answers.verdict = core::jobs::foundOf(wait);
  for (const Verdict verdict : core::jobs::verdictsOf(wait)) {
    QString& answer = verdict == Verdict::NotYet   ? answers.notYet
                      : verdict == Verdict::PastIt ? answers.pastIt
                                                   : answers.found;
    answer = convert::toQt(core::jobs::answerOf(wait, verdict));
  }
  return answers;
}

// "top strip of inner band: paste sets"; the wait alone where the step is for the whole job.
inline QString waitName(const core::workflow::Workflow::FoundWait& found) {
  const QString title = convert::toQt(found.wait->title);
  if (found.step->thingName.empty()) return capitalised(title);
  return capitalised(convert::toQt(found.step->thingName)) + QStringLiteral(": ") + title;
}
inline QString waitName(const core::jobs::RunningWait& run) { return waitName({run.step, run.wait}); }

// The basis of a wait's times, in one line: "cool and damp ×1.66; your last three ran 25 % slow".
inline QString whyText(const core::waits::WaitState& state) {
  QStringList reasons;
  for (const core::base::Message& reason : state.why) {
    reasons << words::text(reason, core::units::UnitSystem::Millimetres);
  }
  return reasons.join(QStringLiteral("; "));
}

}  // namespace app::viewmodels
