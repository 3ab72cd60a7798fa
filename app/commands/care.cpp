// The sheet that goes with a piece, for the client or for a conservator. As JSON, "mountwright-care/1":
//   for "client"|"conservator", units "mm"|"in", recorded (whether anything of it is in the record), title,
//   sections[] {id title lines[]}, a line {label values[] known source}: known "entered"|"default"|"computed"|
//   "observed"|"stated"|"unknown"; source of what is stated, else "".
#include <QDateTime>
#include <QTimeZone>

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
using core::sheets::CareKnown;
using core::sheets::CareLine;
using core::sheets::CareSheet;

// In the zone it was written in; where this machine does not know that one, in UTC and said so.
std::string inZone(std::int64_t utc, const std::string& zone, const QString& format) {
  const QTimeZone there(QByteArray::fromStdString(zone));
  const QDateTime moment = QDateTime::fromMSecsSinceEpoch(utc, there.isValid() ? there : QTimeZone::utc());
  const QString shown = QLocale::c().toString(moment, format);
  return (there.isValid() ? shown : shown + QStringLiteral(" UTC")).toStdString();
}

core::sheets::CareWords careWords() {
  core::sheets::CareWords words;
  words.moment = [](std::int64_t utc, const std::string& zone) {
    return inZone(utc, zone, QStringLiteral("yyyy-MM-dd HH:mm"));
  };
  words.day = [](std::int64_t utc, const std::string& zone) { return inZone(utc, zone, QStringLiteral("yyyy-MM-dd")); };
  words.figure = [](const core::design::Figure& figure) { return words::figureLabel(figure).toStdString(); };
  words.duration = [](core::units::Duration duration) { return words::duration(duration).toStdString(); };
  return words;
}

QString knownText(const CareLine& line) {
  const auto said = [](const Message& message) { return words::text(message, UnitSystem::Millimetres); };
  switch (line.known) {
    case CareKnown::Entered: return said(Message("care.known-entered"));
    case CareKnown::Default: return said(Message("care.known-default"));
    case CareKnown::Computed: return said(Message("care.known-computed"));
    case CareKnown::Observed: return said(Message("care.known-observed"));
    case CareKnown::Unknown: return said(Message("care.known-unknown"));
    case CareKnown::Stated: break;
  }
  if (line.source.empty()) return said(Message("care.known-stated"));
  return said(Message("care.known-stated-by").with("source", line.source));
}

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
                      QStringLiteral("(") + knownText(line) + QStringLiteral(")")});
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
  const sheets::CareWords words = careWords();
  record::TimelineWords timelineWords;
  timelineWords.figure = words.figure;
  const auto timeline = record::timelineOf(job.state, job.shop, job.events, record::Order::OldestFirst, timelineWords);
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
