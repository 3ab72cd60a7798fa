#include "core/shop/on_hand.h"

#include <algorithm>

#include "core/record/happening.h"
#include "core/record/stock_payload.h"

namespace core::shop {

// This file uses the types of the record throughout.
using namespace record;
namespace {

using base::Message;
using intents::Offcut;
using Decision = base::Result<std::vector<EventDraft>, Message>;

// No shop reaches this number: a greater one in a record is not valid.
constexpr std::int64_t kMostPieces = 100'000;

void drop(OnHand& onHand, const std::string& id) {
  const auto gone = std::remove_if(onHand.offcuts.begin(), onHand.offcuts.end(),
                                   [&](const KeptOffcut& offcut) { return offcut.id == id; });
  onHand.offcuts.erase(gone, onHand.offcuts.end());
}

void keep(OnHand& onHand, const Event& event, const SheetCut& cut) {
  for (std::size_t place = 0; place < cut.kept.size(); ++place) {
    const SheetCut::Kept& kept = cut.kept[place];
    if (!kept.piece) continue;
    const std::string id = event.eventId + '/' + std::to_string(place);
    const std::int64_t mark = std::clamp<std::int64_t>(kept.mark, 0, kMostMarks);
    onHand.offcuts.push_back({id, mark, *kept.piece, cut.job, event.occurredUtc, event.intentId});
  }
}

// Marks are not given again, so that a piece thrown away and its successor differ: taken back ones count too.
void countMarks(OnHand& onHand, const SheetCut& cut) {
  for (const SheetCut::Kept& kept : cut.kept) {
    if (kept.mark <= kMostMarks) onHand.lastMark = std::max(onHand.lastMark, kept.mark);
  }
}

void apply(OnHand& onHand, const Event& event, const SheetCut& cut) {
  CutSoFar& soFar = onHand.cut[cut.job];
  for (const SheetCut::Pieces& one : cut.pieces) {
    if (one.count <= 0 || one.count > kMostPieces) continue;
    int& sum = soFar.pieces[one.id];
    sum = std::min(sum + static_cast<int>(one.count), static_cast<int>(kMostPieces));
  }
  if (!cut.stock.empty()) ++soFar.sheets[cut.stock];
  drop(onHand, cut.offcut);
  keep(onHand, event, cut);
  onHand.acts.push_back({event.intentId, cut.job, onHand.stillThere(event.intentId)});
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
    const bool live = !voided.contains(event.intentId);
    if (const auto cut = as<SheetCut>(event)) {
      countMarks(onHand, *cut);
      if (live) apply(onHand, event, *cut);
    } else if (const auto dropped = live ? as<OffcutDropped>(event) : std::nullopt) {
      drop(onHand, dropped->offcut);
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
  if (!std::all_of(intent.kept.begin(), intent.kept.end(), isOffcut)) return Message("shop.offcut-out-of-range");
  SheetCut cut{intent.job, intent.stock, intent.offcut, {}, {}};
  for (const auto& [id, count] : intent.pieces) cut.pieces.push_back({id, count});
  std::int64_t mark = onHand.lastMark;
  for (const Offcut& piece : intent.kept) cut.kept.push_back({++mark, piece});
  return std::vector{draftOf(cut)};
}

Decision decideDrop(const OnHand& onHand, const intents::DropOffcut& intent) {
  if (onHand.offcut(intent.offcut) == nullptr) return Message("shop.no-such-offcut");
  return std::vector{draftOf(OffcutDropped{intent.offcut})};
}

Decision decideUndo(const OnHand& onHand, const intents::UndoInShop& intent) {
  const auto act = std::find_if(onHand.acts.begin(), onHand.acts.end(),
                                [&](const OnHand::Act& one) { return one.intentId == intent.intentId; });
  if (act == onHand.acts.end()) return Message("shop.no-such-cut");
  if (act->kept != onHand.stillThere(act->intentId)) return Message("shop.offcut-used");
  return std::vector{draftOf(Undone{intent.intentId}, EventDraft::Stream::Bench)};
}

}  // namespace core::shop
