#include "core/record/stock_payload.h"

#include <algorithm>
#include <iterator>

#include "core/record/event.h"
#include "core/record/texts.h"
#include "core/waits/clock.h"

namespace core::record {
namespace {

using base::Message;
using base::Value;
using intents::BatchEntry;
using intents::BatchKind;
using intents::Measure;
using intents::Offcut;
using intents::Runs;
using intents::StockEntry;
using intents::StockKind;
using units::Duration;
using units::Length;

constexpr std::int64_t kMostInABook = 10'000;
// Twenty years: a longer shelf life is a mistake in typing.
constexpr Duration kLongestKeeping = Duration::minutes(20LL * 366 * 24 * 60);
// A batch can be dated from 1970 to 2200: this includes any batch still on a shelf and excludes a mistyped year.
constexpr std::int64_t kLatestUtc = 7'258'118'400'000;

constexpr const char* kSizes[] = {"methylCellulose", "starch", "water", "oil"};

bool isSheet(StockKind kind) { return kind == StockKind::Board || kind == StockKind::Paper; }
bool isCounted(StockKind kind) { return isSheet(kind) || kind == StockKind::Leaf; }

bool isSide(const std::optional<Length>& side) { return side && *side > Length() && *side <= units::kLongestLength; }

bool isCurrency(const std::string& text) {
  return text.empty() ||
         (text.size() == 3 && std::all_of(text.begin(), text.end(), [](char c) { return c >= 'A' && c <= 'Z'; }));
}

Message refusedMeasures(const StockEntry& entry) {
  const bool anySide = entry.width || entry.height || entry.thickness;
  if (isSheet(entry.kind) && !(entry.width && entry.height)) return Message("stock.needs-size");
  if (!isCounted(entry.kind) && anySide) return Message("stock.no-size-here");
  for (const auto& side : {entry.width, entry.height, entry.thickness}) {
    if (side && !isSide(side)) return Message("stock.size-out-of-range");
  }
  if (isCounted(entry.kind) != (entry.measure == Measure::Pieces)) return Message("stock.measure");
  return {};
}

const char* nameOf(Runs runs) {
  switch (runs) {
    case Runs::Unknown: return "";
    case Runs::AlongWidth: return "width";
    case Runs::AlongHeight: return "height";
  }
  return "";
}

Runs runsOf(const std::string& text) {
  if (text == "width") return Runs::AlongWidth;
  return text == "height" ? Runs::AlongHeight : Runs::Unknown;
}

template <typename Kind, std::size_t count>
std::optional<Kind> kindOf(const Kind (&kinds)[count], const std::string& text) {
  const auto found = std::find_if(std::begin(kinds), std::end(kinds), [&](Kind kind) { return name(kind) == text; });
  return found == std::end(kinds) ? std::nullopt : std::optional(*found);
}

void put(Value& payload, const char* key, const std::optional<Length>& length) {
  if (length) payload.set(key, Value::integer(length->inNanometres()));
}

void put(Value& payload, const char* key, const std::string& text) {
  if (!text.empty()) payload.set(key, Value::text(text));
}

std::optional<Length> lengthOf(const Value& payload, const char* key) {
  const auto nanometres = integerOf(payload, key);
  return nanometres ? std::optional(Length::nanometres(*nanometres)) : std::nullopt;
}

}  // namespace

bool isOffcut(const Offcut& piece) {
  const auto isLong = [](Length side) { return side > Length() && side <= kLongestOffcut; };
  const bool thick = !piece.thickness || isLong(*piece.thickness);
  return isLong(piece.width) && isLong(piece.height) && thick && piece.kerf >= Length() && piece.kerf <= kLongestOffcut;
}

bool isQuantity(Measure measure, std::int64_t quantity) {
  return quantity >= 0 && quantity <= (measure == Measure::Pieces ? kMostPiecesInStock : kMostMeasuredInStock);
}

Message refusedStock(const StockEntry& entry) {
  if (Message refused = refusedLine(entry.name, true); !refused.id.empty()) return refused;
  if (Message refused = refusedText(entry.note, false); !refused.id.empty()) return refused;
  if (Message refused = refusedMeasures(entry); !refused.id.empty()) return refused;
  if (entry.kind == StockKind::Size && std::find(std::begin(kSizes), std::end(kSizes), entry.name) == std::end(kSizes))
    return Message("stock.size-kind");
  if (!isQuantity(entry.measure, entry.quantity) || entry.perBook < 0 || entry.perBook > kMostInABook)
    return Message("stock.quantity-out-of-range");
  if (entry.price && (*entry.price < units::Money() || *entry.price > units::kDearest))
    return Message("stock.price-out-of-range");
  if (!isCurrency(entry.currency)) return Message("stock.currency");
  return {};
}

Message refusedBatch(const BatchEntry& entry) {
  if (Message refused = refusedLine(entry.name, true); !refused.id.empty()) return refused;
  for (const std::string* line : {&entry.of, &entry.technique, &entry.keepsSource}) {
    if (Message refused = refusedLine(*line, false); !refused.id.empty()) return refused;
  }
  if (Message refused = refusedText(entry.note, false); !refused.id.empty()) return refused;
  if (entry.madeUtc <= 0 || entry.madeUtc > kLatestUtc) return Message("batch.date-out-of-range");
  if (entry.keeps && (*entry.keeps <= Duration() || *entry.keeps > kLongestKeeping))
    return Message("batch.keeps-out-of-range");
  if (entry.keeps && entry.keepsSource.empty()) return Message("batch.source-missing");
  return {};
}

void write(Value& payload, const StockEntry& entry) {
  payload.set("kind", Value::text(name(entry.kind)));
  payload.set("name", Value::text(entry.name));
  payload.set("measure", Value::text(name(entry.measure)));
  payload.set("quantity", Value::integer(entry.quantity));
  if (entry.perBook > 0) payload.set("perBook", Value::integer(entry.perBook));
  put(payload, "width", entry.width);
  put(payload, "height", entry.height);
  put(payload, "thickness", entry.thickness);
  put(payload, "fibres", std::string(nameOf(entry.fibres)));
  put(payload, "pattern", std::string(nameOf(entry.pattern)));
  if (entry.price) payload.set("price", Value::text(units::exactText(*entry.price)));
  put(payload, "currency", entry.currency);
  put(payload, "note", entry.note);
}

void write(Value& payload, const BatchEntry& entry) {
  payload.set("kind", Value::text(name(entry.kind)));
  payload.set("name", Value::text(entry.name));
  put(payload, "of", entry.of);
  put(payload, "technique", entry.technique);
  payload.set("opened", Value::boolean(entry.opened));
  payload.set("made", Value::integer(entry.madeUtc));
  if (entry.keeps) payload.set("keeps", Value::integer(entry.keeps->inMilliseconds()));
  put(payload, "keepsSource", entry.keepsSource);
  put(payload, "note", entry.note);
}

void write(Value& payload, const Offcut& piece) {
  payload.set("kind", Value::text(piece.paper ? "paper" : "board"));
  payload.set("width", Value::integer(piece.width.inNanometres()));
  payload.set("height", Value::integer(piece.height.inNanometres()));
  put(payload, "thickness", piece.thickness);
  put(payload, "material", piece.material);
  put(payload, "fibres", std::string(nameOf(piece.fibres)));
  put(payload, "pattern", std::string(nameOf(piece.pattern)));
  payload.set("kerf", Value::integer(piece.kerf.inNanometres()));
}

std::optional<StockEntry> readStock(const Value& payload) {
  StockEntry entry;
  const auto kind = kindOf(intents::kStockKinds, textOf(payload, "kind"));
  const Measure measures[] = {Measure::Pieces, Measure::Microlitres, Measure::Micrograms};
  const auto measure = kindOf(measures, textOf(payload, "measure"));
  const auto quantity = integerOf(payload, "quantity");
  if (!kind || !measure || !quantity) return std::nullopt;
  entry.kind = *kind;
  entry.name = shownLineOf(payload, "name");
  entry.measure = *measure;
  entry.quantity = *quantity;
  entry.perBook = integerOf(payload, "perBook").value_or(0);
  entry.width = lengthOf(payload, "width");
  entry.height = lengthOf(payload, "height");
  entry.thickness = lengthOf(payload, "thickness");
  entry.fibres = runsOf(textOf(payload, "fibres"));
  entry.pattern = runsOf(textOf(payload, "pattern"));
  entry.price = units::parseMoney(textOf(payload, "price"));
  entry.currency = textOf(payload, "currency");
  entry.note = shownTextOf(payload, "note");
  return refusedStock(entry).id.empty() ? std::optional(entry) : std::nullopt;
}

std::optional<BatchEntry> readBatch(const Value& payload) {
  BatchEntry entry;
  const auto kind = kindOf(intents::kBatchKinds, textOf(payload, "kind"));
  const auto made = integerOf(payload, "made");
  if (!kind || !made) return std::nullopt;
  entry.kind = *kind;
  entry.name = shownLineOf(payload, "name");
  entry.of = shownLineOf(payload, "of");
  entry.technique = shownLineOf(payload, "technique");
  const Value* opened = payload.find("opened");
  entry.opened = opened != nullptr && opened->kind() == Value::Kind::Boolean && opened->asBoolean();
  entry.madeUtc = *made;
  if (const auto keeps = integerOf(payload, "keeps")) entry.keeps = Duration::milliseconds(*keeps);
  entry.keepsSource = shownLineOf(payload, "keepsSource");
  entry.note = shownTextOf(payload, "note");
  return refusedBatch(entry).id.empty() ? std::optional(entry) : std::nullopt;
}

std::optional<Offcut> readOffcut(const Value& payload) {
  const auto width = lengthOf(payload, "width");
  const auto height = lengthOf(payload, "height");
  if (!width || !height) return std::nullopt;
  Offcut piece;
  piece.paper = textOf(payload, "kind") == "paper";
  piece.width = *width;
  piece.height = *height;
  piece.thickness = lengthOf(payload, "thickness");
  piece.material = shownLineOf(payload, "material");
  piece.fibres = runsOf(textOf(payload, "fibres"));
  piece.pattern = runsOf(textOf(payload, "pattern"));
  piece.kerf = lengthOf(payload, "kerf").value_or(Length());
  return isOffcut(piece) ? std::optional(piece) : std::nullopt;
}

}  // namespace core::record
