#include "app/designing/stock_form.h"

#include <QDateTime>
#include <QTimeZone>
#include <cmath>

#include "app/convert/text.h"
#include "app/designing/builder.h"
#include "app/designing/tr.h"
#include "core/base/text.h"

namespace app::designing {

using core::base::Message;
using core::base::Value;
using core::intents::BatchEntry;
using core::intents::BatchKind;
using core::intents::Measure;
using core::intents::Runs;
using core::intents::StockEntry;
using core::intents::StockKind;
using core::units::Length;

namespace {

// Returns the number of the record's units in one unit a maker keys in: pieces, millilitres, grams.
double scaleOf(Measure measure) {
  constexpr double kThousand = 1000;
  switch (measure) {
    case Measure::Pieces: return 1;
    case Measure::Microlitres: return kThousand;
    case Measure::Micrograms: return kThousand * kThousand;
  }
  return 1;
}

std::string textAt(const Value& document, const char* key) {
  const Value* value = document.find(key);
  return value != nullptr && value->kind() == Value::Kind::Text ? value->asText() : "";
}

std::optional<double> numberAt(const Value& document, const char* key) {
  const Value* value = document.find(key);
  if (value == nullptr || value->kind() != Value::Kind::Number) return std::nullopt;
  return value->asNumber();
}

StockKind kindOf(const Value& document) {
  const std::string written = textAt(document, "kind");
  for (const StockKind kind : core::intents::kStockKinds) {
    if (written == name(kind)) return kind;
  }
  return StockKind::Board;
}

bool isSheet(StockKind kind) { return kind == StockKind::Board || kind == StockKind::Paper; }

bool isCounted(StockKind kind) { return isSheet(kind) || kind == StockKind::Leaf; }

bool byMass(const Value& document) { return textAt(document, "measure") == "g"; }

// A length that may be left out.
core::base::Result<std::optional<Length>, Message> lengthAt(const Value& document, const char* key) {
  const std::string text = textAt(document, key);
  if (text.empty()) return std::optional<Length>();
  const auto read = core::units::parseLength(text);
  if (!read) return read.error();
  return std::optional(read.value().length);
}

Runs runsOf(const std::string& text) {
  if (text == "width") return Runs::AlongWidth;
  return text == "height" ? Runs::AlongHeight : Runs::Unknown;
}

std::string written(Runs runs) {
  return runs == Runs::AlongWidth ? "width" : runs == Runs::AlongHeight ? "height" : "unknown";
}

std::string written(Length length) { return core::base::shortestNumber(length.inMillimetres()) + " mm"; }

}  // namespace

Value freshStock() { return Value::object().set("kind", Value::text("board")).set("quantity", Value::integer(1)); }

Value freshBatch(const std::string& today) {
  return Value::object()
      .set("kind", Value::text("paste"))
      .set("day", Value::text(today))
      .set("source", Value::text(tr("the maker").toStdString()));
}

Value documentOf(const StockEntry& entry) {
  Value document = Value::object();
  document.set("kind", Value::text(name(entry.kind))).set("name", Value::text(entry.name));
  const bool counted = entry.measure == Measure::Pieces;
  if (entry.measure == Measure::Micrograms) document.set("measure", Value::text("g"));
  document.set("quantity", counted ? Value::integer(entry.quantity)
                                   : Value::number(static_cast<double>(entry.quantity) / scaleOf(entry.measure)));
  if (entry.width) document.set("width", Value::text(written(*entry.width)));
  if (entry.height) document.set("height", Value::text(written(*entry.height)));
  if (entry.thickness) document.set("thickness", Value::text(written(*entry.thickness)));
  if (isSheet(entry.kind)) document.set("fibres", Value::text(written(entry.fibres)));
  if (entry.price) document.set("price", Value::text(core::units::exactText(*entry.price)));
  if (!entry.currency.empty()) document.set("currency", Value::text(entry.currency));
  if (!entry.note.empty()) document.set("note", Value::text(entry.note));
  return document;
}

Section stockSection(const Value& document) {
  const core::design::ReadDesign none;
  Builder build(document, none);
  const StockKind kind = kindOf(document);
  build.section(tr("Into stock"));
  build.choice(tr("what it is"), "/kind",
               {{"board", tr("mount board")},
                {"paper", tr("paper")},
                {"leaf", tr("leaf")},
                {"size", tr("size")},
                {"paste", tr("paste or adhesive")},
                {"paint", tr("paint")}},
               "board");
  if (kind == StockKind::Size) {
    build.choice(tr("which size"), "/name",
                 {{"methylCellulose", tr("methyl cellulose")},
                  {"starch", tr("starch")},
                  {"water", tr("water size")},
                  {"oil", tr("oil size")}});
  } else {
    build.text(tr("name, as jobs call it"), "/name");
  }
  if (isSheet(kind)) {
    build.length(tr("width"), "/width");
    build.length(tr("height"), "/height");
    if (kind == StockKind::Board) build.length(tr("thickness"), "/thickness");
    build.choice(tr("fibres run"), "/fibres",
                 {{"unknown", tr("not known")}, {"width", tr("along the width")}, {"height", tr("along the height")}},
                 "unknown");
  }
  if (!isCounted(kind)) {
    build.choice(tr("measured in"), "/measure", {{"ml", tr("millilitres")}, {"g", tr("grams")}}, "ml");
  }
  build.number(isSheet(kind)             ? tr("how many sheets")
               : kind == StockKind::Leaf ? tr("how many leaves")
               : byMass(document)        ? tr("how many grams")
                                         : tr("how many millilitres"),
               "/quantity");
  build.text(isCounted(kind)    ? tr("price of one")
             : byMass(document) ? tr("price of a kilogram")
                                : tr("price of a litre"),
             "/price");
  build.text(tr("currency, three letters"), "/currency");
  build.text(tr("note"), "/note", tr("none"));
  return std::move(build.finish().front());
}

Section batchSection(const Value& document) {
  const core::design::ReadDesign none;
  Builder build(document, none);
  build.section(tr("A batch"));
  build.choice(tr("what it is"), "/kind",
               {{"paste", tr("paste")},
                {"size", tr("size")},
                {"adhesive", tr("adhesive")},
                {"paint", tr("paint")},
                {"other", tr("something else")}},
               "paste");
  build.text(tr("what is on its label"), "/name");
  build.text(tr("what it is of"), "/of");
  build.choice(tr("made or opened"), "/opened", {{"made", tr("made here")}, {"bought", tr("bought and opened")}},
               "made");
  build.date(tr("on the day"), "/day").past = true;
  build.number(tr("keeps, days"), "/keeps", tr("not known"));
  build.text(tr("who says so"), "/source");
  build.text(tr("note"), "/note", tr("none"));
  return std::move(build.finish().front());
}

core::base::Result<StockEntry, Message> stockEntryOf(const Value& document) {
  StockEntry entry;
  entry.kind = kindOf(document);
  entry.name = textAt(document, "name");
  if (entry.name.empty()) return Message("stock.name-missing");
  const bool counted = isCounted(entry.kind);
  entry.measure = counted ? Measure::Pieces : byMass(document) ? Measure::Micrograms : Measure::Microlitres;
  const double quantity = numberAt(document, "quantity").value_or(0) * scaleOf(entry.measure);
  // Beyond what an int64 holds the record would refuse it too.
  constexpr double kMost = 1e15;
  if (quantity < 0 || quantity > kMost) return Message("stock.quantity-out-of-range");
  entry.quantity = static_cast<std::int64_t>(std::llround(quantity));
  if (isSheet(entry.kind)) {
    const auto width = lengthAt(document, "width");
    const auto height = lengthAt(document, "height");
    const auto thickness = lengthAt(document, "thickness");
    if (!width) return width.error();
    if (!height) return height.error();
    if (!thickness) return thickness.error();
    entry.width = width.value();
    entry.height = height.value();
    if (entry.kind == StockKind::Board) entry.thickness = thickness.value();
    entry.fibres = runsOf(textAt(document, "fibres"));
  }
  if (const std::string price = textAt(document, "price"); !price.empty()) {
    entry.price = core::units::parseMoney(price);
    if (!entry.price) return Message("stock.price-out-of-range");
  }
  entry.currency = textAt(document, "currency");
  entry.note = textAt(document, "note");
  return entry;
}

core::base::Result<BatchEntry, Message> batchEntryOf(const Value& document, const std::string& zone,
                                                     std::int64_t nowUtc) {
  BatchEntry entry;
  const std::string kind = textAt(document, "kind");
  for (const BatchKind one : core::intents::kBatchKinds) {
    if (kind == name(one)) entry.kind = one;
  }
  entry.name = textAt(document, "name");
  if (entry.name.empty()) return Message("stock.name-missing");
  entry.of = textAt(document, "of");
  entry.opened = textAt(document, "opened") == "bought";
  const std::string day = textAt(document, "day");
  const QDate date = QDate::fromString(convert::toQt(day), Qt::ISODate);
  if (!date.isValid()) return Message("batch.no-such-day").with("text", day);
  const QTimeZone there(QByteArray::fromStdString(zone));
  constexpr int kNoon = 12;
  const QDateTime noon(date, QTime(kNoon, 0), there.isValid() ? there : QTimeZone::utc());
  // Before noon today, noon is still to come, so the present moment is used.
  const bool today =
      noon.toMSecsSinceEpoch() > nowUtc && QDateTime::fromMSecsSinceEpoch(nowUtc, noon.timeZone()).date() == date;
  entry.madeUtc = today ? nowUtc : noon.toMSecsSinceEpoch();
  if (const auto days = numberAt(document, "keeps")) {
    constexpr double kMostDays = 36'500;
    if (*days < 0 || *days > kMostDays) return Message("batch.keeps-out-of-range");
    constexpr std::int64_t kMinutesADay = 24 * 60;
    entry.keeps = core::units::Duration::minutes(static_cast<std::int64_t>(*days * kMinutesADay));
    entry.keepsSource = textAt(document, "source");
  }
  entry.note = textAt(document, "note");
  return entry;
}

}  // namespace app::designing
