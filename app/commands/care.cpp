// The sheet that goes with a piece, for the client or for a conservator. As JSON, "mountwright-care/1":
//   for "client"|"conservator", units "mm"|"in", recorded (whether anything of it is in the record), title,
//   sections[] {id title lines[]}, a line {label values[] known source}: known "entered"|"default"|"computed"|
//   "observed"|"stated"|"unknown"; source of what is stated, else "".
#include "app/pages/care.h"
#include "app/commands/care_job.h"
#include "app/commands/commands.h"
#include "app/commands/each.h"
#include "app/commands/saying.h"
#include "app/words/words.h"
#include "core/sheets/care_sheet.h"

namespace app::commands {
namespace {

using core::base::Message;
using core::base::Value;
using core::sheets::CareLine;
using core::sheets::CareSheet;

Value careJson(const CareSheet& sheet, UnitSystem units, bool recorded) {
  const auto said = [&](const Message& message) { return Value::text(words::text(message, units).toStdString()); };
  Value sections = Value::array();
  for (const auto& section : sheet.sections) {
    Value lines = Value::array();
    for (const CareLine& line : section.lines) {
      Value values = Value::array();
      for (const Message& value : line.values) values.append(said(value));
      lines.append(Value::object()
                       .set("label", said(line.label))
                       .set("values", std::move(values))
                       .set("known", Value::text(name(line.known)))
                       .set("source", Value::text(line.source)));
    }
    sections.append(Value::object()
                        .set("id", Value::text(section.id))
                        .set("title", said(section.title))
                        .set("lines", std::move(lines)));
  }
  return Value::object()
      .set("format", Value::text("mountwright-care/1"))
      .set("for", Value::text(name(sheet.kind)))
      .set("units", Value::text(units == UnitSystem::Inches ? "in" : "mm"))
      .set("recorded", Value::boolean(recorded))
      .set("title", said(sheet.title))
      .set("sections", std::move(sections));
}

void sayCare(std::ostream& out, const CareSheet& sheet, UnitSystem units) {
  sayLine(out, words::text(sheet.title, units));
  for (const auto& section : sheet.sections) {
    sayLine(out, QString());
    sayLine(out, words::text(section.title, units));
    std::vector<QStringList> rows;
    for (const CareLine& line : section.lines) {
      QStringList values;
      for (const Message& value : line.values) values << words::text(value, units).replace(u'\n', u' ');
      rows.push_back({QStringLiteral("  ") + words::text(line.label, units), values.join(QStringLiteral("; ")),
                      QStringLiteral("(") + pages::careKnown(line) + QStringLiteral(")")});
    }
    sayTable(out, rows, {Align::Left, Align::Left, Align::Left});
  }
}

}  // namespace

int care(const CommandLine& line, std::ostream& out, std::ostream& err) {
  using namespace core;
  const OrExit<CareJob> read = readCareJob(line, err);
  if (!read.value) return read.exit;
  const CareJob& job = *read.value;
  const UnitSystem units = line.units.value_or(job.state.plan->design.job.units);
  const sheets::CareWords words = pages::careWords();
  jobs::TimelineWords timelineWords;
  timelineWords.figure = words.figure;
  const auto timeline = jobs::timelineOf(job.state, job.shop, job.events, jobs::Order::OldestFirst, timelineWords);
  const auto kind =
      line.careFor == QStringLiteral("conservator") ? sheets::CareFor::Conservator : sheets::CareFor::Client;
  const CareSheet sheet = sheets::careSheet(kind, {job.state, job.shop, timeline, job.jobText, units, words});
  if (line.json) {
    sayJson(out, careJson(sheet, units, job.recorded));
  } else {
    sayCare(out, sheet, units);
  }
  return read.exit;
}

}  // namespace app::commands
