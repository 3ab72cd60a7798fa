#include "core/shop/shop_stock.h"

#include <algorithm>
#include <type_traits>

#include "core/base/find.h"
#include "core/base/text.h"
#include "core/record/happening.h"
#include "core/record/stock_payload.h"
#include "core/record/texts.h"

namespace core::shop {

// This file uses the types of the record throughout.
using namespace record;
namespace {

template <typename One>
concept OfAnItem = requires(const One& one) {
  one.item;
};
template <typename One>
concept OfABatch = requires(const One& one) {
  one.batch;
};
// True for events of a job, of a design, or of other parts of the shop.
template <typename One>
concept OfSomethingElse =
    StandsOutside<One, kOfBench> || !StandsOutside<One, kOfJob | kOfDesign> || std::is_same_v<One, RoomEntered> ||
    std::is_same_v<One, SensorChosen> || std::is_same_v<One, SettingChosen> || std::is_same_v<One, OffTimeTold> ||
    std::is_same_v<One, OffcutDropped>;

using base::withId;

// Folds the events about stock, batches or the maker: first those that enter them, then the rest, so that each is found
// whatever the order of its own event and those about it.
class StockFolder {
 public:
  explicit StockFolder(ShopStock& stock) : m_stock(stock) {}

  void enter(const Event& event, const Happening& happening) {
    std::visit(
        OneOf{[&](const StockEntered& entered) {
                if (!entered.entry) return;
                m_stock.items.push_back({event.eventId, *entered.entry, entered.entry->quantity, event.occurredUtc});
              },
              [&](const BatchEntered& entered) {
                if (!entered.entry) return;
                const std::int64_t mark = std::clamp<std::int64_t>(entered.mark, 0, kMostMarks);
                m_stock.batches.push_back({event.eventId, mark, *entered.entry, std::nullopt});
              },
              [](const auto&) {}},
        happening);
  }

  void apply(const Event& event, const Happening& happening) {
    const std::int64_t utc = event.occurredUtc;
    std::visit(
        OneOf{[](const StockEntered&) {}, [](const BatchEntered&) {},
              [&](const StockCorrected& corrected) { correct(corrected, utc); },
              [&](const StockCounted& counted) { count(counted, utc); }, [&](const StockMoved& moved) { move(moved); },
              [&](const StockRemoved& removed) {
                std::erase_if(m_stock.items, [&](const StockItem& one) { return one.id == removed.item; });
              },
              [&](const BatchCorrected& corrected) {
                Batch* batch = withId(m_stock.batches, corrected.batch);
                if (batch != nullptr && corrected.entry) batch->entry = *corrected.entry;
              },
              [&](const BatchUsedUp& usedUp) {
                if (Batch* batch = withId(m_stock.batches, usedUp.batch)) batch->usedUpUtc = utc;
              },
              [&](const MakerNamed& named) { nameMaker(named); }, [&](const AppearanceGiven& given) { show(given); },
              // A sheet cut up is one less, where it came from the shop's stock.
              [&](const SheetCut& cut) {
                if (StockItem* item = withId(m_stock.items, cut.stock)) --item->quantity;
              },
              [](const OfSomethingElse auto&) {}},
        happening);
  }

 private:
  void nameMaker(const MakerNamed& named) {
    const std::string maker = base::shownText(named.maker, base::Lines::One);
    const std::string contact = base::shownText(named.contact, base::Lines::Several);
    if (!refusedLine(maker, true).id.empty() || !refusedText(contact, false).id.empty()) return;
    m_stock.maker = maker;
    m_stock.contact = contact;
  }

  void show(const AppearanceGiven& given) {
    if (!given.appearance) return;
    if (given.appearance->plain()) {
      m_stock.appearances.erase(given.appearance->material);
    } else {
      m_stock.appearances[given.appearance->material] = *given.appearance;
    }
  }

  void correct(const StockCorrected& corrected, std::int64_t utc) {
    StockItem* item = withId(m_stock.items, corrected.item);
    if (item == nullptr || !corrected.entry) return;
    *item = {item->id, *corrected.entry, corrected.entry->quantity, utc};
  }

  void count(const StockCounted& counted, std::int64_t utc) {
    StockItem* item = withId(m_stock.items, counted.item);
    if (item == nullptr || !counted.quantity || !isQuantity(item->entry.measure, *counted.quantity)) return;
    item->quantity = *counted.quantity;
    item->countedUtc = utc;
  }

  void move(const StockMoved& moved) {
    StockItem* item = withId(m_stock.items, moved.item);
    const std::int64_t change = moved.change.value_or(0);
    if (item == nullptr || change < -kMostMeasuredInStock || change > kMostMeasuredInStock) return;
    item->quantity = std::clamp(item->quantity + change, -kMostMeasuredInStock, kMostMeasuredInStock);
  }

  ShopStock& m_stock;
};

// Returns the subject of an act on stock: an item or a batch by id, "" where it names the maker or
// tells how a material looks. Returns nothing where
// it is no such act.
std::optional<std::string> subjectOf(const Event& event, const Happening& happening) {
  using Subject = std::optional<std::string>;
  return std::visit(
      OneOf{[&](const StockEntered&) { return Subject(event.eventId); },
            [&](const BatchEntered&) { return Subject(event.eventId); },
            [](const OfAnItem auto& one) { return Subject(one.item); },
            [](const OfABatch auto& one) { return Subject(one.batch); }, [](const MakerNamed&) { return Subject(""); },
            [](const AppearanceGiven&) { return Subject(""); }, [](const auto&) { return Subject(); }},
      happening);
}

}  // namespace

const StockItem* ShopStock::item(const std::string& id) const { return withId(items, id); }
const Batch* ShopStock::batch(const std::string& id) const { return withId(batches, id); }

ShopStock foldStock(const std::vector<Event>& events, const std::set<std::string>& voided) {
  ShopStock stock;
  std::vector<std::pair<const Event*, Happening>> live;
  for (const Event& event : events) {
    Happening happening = happeningOf(event);
    // A mark is not given again, so that a jar taken back and its successor differ.
    if (const auto* entered = std::get_if<BatchEntered>(&happening); entered != nullptr && entered->mark <= kMostMarks)
      stock.lastMark = std::max(stock.lastMark, entered->mark);
    if (voided.contains(event.intentId)) continue;
    if (auto about = subjectOf(event, happening)) stock.acts.push_back({event.intentId, *std::move(about)});
    live.emplace_back(&event, std::move(happening));
  }
  StockFolder folder(stock);
  for (const auto& [event, happening] : live) folder.enter(*event, happening);
  for (const auto& [event, happening] : live) folder.apply(*event, happening);
  return stock;
}

Shelf shelfAt(const Batch& batch, std::int64_t utc) {
  if (!batch.entry.keeps || utc < batch.entry.madeUtc) return Shelf::Unknown;
  const bool within = utc - batch.entry.madeUtc <= batch.entry.keeps->inMilliseconds();
  return within ? Shelf::Within : Shelf::LookBeforeUse;
}

base::Message beforeUse(const Batch& batch, std::int64_t utc) {
  if (shelfAt(batch, utc) != Shelf::LookBeforeUse) return {};
  constexpr std::int64_t kDay = 24LL * 60 * 60 * 1000;
  return base::Message("batch.look-before-use")
      .with("name", batch.entry.name)
      .with("days", batch.entry.keeps->inMilliseconds() / kDay)
      .with("source", batch.entry.keepsSource);
}

}  // namespace core::shop
