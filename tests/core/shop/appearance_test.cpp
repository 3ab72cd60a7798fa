// How the shop's materials look, folded from events, through the same door as everything else.
#include "core/base/json.h"
#include "core/record/appearance_payload.h"
#include "core/record/happening.h"
#include "core/shop/decide_stock.h"
#include "tests/core/shop/tiny_shop.h"
#include "tests/support/catch.h"

using namespace core::shop;
using namespace core::record;
using namespace tests;
namespace intents = core::intents;
using core::units::Length;

namespace {

intents::SheetPicture picture() {
  intents::SheetPicture one;
  one.hash = std::string(64, 'a');
  one.bytes = 9000;
  one.type = "jpeg";
  one.width = 640;
  one.height = 480;
  one.across = Length::wholeMillimetres(120);
  return one;
}

intents::GiveAppearance given(const std::string& material, const std::string& colour) {
  return {{material, colour, std::nullopt}};
}

Event eventOf(const intents::Appearance& appearance) {
  const EventDraft draft = draftOf(AppearanceGiven{appearance});
  Event event;
  event.eventId = "e";
  event.deviceId = "tablet";
  event.intentId = "i";
  event.stream = "bench/tablet";
  event.type = draft.type;
  event.payload = draft.payload;
  return event;
}

}  // namespace

TEST_CASE("a material looks as it was last told, and as its name says once that is taken away") {
  TinyShop shop;
  REQUIRE(shop.ask(given("indigo laid", "#2A3B6C")) == "");
  REQUIRE(shop.stock().appearances.count("indigo laid") == 1);
  CHECK(shop.stock().appearances.at("indigo laid").colour == "#2a3b6c");
  CHECK(shop.stock().appearances.count("Indigo laid") == 0);

  intents::Appearance pictured{"indigo laid", "", picture()};
  REQUIRE(shop.ask(intents::GiveAppearance{pictured}) == "");
  CHECK(shop.stock().appearances.at("indigo laid") == pictured);

  REQUIRE(shop.ask(given("indigo laid", "")) == "");
  CHECK(shop.stock().appearances.empty());
  // Each of them can be taken back, the newest first or another.
  REQUIRE(shop.ask(intents::UndoInShop{shop.last()}) == "");
  CHECK(shop.stock().appearances.at("indigo laid") == pictured);
}

TEST_CASE("a look given before another can be taken back by itself") {
  TinyShop shop;
  REQUIRE(shop.ask(given("laid", "#112233")) == "");
  const std::string first = shop.last();
  REQUIRE(shop.ask(given("wave", "#445566")) == "");
  REQUIRE(shop.ask(intents::UndoInShop{first}) == "");
  CHECK(shop.stock().appearances.count("laid") == 0);
  CHECK(shop.stock().appearances.count("wave") == 1);
}

TEST_CASE("two benches' looks of one material end the same whatever order they come in") {
  TinyShop one("one"), other("other");
  REQUIRE(one.ask(given("laid", "#111111")) == "");
  other.advance(500);
  REQUIRE(other.ask(given("laid", "#222222")) == "");
  const auto ofOne = one.events, ofOther = other.events;
  one.hearOf(ofOther);
  other.hearOf(ofOne);
  CHECK(one.stock().appearances.at("laid").colour == "#222222");
  CHECK(other.stock().appearances.at("laid").colour == "#222222");
}

TEST_CASE("a look that cannot be is refused with its reason, and none of it is kept") {
  TinyShop shop;
  for (const char* colour : {"red", "#12345", "#1234567", "#12345g", "123456#", "#", "#ÄÄÄ", " #123456"}) {
    INFO(colour);
    CHECK(shop.ask(given("laid", colour)) == "appearance.no-colour");
  }
  CHECK(shop.ask(given("", "#123456")) == "text.empty");
  CHECK(shop.ask(given("a\x07z", "#123456")) == "text.control-character");

  const auto refusal = [&](auto change) {
    intents::Appearance look{"laid", "", picture()};
    change(*look.picture);
    return shop.ask(intents::GiveAppearance{look});
  };
  CHECK(refusal([](auto& one) { one.across = Length(); }) == "appearance.across-out-of-range");
  CHECK(refusal([](auto& one) { one.across = Length::wholeMillimetres(-3); }) == "appearance.across-out-of-range");
  CHECK(refusal([](auto& one) { one.across = Length::wholeMillimetres(10'001); }) == "appearance.across-out-of-range");
  CHECK(refusal([](auto& one) { one.hash = "../../etc"; }) == "photograph.malformed");
  CHECK(refusal([](auto& one) { one.type = "svg"; }) == "photograph.malformed");
  CHECK(refusal([](auto& one) { one.bytes = 0; }) == "photograph.malformed");
  CHECK(refusal([](auto& one) { one.height = 0; }) == "photograph.malformed");
  CHECK(refusal([](auto& one) { one.width = one.height = 20'000; }) == "photograph.too-many-pixels");
  CHECK(refusal([](auto& one) { one.bytes = 100'000'001; }) == "photograph.too-large");
  CHECK(shop.stock().appearances.empty());
}

TEST_CASE("so many papers have a picture and no more, but one that has may get another") {
  TinyShop shop;
  const auto pictured = [](const std::string& name) { return intents::GiveAppearance{{name, "", picture()}}; };
  for (int i = 0; i < kMostPictured; ++i) REQUIRE(shop.ask(pictured("paper " + std::to_string(i))) == "");
  CHECK(shop.ask(pictured("one more")) == "appearance.too-many-pictures");
  CHECK(shop.ask(pictured("paper 3")) == "");
  CHECK(shop.ask(given("one more", "#123456")) == "");
}

TEST_CASE("a look is read from its event as it was written, and one that cannot be is none at all") {
  for (const intents::Appearance& look :
       {intents::Appearance{"laid", "#a1b2c3", std::nullopt}, intents::Appearance{"laid", "", picture()},
        intents::Appearance{"laid", "#a1b2c3", picture()}, intents::Appearance{"laid", "", std::nullopt}}) {
    const auto read = as<AppearanceGiven>(eventOf(look));
    REQUIRE(read.has_value());
    CHECK(read->appearance == look);
  }
  for (const char* payload :
       {R"({})", R"({"material": ""})", R"({"material": 3, "colour": "#123456"})",
        R"({"material": "laid", "colour": "red"})", R"({"material": "laid", "picture": "x"})",
        R"({"material": "laid", "picture": {}})",
        R"({"material": "laid", "picture": {"hash": "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa",
            "bytes": 9, "type": "png", "width": 4294967297, "height": 3, "across": 1000000}})",
        R"({"material": "laid", "picture": {"hash": "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa",
            "bytes": 9, "type": "png", "width": 3, "height": 3, "across": -9223372036854775808}})"}) {
    INFO(payload);
    Event event = eventOf({"laid", "#123456", std::nullopt});
    event.payload = core::base::parseJson(payload).root;
    const auto read = as<AppearanceGiven>(event);
    REQUIRE(read.has_value());
    CHECK_FALSE(read->appearance.has_value());
    CHECK(foldStock({event}, {}).appearances.empty());
  }
}
