#include "core/workflow/workflow_json.h"

#include "core/craft/pattern.h"
#include "core/workflow/acts.h"

namespace core::workflow {
namespace {

using base::Value;

// A list belongs to the job and to no bench: it is the same whatever a maker chose.
constexpr units::Marking kListed = units::Marking::Marks;

Value spanJson(const units::Span& span) {
  return Value::array().append(Value::number(span.early.inMinutes())).append(Value::number(span.late.inMinutes()));
}

std::string_view name(waits::Basis basis) {
  switch (basis) {
    case waits::Basis::Label: return "label";
    case waits::Basis::Model: return "model";
    case waits::Basis::Learned: return "learned";
  }
  return "";
}

Value waitJson(const WorkflowWait& wait, const AgendaWait& expected) {
  Value json = Value::object();
  json.set("id", Value::text(wait.id));
  json.set("kind", Value::text(craft::name(wait.kind)));
  json.set("makes", Value::text(wait.makes));
  json.set("opens", Value::number(expected.opens.likely.inMinutes()));
  json.set("closes", expected.closes ? Value::number(expected.closes->likely.inMinutes()) : Value());
  json.set("opensSpan", spanJson(expected.opens));
  json.set("closesSpan", expected.closes ? spanJson(*expected.closes) : Value());
  json.set("basis", Value::text(name(expected.basis)));
  return json;
}

Value stepJson(const WorkflowStep& step, const Agenda& agenda) {
  Value json = Value::object();
  json.set("id", Value::text(step.id));
  json.set("title", Value::text(step.title));
  json.set("technique", Value::text(step.technique));
  json.set("thing", Value::text(step.thing));
  json.set("needs", Value::texts(step.needs));
  json.set("makes", Value::texts(step.makes));
  json.set("ends", Value::texts(step.ends));
  Value figures = Value::array();
  for (const WorkflowFigure& figure : step.figures) {
    if (isNeeded(figure, kListed)) figures.append(Value::text(figure.id));
  }
  json.set("figures", std::move(figures));
  json.set("tools", Value::texts(step.tools));
  Value checks = Value::array();
  for (const WorkflowCheck& check : step.checks) checks.append(Value::text(check.ask));
  json.set("checks", std::move(checks));
  Value cautions = Value::array();
  for (const craft::Caution& caution : step.cautions) {
    if (!craft::concerns(caution.room, agenda.room())) continue;
    cautions.append(Value::text(std::string(craft::name(caution.word)) + ": " + caution.text));
  }
  json.set("cautions", std::move(cautions));
  json.set("hands", Value::text(craft::name(step.hands)));
  json.set("work", Value::number(step.work.likely.inMinutes()));
  json.set("uninterruptible", Value::boolean(step.uninterruptible));
  Value waits = Value::array();
  for (const WorkflowWait& wait : step.waits) waits.append(waitJson(wait, agenda.of(wait)));
  json.set("waits", std::move(waits));
  return json;
}

Value setupJson(const Workflow& workflow, const Act& act) {
  for (const std::size_t step : act.steps) {
    const auto& setup = workflow.steps[step].setup;
    if (setup) return Value::object().set("tool", Value::text(setup->tool)).set("to", Value::text(setup->to));
  }
  return {};
}

Value actJson(const Workflow& workflow, const Act& act) {
  Value json = actHeadJson(workflow, act, act.steps);
  json.set("stage", Value::text(craft::name(act.stage)));
  json.set("hands", Value::text(craft::name(handsOf(workflow, act.steps))));
  double work = 0;
  for (const std::size_t step : act.steps) work += workflow.steps[step].work.likely.inMinutes();
  json.set("work", Value::number(work));
  Value figures = Value::array();
  for (const WorkflowFigure& figure : figuresOf(workflow, act.steps, kListed)) {
    figures.append(Value::object().set("id", Value::text(figure.id)).set("count", Value::integer(figure.count)));
  }
  json.set("figures", std::move(figures));
  json.set("setup", setupJson(workflow, act));
  Value anew = Value::array();
  for (const std::size_t step : act.anew) anew.append(Value::text(workflow.steps[step].id));
  json.set("anew", std::move(anew));
  return json;
}

}  // namespace

Value actHeadJson(const Workflow& workflow, const Act& act, const std::vector<std::size_t>& steps) {
  Value ids = Value::array();
  for (const std::size_t step : steps) ids.append(Value::text(workflow.steps[step].id));
  return Value::object()
      .set("id", Value::text(workflow.steps[act.steps.front()].id))
      .set("title", Value::text(titleOf(workflow, act, steps)))
      .set("steps", std::move(ids));
}

Value stepsJson(const Agenda& agenda, craft::Way way) {
  Value steps = Value::array();
  for (const AgendaStep& ahead : agenda.steps()) steps.append(stepJson(agenda.workflow().steps[ahead.step], agenda));
  Value acts = Value::array();
  for (const Act& act : agenda.workflow().acts(way)) acts.append(actJson(agenda.workflow(), act));
  return Value::object()
      .set("format", Value::text("mountwright-steps/1"))
      .set("steps", std::move(steps))
      .set("way", Value::text(craft::name(way)))
      .set("acts", std::move(acts));
}

Value stepsJson(const Workflow& workflow, craft::Way way) { return stepsJson(Agenda(workflow), way); }

}  // namespace core::workflow
