#include "core/record/on_hand.h"

#include <algorithm>
#include <optional>

#include "core/record/texts.h"

namespace core::record {
namespace {

using base::Message;
using base::Value;
using intents::Offcut;
using units::Length;
using Decision = base::Result<std::vector<EventDraft>, Message>;

// Beyond what any shop comes to: what a record says above is not believed.
constexpr std::int64_t kMostPieces = 100'000;
constexpr std::int64_t kMostMarks = 1'000'000'000;

const char* name(Offcut::Runs runs) {
  switch (runs) {
    case Offcut::Runs::Unknown: return "";
    case Offcut::Runs::AlongWidth: return "width";
    case Offcut::Runs::AlongHeight: return "height";
  }
  return "";
}

Offcut::Runs runsOf(const std::string& text) {
  if (text == "width") return Offcut::Runs::AlongWidth;
  return text == "height" ? Offcut::Runs::AlongHeight : Offcut::Runs::Unknown;
}

bool isSide(Length side) { return side > Length() && side <= kLongestOffcut; }

bool canBe(const Offcut& piece) {
  const bool thick = !piece.thickness || isSide(*piece.thickness);
  return isSide(piece.width) && isSide(piece.height) && thick && piece.kerf >= Length() && piece.kerf <= kLongestOffcut;
}

Value payloadOf(const Offcut& piece, std::int64_t mark) {
  Value value = Value::object();
  value.set("mark", Value::integer(mark));
  value.set("kind", Value::text(piece.paper ? "paper" : "board"));
  value.set("width", Value::integer(piece.width.inNanometres()));
  value.set("height", Value::integer(piece.height.inNanometres()));
  if (piece.thickness) value.set("thickness", Value::integer(piece.thickness->inNanometres()));
  if (!piece.material.empty()) value.set("material", Value::text(piece.material));
  if (piece.fibres != Offcut::Runs::Unknown) value.set("fibres", Value::text(name(piece.fibres)));
  if (piece.pattern != Offcut::Runs::Unknown) value.set("pattern", Value::text(name(piece.pattern)));
  value.set("kerf", Value::integer(piece.kerf.inNanometres()));
  return value;
}

std::optional<Length> lengthOf(const Value& payload, const char* key) {
  const auto nanometres = integerOf(payload, key);
  return nanometres ? std::optional(Length::nanometres(*nanometres)) : std::nullopt;
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
  return canBe(piece) ? std::optional(piece) : std::nullopt;
}

void drop(OnHand& onHand, const std::string& id) {
  const auto gone = std::remove_if(onHand.offcuts.begin(), onHand.offcuts.end(),
                                   [&](const KeptOffcut& offcut) { return offcut.id == id; });
  onHand.offcuts.erase(gone, onHand.offcuts.end());
}

void keep(OnHand& onHand, const Event& event, const std::string& job) {
  const Value* kept = event.payload.find("kept");
  if (kept == nullptr || kept->kind() != Value::Kind::Array) return;
  std::size_t place = 0;
  for (const Value& one : kept->items()) {
    const std::string id = event.eventId + '/' + std::to_string(place++);
    const auto piece = readOffcut(one);
    if (!piece) continue;
    const std::int64_t mark = std::clamp<std::int64_t>(integerOf(one, "mark").value_or(0), 0, kMostMarks);
    onHand.offcuts.push_back({id, mark, *piece, job, event.occurredUtc, event.intentId});
  }
}

// Marks are not given again, so that a piece thrown away and its successor are told apart: taken back ones count too.
void countMarks(OnHand& onHand, const Event& event) {
  const Value* kept = event.payload.find("kept");
  if (kept == nullptr || kept->kind() != Value::Kind::Array) return;
  for (const Value& one : kept->items()) {
    const std::int64_t mark = integerOf(one, "mark").value_or(0);
    if (mark <= kMostMarks) onHand.lastMark = std::max(onHand.lastMark, mark);
  }
}

void cut(OnHand& onHand, const Event& event) {
  const std::string job = textOf(event.payload, "job");
  CutSoFar& soFar = onHand.cut[job];
  if (const Value* pieces = event.payload.find("pieces"); pieces != nullptr && pieces->kind() == Value::Kind::Array) {
    for (const Value& one : pieces->items()) {
      const auto count = integerOf(one, "count");
      if (!count || *count <= 0 || *count > kMostPieces) continue;
      int& sum = soFar.pieces[textOf(one, "id")];
      sum = std::min(sum + static_cast<int>(*count), static_cast<int>(kMostPieces));
    }
  }
  const std::string stock = textOf(event.payload, "stock");
  if (!stock.empty()) ++soFar.sheets[stock];
  drop(onHand, textOf(event.payload, "offcut"));
  keep(onHand, event, job);
  onHand.acts.push_back({event.intentId, job, onHand.stillThere(event.intentId)});
}

}  // namespace

const KeptOffcut* OnHand::offcut(const std::string& id) const {
  const auto found = std::find_if(offcuts.begin(), offcuts.end(), [&](const KeptOffcut& one) { return one.id == id; });
  return found == offcuts.end() ? nullptr : &*found;
}

std::size_t OnHand::stillThere(const std::string& intentId) const {
  return static_cast<std::size_t>(
      std::count_if(offcuts.begin(), offcuts.end(), [&](const KeptOffcut& one) { return one.intentId == intentId; }));
}

OnHand foldOnHand(const std::vector<Event>& events, const std::set<std::string>& voided) {
  OnHand onHand;
  for (const Event& event : events) {
    if (event.version != 1) continue;
    if (event.type == type::kSheetCut) countMarks(onHand, event);
    if (voided.contains(event.intentId)) continue;
    if (event.type == type::kSheetCut) cut(onHand, event);
    if (event.type == type::kOffcutDropped) {
      drop(onHand, textOf(event.payload, "offcut"));
      onHand.acts.push_back({event.intentId, "", 0});
    }
  }
  return onHand;
}

Decision decideCut(const OnHand& onHand, const intents::CutSheet& intent) {
  if (!intent.offcut.empty() && onHand.offcut(intent.offcut) == nullptr) return Message("shop.no-such-offcut");
  const bool counted =
      std::all_of(intent.pieces.begin(), intent.pieces.end(), [](const auto& piece) { return piece.second > 0; });
  if (intent.pieces.empty() || !counted || intent.job.empty() || intent.stock.empty() == intent.offcut.empty()) {
    return Message("shop.nothing-cut");
  }
  if (!std::all_of(intent.kept.begin(), intent.kept.end(), canBe)) return Message("shop.offcut-out-of-range");
  EventDraft draft = benchDraft(type::kSheetCut);
  draft.payload.set("job", Value::text(intent.job));
  if (!intent.stock.empty()) draft.payload.set("stock", Value::text(intent.stock));
  if (!intent.offcut.empty()) draft.payload.set("offcut", Value::text(intent.offcut));
  Value pieces = Value::array();
  for (const auto& [id, count] : intent.pieces) {
    pieces.append(Value::object().set("id", Value::text(id)).set("count", Value::integer(count)));
  }
  draft.payload.set("pieces", std::move(pieces));
  Value kept = Value::array();
  std::int64_t mark = onHand.lastMark;
  for (const Offcut& piece : intent.kept) kept.append(payloadOf(piece, ++mark));
  draft.payload.set("kept", std::move(kept));
  return std::vector<EventDraft>{draft};
}

Decision decideDrop(const OnHand& onHand, const intents::DropOffcut& intent) {
  if (onHand.offcut(intent.offcut) == nullptr) return Message("shop.no-such-offcut");
  EventDraft draft = benchDraft(type::kOffcutDropped);
  draft.payload.set("offcut", Value::text(intent.offcut));
  return std::vector<EventDraft>{draft};
}

Decision decideUndo(const OnHand& onHand, const intents::UndoInShop& intent) {
  const auto act = std::find_if(onHand.acts.begin(), onHand.acts.end(),
                                [&](const OnHand::Act& one) { return one.intentId == intent.intentId; });
  if (act == onHand.acts.end()) return Message("shop.no-such-cut");
  if (act->kept != onHand.stillThere(act->intentId)) return Message("shop.offcut-used");
  EventDraft draft = benchDraft(type::kUndone);
  draft.payload.set("intent", Value::text(intent.intentId));
  return std::vector<EventDraft>{draft};
}

}  // namespace core::record
