// Every measure of a job.
#include "app/commands/commands.h"
#include "app/commands/each.h"
#include "app/commands/input.h"
#include "app/commands/saying.h"
#include "app/words/words.h"

namespace app::commands {
namespace {

using core::base::Value;
using core::design::Figure;
using core::design::Figures;

Value figureJson(const Figure& figure) {
  return Value::object()
      .set("id", Value::text(figure.id))
      .set("label", Value::text(words::figureLabel(figure).toStdString()))
      .set("value", Value::number(figure.value))
      .set("unit", Value::text(core::design::name(figure.unit)))
      .set("display", Value::text(figure.display))
      .set("datum", Value::text(words::figureDatum(figure).toStdString()));
}

Value figuresJson(const Figures& figures) {
  Value list = Value::array();
  for (const Figure& figure : figures.all()) {
    if (!figure.check && !figure.setting) list.append(figureJson(figure));
  }
  return Value::object().set("format", Value::text("mountwright-figures/1")).set("figures", std::move(list));
}

void sayFigures(std::ostream& out, const Figures& figures) {
  std::vector<QStringList> rows;
  for (const Figure& figure : figures.all()) {
    if (figure.check || figure.setting) continue;
    rows.push_back({words::figureLabel(figure), QString::fromStdString(figure.display), words::figureDatum(figure)});
  }
  sayTable(out, rows, {Align::Left, Align::Right, Align::Left});
}

}  // namespace

int figures(const CommandLine& line, std::ostream& out, std::ostream& err) {
  const OrExit<core::design::Design> job = readJob(line.files.first(), err);
  if (!job.value) return job.exit;
  const core::design::Design& design = *job.value;
  const Figures shown(design.job, design.layout, line.units.value_or(design.job.units));
  if (line.json) {
    sayJson(out, figuresJson(shown));
  } else {
    sayFigures(out, shown);
  }
  return kDone;
}

}  // namespace app::commands
