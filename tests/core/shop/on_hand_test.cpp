// What the shop cut up and kept: folded from events, through the same door as everything else.
#include "core/shop/on_hand.h"

#include <limits>

#include "core/shop/shop.h"
#include "tests/support/catch.h"

using namespace core::shop;
using namespace core::record;
namespace intents = core::intents;
using core::base::Value;
using core::units::Length;

namespace {

intents::Offcut board(int width, int height) {
  intents::Offcut piece;
  piece.width = Length::wholeMillimetres(width);
  piece.height = Length::wholeMillimetres(height);
  piece.thickness = Length::nanometres(1'500'000);
  piece.material = "cotton";
  piece.fibres = intents::Offcut::Runs::AlongHeight;
  return piece;
}

// A shop that keeps what it is asked.
class CountedShop {
 public:
  std::string ask(const intents::ShopIntent& intent) {
    const auto decided = decide(m_shop, m_now, intent);
    if (!decided) return decided.error().id;
    ++m_acts;
    for (const EventDraft& draft : decided.value()) {
      Event event;
      event.eventId = "e" + std::to_string(events.size());
      event.deviceId = "tablet";
      event.deviceSequence = static_cast<std::int64_t>(events.size());
      event.hlc = {m_now.utcMilliseconds + m_acts, 0};
      event.intentId = "i" + std::to_string(m_acts);
      event.stream = "bench/tablet";
      event.type = draft.type;
      event.payload = draft.payload;
      events.push_back(event);
    }
    foldShop(m_shop, events);
    return "";
  }
  std::string last() const { return "i" + std::to_string(m_acts); }
  const OnHand& onHand() const { return m_shop.onHand; }

  std::vector<Event> events;

 private:
  Shop m_shop;
  core::waits::ClockReading m_now{1'764'000'000'000, "boot-1", 1'000'000, true};
  int m_acts = 0;
};

intents::CutSheet sheet(std::vector<intents::Offcut> kept) {
  intents::CutSheet cut;
  cut.job = "chart";
  cut.stock = "cotton-thin";
  cut.pieces = {{"board.top", 1}, {"band.inner.vertical", 2}};
  cut.kept = std::move(kept);
  return cut;
}

}  // namespace

TEST_CASE("a sheet that is cut up is counted with its pieces, and what is kept of it lies in stock with a mark") {
  CountedShop shop;
  REQUIRE(shop.ask(sheet({board(300, 800), board(200, 150)})) == "");
  REQUIRE(shop.ask(sheet({board(400, 500)})) == "");
  const CutSoFar& cut = shop.onHand().cut.at("chart");
  CHECK(cut.sheets.at("cotton-thin") == 2);
  CHECK(cut.pieces.at("board.top") == 2);
  CHECK(cut.pieces.at("band.inner.vertical") == 4);
  REQUIRE(shop.onHand().offcuts.size() == 3);
  const KeptOffcut& second = shop.onHand().offcuts[1];
  CHECK(second.mark == 2);
  CHECK(second.piece.width == Length::wholeMillimetres(200));
  CHECK(second.piece.height == Length::wholeMillimetres(150));
  CHECK(second.piece.thickness == Length::nanometres(1'500'000));
  CHECK(second.piece.material == "cotton");
  CHECK(second.piece.fibres == intents::Offcut::Runs::AlongHeight);
  CHECK(second.piece.pattern == intents::Offcut::Runs::Unknown);
  CHECK(shop.onHand().offcuts[2].mark == 3);
}

TEST_CASE("a mark that no pencil ever wrote is none") {
  CountedShop shop;
  REQUIRE(shop.ask(sheet({board(300, 800)})) == "");
  for (const std::int64_t mark : {std::numeric_limits<std::int64_t>::min(), std::numeric_limits<std::int64_t>::max()}) {
    Event event = shop.events.back();
    Value kept = event.payload.find("kept")->items()[0];
    kept.set("mark", Value::integer(mark));
    Value all = Value::array();
    all.append(std::move(kept));
    event.payload.set("kept", std::move(all));
    const OnHand onHand = foldOnHand({event}, {});
    REQUIRE(onHand.offcuts.size() == 1);
    CHECK(onHand.offcuts[0].mark >= 0);
    CHECK(onHand.offcuts[0].mark <= 1'000'000'000);
  }
}

TEST_CASE("an offcut is cut up or dropped once, and its mark is never given again") {
  CountedShop shop;
  REQUIRE(shop.ask(sheet({board(300, 800), board(200, 150)})) == "");
  intents::CutSheet small = sheet({});
  small.stock.clear();
  small.offcut = shop.onHand().offcuts[0].id;
  REQUIRE(shop.ask(small) == "");
  CHECK(shop.ask(small) == "shop.no-such-offcut");
  const std::string other = shop.onHand().offcuts[0].id;
  REQUIRE(shop.ask(intents::DropOffcut{other}) == "");
  CHECK(shop.ask(intents::DropOffcut{other}) == "shop.no-such-offcut");
  CHECK(shop.onHand().offcuts.empty());
  REQUIRE(shop.ask(sheet({board(110, 120)})) == "");
  CHECK(shop.onHand().offcuts[0].mark == 3);
  CHECK(shop.onHand().cut.at("chart").sheets.at("cotton-thin") == 2);
}

TEST_CASE("a cutting taken back never was, unless what it kept has been used") {
  CountedShop shop;
  REQUIRE(shop.ask(sheet({board(300, 800)})) == "");
  const std::string first = shop.last();
  intents::CutSheet small = sheet({});
  small.stock.clear();
  small.offcut = shop.onHand().offcuts[0].id;
  REQUIRE(shop.ask(small) == "");
  CHECK(shop.ask(intents::UndoInShop{first}) == "shop.offcut-used");
  REQUIRE(shop.ask(intents::UndoInShop{shop.last()}) == "");
  CHECK(shop.onHand().offcuts.size() == 1);
  REQUIRE(shop.ask(intents::UndoInShop{first}) == "");
  CHECK(shop.onHand().offcuts.empty());
  CHECK(shop.onHand().cut.empty());
  CHECK(shop.ask(intents::UndoInShop{first}) == "shop.no-such-cut");
}

TEST_CASE("what cannot have been cut is refused") {
  CountedShop shop;
  intents::CutSheet cut = sheet({});
  cut.pieces.clear();
  CHECK(shop.ask(cut) == "shop.nothing-cut");
  cut = sheet({});
  cut.pieces["board.top"] = 0;
  CHECK(shop.ask(cut) == "shop.nothing-cut");
  cut = sheet({});
  cut.stock.clear();
  CHECK(shop.ask(cut) == "shop.nothing-cut");
  CHECK(shop.ask(sheet({board(0, 100)})) == "shop.offcut-out-of-range");
  CHECK(shop.ask(sheet({board(100, 10'001)})) == "shop.offcut-out-of-range");
  CHECK(shop.events.empty());
}

TEST_CASE("events read in either order, twice, or spoilt, give the same shop") {
  CountedShop shop;
  REQUIRE(shop.ask(sheet({board(300, 800), board(200, 150)})) == "");
  REQUIRE(shop.ask(intents::DropOffcut{shop.onHand().offcuts[1].id}) == "");
  std::vector<Event> events(shop.events.rbegin(), shop.events.rend());
  events.insert(events.end(), shop.events.begin(), shop.events.end());
  Event spoilt = shop.events.front();
  spoilt.eventId = "spoilt";
  spoilt.intentId = "spoilt";
  spoilt.payload = Value::object();
  spoilt.payload.set("job", Value::text("chart")).set("pieces", Value::text("all")).set("kept", Value::integer(3));
  events.push_back(spoilt);
  Shop again;
  foldShop(again, events);
  REQUIRE(again.onHand.offcuts.size() == 1);
  CHECK(again.onHand.offcuts[0].id == shop.onHand().offcuts[0].id);
  CHECK(again.onHand.cut.at("chart").pieces == shop.onHand().cut.at("chart").pieces);
}
