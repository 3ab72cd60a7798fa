// The work of a job: its steps in order, and the whole of it on a fast clock.
#include <cmath>
#include <memory>

#include "app/commands/commands.h"
#include "app/commands/each.h"
#include "app/commands/input.h"
#include "app/commands/kept_record.h"
#include "app/commands/saying.h"
#include "app/words/words.h"
#include "core/design/notices.h"
#include "core/workflow/acts.h"
#include "core/workflow/rehearse.h"
#include "core/workflow/workflow_json.h"

namespace app::commands {
namespace {

using core::base::Message;
using core::base::Value;
using core::workflow::Agenda;
using core::workflow::AgendaStep;
using core::workflow::AgendaWait;
using core::workflow::Rehearsal;
using core::workflow::RehearsalEvent;
using core::workflow::RehearsalKind;
using core::workflow::Workflow;
using core::workflow::WorkflowStep;
using core::workflow::WorkflowWait;

// A job's work, and what lies ahead of it in its own room by what was learned.
struct Work {
  std::unique_ptr<const Workflow> workflow;  // the agenda speaks of it
  Agenda agenda;
};

OrExit<Work> workOf(const CommandLine& line, std::ostream& err) {
  const OrExit<core::design::Design> job = readJob(line.files.first(), err);
  if (!job.value) return {std::nullopt, job.exit};
  auto workflow = composeDesign(line, *job.value, err);
  if (!workflow.value) return {std::nullopt, workflow.exit};
  auto whole = std::make_unique<const Workflow>(std::move(*workflow.value));
  Agenda agenda(*whole, {job.value->job.room, learnedFrom(line, err)});
  for (const Message& why : agenda.byTouch())
    sayProblem(err, line.files.first(), core::design::noticeAt("/room", why), job.value->job.units);
  return {Work{std::move(whole), std::move(agenda)}, kDone};
}

bool isNothing(const core::units::Span& span) {
  using core::units::Duration;
  return span.early == Duration() && span.likely == Duration() && span.late == Duration();
}

// A span that is stated for another room than the job's says so.
QString waitLine(const WorkflowWait& stated, const AgendaWait& wait) {
  const bool atOnce = isNothing(wait.opens);
  const char* id = wait.closes ? (atOnce ? "command.waits-from-now" : "command.waits-until")
                               : (atOnce ? "command.waits-none" : "command.waits");
  Message message = Message(id).with("wait", stated.title);
  if (!atOnce) message.arguments.emplace_back("span", words::aboutSpan(wait.opens).toStdString());
  if (wait.closes) message.arguments.emplace_back("closes", words::aboutSpan(*wait.closes).toStdString());
  const QString line = words::text(message, UnitSystem::Millimetres);
  if (!wait.byTouch) return line;
  return words::text(Message("command.waits-by-touch")
                         .with("line", line.toStdString())
                         .with("celsius", stated.reference.temperature.inCelsius())
                         .with("percent", stated.reference.humidity.inPercent()),
                     UnitSystem::Millimetres);
}

// One row an act, and under it its steps where there are several, each with what it leaves to dry.
void saySteps(std::ostream& out, const Agenda& agenda, core::craft::Way way) {
  const Workflow& workflow = agenda.workflow();
  std::vector<QStringList> rows;
  int number = 0;
  for (const core::workflow::Act& act : workflow.acts(way)) {
    core::units::Duration work;
    for (const std::size_t step : act.steps) work = work + workflow.steps[step].work.likely;
    const bool alone = act.steps.size() == 1;
    if (!act.anew.empty()) {
      const Message anew =
          Message("command.made-anew").with("technique", workflow.steps[act.anew.front()].techniqueTitle);
      rows.push_back({QString(), words::text(anew, UnitSystem::Millimetres)});
    }
    rows.push_back({QString::number(++number),
                    QString::fromStdString(core::workflow::titleOf(workflow, act, act.steps)),
                    alone ? QString::fromStdString(workflow.steps[act.steps.front()].thingName) : QString(),
                    words::hands(core::workflow::handsOf(workflow, act.steps)), words::duration(work)});
    for (const std::size_t index : act.steps) {
      const WorkflowStep& step = workflow.steps[index];
      if (!alone) {
        rows.push_back({QString(), QStringLiteral("  ") + QString::fromStdString(step.title),
                        QString::fromStdString(step.thingName)});
      }
      for (const WorkflowWait& wait : step.waits)
        rows.push_back({QString(), QStringLiteral("    ") + waitLine(wait, agenda.of(wait))});
    }
  }
  sayTable(out, rows, {Align::Right, Align::Left, Align::Left, Align::Left, Align::Right});
}

std::string titled(const Workflow& workflow, const std::string& stepId) {
  const WorkflowStep* step = workflow.find(stepId);
  return step == nullptr ? stepId : '"' + step->title + "\" (" + stepId + ')';
}

core::units::Duration minutes(double value) {
  return core::units::Duration::milliseconds(std::llround(value * 60'000));
}

QString eventText(const Work& work, const RehearsalEvent& event) {
  const Workflow& workflow = *work.workflow;
  const auto found = workflow.findWait(event.wait);
  const std::string title = found.wait == nullptr ? event.wait : found.wait->title;
  const auto said = [](const Message& message) { return words::text(message, UnitSystem::Millimetres); };
  switch (event.kind) {
    case RehearsalKind::Step: {
      const WorkflowStep* step = workflow.find(event.step);
      return QString::fromStdString(step == nullptr ? event.step : step->title);
    }
    case RehearsalKind::Wait: {
      const core::units::Span opens = found.wait == nullptr ? core::units::Span() : work.agenda.of(*found.wait).opens;
      if (isNothing(opens)) return said(Message("rehearsal.at-once").with("wait", title));
      return said(Message("rehearsal.wait").with("wait", title).with("time", words::about(opens.likely).toStdString()));
    }
    case RehearsalKind::Opens: {
      const bool closes = found.wait != nullptr && found.wait->closes;
      return said(Message(closes ? "rehearsal.opens" : "rehearsal.over").with("wait", title));
    }
    case RehearsalKind::Closes: return said(Message("rehearsal.closes").with("wait", title));
    case RehearsalKind::Alert: return said(Message("rehearsal.alert").with("wait", title));
    case RehearsalKind::Missed:
      return said(Message("rehearsal.missed")
                      .with("wait", title)
                      .with("gated", titled(workflow, event.step))
                      .with("busy", titled(workflow, event.other)));
  }
  return {};
}

Value rehearsalJson(const Work& work, const Rehearsal& rehearsal, core::craft::Way way) {
  Value acts = Value::array();
  for (const core::workflow::ActWorked& worked : rehearsal.acts) {
    const core::workflow::Act& act = work.workflow->acts(way)[worked.act];
    Value json = core::workflow::actHeadJson(*work.workflow, act, worked.steps);
    acts.append(std::move(json.set("at", Value::number(worked.at))));
  }
  Value events = Value::array();
  for (const RehearsalEvent& event : rehearsal.events) {
    Value json = Value::object();
    json.set("at", Value::number(event.at));
    json.set("kind", Value::text(core::workflow::name(event.kind)));
    json.set("step", Value::text(event.step));
    json.set("text", Value::text(eventText(work, event).toStdString()));
    events.append(std::move(json));
  }
  return Value::object()
      .set("format", Value::text("mountwright-rehearsal/1"))
      .set("minutes", Value::number(rehearsal.minutes))
      .set("hands", Value::number(rehearsal.hands))
      .set("changes", Value::object()
                          .set("hands", Value::integer(rehearsal.handsChanges))
                          .set("setups", Value::integer(rehearsal.setups)))
      .set("acts", std::move(acts))
      .set("events", std::move(events));
}

// The acts with what opens, closes and is missed between them.
void sayRehearsal(std::ostream& out, const Work& work, const Rehearsal& rehearsal, core::craft::Way way) {
  std::vector<QStringList> rows;
  std::size_t next = 0;
  for (const RehearsalEvent& event : rehearsal.events) {
    while (next < rehearsal.acts.size() && rehearsal.acts[next].at <= event.at) {
      const core::workflow::ActWorked& worked = rehearsal.acts[next++];
      const core::workflow::Act& act = work.workflow->acts(way)[worked.act];
      rows.push_back({words::duration(minutes(worked.at)),
                      QString::fromStdString(core::workflow::titleOf(*work.workflow, act, worked.steps))});
    }
    if (event.kind == RehearsalKind::Step) continue;
    rows.push_back({words::duration(minutes(event.at)), QStringLiteral("  ") + eventText(work, event)});
  }
  sayTable(out, rows, {Align::Right, Align::Left});
  say(out, Message("rehearsal.length").with("time", words::about(minutes(rehearsal.minutes)).toStdString()));
  say(out, Message("rehearsal.changes")
               .with("acts", static_cast<std::int64_t>(rehearsal.acts.size()))
               .with("hands", std::int64_t{rehearsal.handsChanges})
               .with("setups", std::int64_t{rehearsal.setups}));
}

}  // namespace

int steps(const CommandLine& line, std::ostream& out, std::ostream& err) {
  const OrExit<Work> work = workOf(line, err);
  if (!work.value) return work.exit;
  if (line.json) {
    sayJson(out, core::workflow::stepsJson(work.value->agenda, line.way));
  } else {
    saySteps(out, work.value->agenda, line.way);
  }
  return kDone;
}

int rehearse(const CommandLine& line, std::ostream& out, std::ostream& err) {
  const OrExit<Work> work = workOf(line, err);
  if (!work.value) return work.exit;
  const Rehearsal rehearsal = core::workflow::rehearse(work.value->agenda, line.way);
  if (line.json) {
    sayJson(out, rehearsalJson(*work.value, rehearsal, line.way));
  } else {
    sayRehearsal(out, *work.value, rehearsal, line.way);
  }
  if (!rehearsal.missed) return kDone;
  for (const RehearsalEvent& event : rehearsal.events) {
    if (event.kind == RehearsalKind::Missed) {
      sayProblem(err, line.files.first(),
                 Message("command.missed").with("text", eventText(*work.value, event).toStdString()));
    }
  }
  return kProblem;
}

}  // namespace app::commands
