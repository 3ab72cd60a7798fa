// What the shop has in stock, folded from events, through the same door as everything else.
#include "core/shop/shop_stock.h"
#include "core/record/happening.h"
#include "core/record/stock_payload.h"

#include "core/base/json.h"
#include "tests/core/shop/tiny_shop.h"
#include "tests/support/catch.h"

using namespace core::shop;
using namespace core::record;
using namespace tests;
namespace intents = core::intents;
using core::units::Length;
using core::units::Money;

namespace {

// Everything of it as text, to be compared.
std::string dumped(const ShopStock& stock) {
  std::string out = stock.maker + '/' + stock.contact + '/' + std::to_string(stock.lastMark) + '\n';
  for (const StockItem& item : stock.items) {
    out += item.id + ' ' + item.entry.name + ' ' + std::to_string(item.quantity) + ' ' + item.entry.note + '\n';
  }
  for (const Batch& batch : stock.batches) {
    out += batch.id + ' ' + std::to_string(batch.mark) + ' ' + batch.entry.name + (batch.usedUpUtc ? " used\n" : "\n");
  }
  return out;
}

intents::StockEntry pasteEntry() {
  intents::StockEntry entry;
  entry.kind = intents::StockKind::Paste;
  entry.name = "starch paste";
  entry.measure = intents::Measure::Microlitres;
  entry.quantity = 250'000;
  return entry;
}

}  // namespace

TEST_CASE("what is entered in stock is there as it was entered, is counted, moved, corrected and taken out") {
  TinyShop shop;
  intents::StockEntry paper = paperEntry("wave-block print", 10);
  paper.fibres = intents::Runs::AlongWidth;
  paper.price = Money::parts(62'000);
  paper.currency = "GBP";
  paper.note = "by the window\r\nsecond drawer";
  REQUIRE(shop.ask(intents::EnterStock{paper}) == "");
  REQUIRE(shop.stock().items.size() == 1);
  const std::string id = shop.stock().items[0].id;
  CHECK(shop.stock().items[0].entry.note == "by the window\nsecond drawer");
  CHECK(shop.stock().items[0].entry.width == Length::wholeMillimetres(700));
  CHECK(shop.stock().items[0].entry.fibres == intents::Runs::AlongWidth);
  CHECK(shop.stock().items[0].entry.price == Money::parts(62'000));

  REQUIRE(shop.ask(intents::MoveStock{id, -4}) == "");
  CHECK(shop.stock().item(id)->there() == 6);
  CHECK(shop.ask(intents::MoveStock{id, -7}) == "stock.not-so-much");
  REQUIRE(shop.ask(intents::CountStock{id, 5}) == "");
  CHECK(shop.stock().item(id)->there() == 5);
  paper.quantity = 8;
  paper.name = "wave block";
  REQUIRE(shop.ask(intents::CorrectStock{id, paper}) == "");
  CHECK(shop.stock().item(id)->there() == 8);
  CHECK(shop.stock().item(id)->entry.name == "wave block");
  REQUIRE(shop.ask(intents::RemoveStock{id}) == "");
  CHECK(shop.stock().items.empty());
  CHECK(shop.ask(intents::CountStock{id, 1}) == "stock.no-such-item");
  REQUIRE(shop.ask(intents::UndoInShop{shop.last()}) == "");
  CHECK(shop.stock().item(id)->there() == 8);
}

TEST_CASE("an act on stock is taken back, but not the entering of what was changed since") {
  TinyShop shop;
  REQUIRE(shop.ask(intents::EnterStock{paperEntry("laid", 3)}) == "");
  const std::string entering = shop.last();
  const std::string id = shop.stock().items[0].id;
  REQUIRE(shop.ask(intents::CountStock{id, 2}) == "");
  const std::string counting = shop.last();
  CHECK(shop.ask(intents::UndoInShop{entering}) == "stock.changed-since");
  REQUIRE(shop.ask(intents::UndoInShop{counting}) == "");
  CHECK(shop.stock().item(id)->there() == 3);
  REQUIRE(shop.ask(intents::UndoInShop{entering}) == "");
  CHECK(shop.stock().items.empty());
  CHECK(shop.ask(intents::UndoInShop{entering}) == "shop.no-such-cut");
}

TEST_CASE("what cannot be in stock is refused with its reason") {
  TinyShop shop;
  const auto refused = [&](auto change) {
    intents::StockEntry entry = paperEntry("laid", 3);
    change(entry);
    return shop.ask(intents::EnterStock{entry});
  };
  using Entry = intents::StockEntry;
  CHECK(refused([](Entry& e) { e.name = " "; }) == "text.empty");
  CHECK(refused([](Entry& e) { e.name = "a\nb"; }) == "text.control-character");
  CHECK(refused([](Entry& e) { e.name = "\xC3"; }) == "text.not-letters");
  CHECK(refused([](Entry& e) { e.name = std::string(201, 'a'); }) == "text.too-long");
  CHECK(refused([](Entry& e) { e.width.reset(); }) == "stock.needs-size");
  CHECK(refused([](Entry& e) { e.height = Length(); }) == "stock.size-out-of-range");
  CHECK(refused([](Entry& e) { e.measure = intents::Measure::Micrograms; }) == "stock.measure");
  CHECK(refused([](Entry& e) { e.quantity = -1; }) == "stock.quantity-out-of-range");
  CHECK(refused([](Entry& e) { e.quantity = kMostPiecesInStock + 1; }) == "stock.quantity-out-of-range");
  CHECK(refused([](Entry& e) { e.price = Money::parts(-1); }) == "stock.price-out-of-range");
  CHECK(refused([](Entry& e) { e.currency = "gbp"; }) == "stock.currency");
  CHECK(refused([](Entry& e) {
          e = pasteEntry();
          e.thickness = Length::wholeMillimetres(1);
        }) == "stock.no-size-here");
  CHECK(refused([](Entry& e) {
          e = pasteEntry();
          e.kind = intents::StockKind::Size;
          e.name = "honey";
        }) == "stock.size-kind");
  CHECK(shop.stock().items.empty());
}

TEST_CASE("a batch past its shelf life asks for a look, one without a shelf life is not judged") {
  TinyShop shop;
  const std::int64_t made = shop.utc();
  constexpr std::int64_t kDay = 24 * 3'600'000;
  REQUIRE(shop.ask(intents::EnterBatch{pasteBatch(made)}) == "");
  intents::BatchEntry unsaid = pasteBatch(made);
  unsaid.keeps.reset();
  REQUIRE(shop.ask(intents::EnterBatch{unsaid}) == "");
  const Batch& paste = shop.stock().batches[0];
  CHECK(paste.mark == 1);
  CHECK(shelfAt(paste, made + 7 * kDay) == Shelf::Within);
  CHECK(shelfAt(paste, made + 7 * kDay + 1) == Shelf::LookBeforeUse);
  CHECK(shelfAt(paste, made - 1) == Shelf::Unknown);
  CHECK(shelfAt(shop.stock().batches[1], made + 900 * kDay) == Shelf::Unknown);
  REQUIRE(shop.ask(intents::UseUpBatch{paste.id}) == "");
  // A used up batch stays: the record of what was made with it names it.
  CHECK(shop.stock().batches.size() == 2);
  CHECK(shop.ask(intents::UseUpBatch{shop.stock().batches[0].id}) == "batch.used-up-already");
  CHECK(shop.ask(intents::EnterBatch{pasteBatch(shop.utc() + kDay)}) == "batch.date-out-of-range");
  intents::BatchEntry nobodySaid = pasteBatch(made);
  nobodySaid.keepsSource.clear();
  CHECK(shop.ask(intents::EnterBatch{nobodySaid}) == "batch.source-missing");
}

TEST_CASE("a mark is never given again") {
  TinyShop shop;
  REQUIRE(shop.ask(intents::EnterBatch{pasteBatch(shop.utc())}) == "");
  REQUIRE(shop.ask(intents::UndoInShop{shop.last()}) == "");
  REQUIRE(shop.ask(intents::EnterBatch{pasteBatch(shop.utc())}) == "");
  REQUIRE(shop.stock().batches.size() == 1);
  CHECK(shop.stock().batches[0].mark == 2);
}

TEST_CASE("two benches that take out more than there is leave nothing, and say so") {
  TinyShop one("one"), two("two");
  REQUIRE(one.ask(intents::EnterStock{paperEntry("laid", 4)}) == "");
  two.hearOf(one.events);
  const std::string id = one.stock().items[0].id;
  const auto shared = two.events.size();
  REQUIRE(one.ask(intents::MoveStock{id, -3}) == "");
  REQUIRE(two.ask(intents::MoveStock{id, -3}) == "");
  one.hearOf({two.events.begin() + static_cast<std::ptrdiff_t>(shared), two.events.end()});
  CHECK(one.stock().item(id)->there() == 0);
  CHECK(one.stock().item(id)->overdrawn());
}

TEST_CASE("stock is the same whatever the order its events come in, and once or twice") {
  TinyShop shop;
  std::mt19937 random(7);
  for (int i = 0; i < 120; ++i) {
    const auto& items = shop.stock().items;
    const auto& batches = shop.stock().batches;
    const auto some = [&](std::size_t size) { return random() % size; };
    switch (random() % 8) {
      case 0: shop.ask(intents::EnterStock{paperEntry("p" + std::to_string(i), i)}); break;
      case 1: shop.ask(intents::EnterBatch{pasteBatch(shop.utc())}); break;
      case 2:
        if (!items.empty()) shop.ask(intents::MoveStock{items[some(items.size())].id, random() % 2 == 0 ? 3 : -1});
        break;
      case 3:
        if (!items.empty()) shop.ask(intents::CountStock{items[some(items.size())].id, i});
        break;
      case 4:
        if (!batches.empty()) shop.ask(intents::UseUpBatch{batches[some(batches.size())].id});
        break;
      case 5: shop.ask(intents::UndoInShop{shop.last()}); break;
      case 6: shop.ask(intents::NameMaker{"M" + std::to_string(i), "here"}); break;
      case 7:
        if (!items.empty()) shop.ask(intents::CorrectStock{items[some(items.size())].id, paperEntry("c", i)});
        break;
    }
  }
  const std::string expected = dumped(shop.stock());
  CHECK(shop.stock().items.size() > 3);
  for (int round = 0; round < 20; ++round) {
    std::vector<Event> events = shop.events;
    events.insert(events.end(), shop.events.begin(), shop.events.begin() + 40);
    std::shuffle(events.begin(), events.end(), random);
    Shop other;
    foldShop(other, events);
    CHECK(dumped(other.stock) == expected);
  }
}

TEST_CASE("what a hostile event says of stock is left out, and nothing else with it") {
  TinyShop shop;
  REQUIRE(shop.ask(intents::EnterStock{paperEntry("laid", 4)}) == "");
  const std::string id = shop.stock().items[0].id;
  const auto hostile = [&](const char* type, const std::string& payload) {
    Event event = shop.events.front();
    event.eventId = "h" + std::to_string(shop.events.size());
    event.intentId = event.eventId;
    event.hlc.milliseconds += 1'000'000 + static_cast<std::int64_t>(shop.events.size());
    event.type = type;
    auto parsed = core::base::parseJson(payload);
    REQUIRE(parsed.readable);
    event.payload = parsed.root;
    shop.hearOf({event});
  };
  hostile(StockEntered::kType, R"({"kind": "paper", "name": "x", "measure": "pieces", "quantity": 9e99})");
  hostile(StockEntered::kType, R"({"kind": "cheese", "name": "x", "measure": "pieces", "quantity": 1})");
  hostile(StockEntered::kType, "[]");
  hostile(StockCounted::kType, R"({"item": ")" + id + R"(", "quantity": -5})");
  hostile(StockCounted::kType, R"({"item": ")" + id + R"(", "quantity": "7"})");
  hostile(StockMoved::kType, R"({"item": ")" + id + R"(", "change": 9223372036854775807})");
  hostile(StockCorrected::kType, R"({"item": ")" + id + R"(", "name": 3})");
  hostile(BatchEntered::kType, R"({"mark": 9223372036854775807, "kind": "paste", "name": "x", "made": -4})");
  hostile(MakerNamed::kType, R"({"maker": "a\u0007b"})");
  CHECK(shop.stock().items.size() == 1);
  CHECK(shop.stock().item(id)->there() == 4);
  CHECK(shop.stock().batches.empty());
  CHECK(shop.stock().lastMark == 0);
  // A text's commands are spelt out, and the text is shown.
  CHECK(shop.stock().maker.find('\a') == std::string::npos);
  CHECK(shop.stock().maker.front() == 'a');
}
