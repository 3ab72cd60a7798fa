#include "app/words/words.h"

#include <cmath>
#include <limits>
#include <random>
#include <regex>
#include <set>

#include "app/words/catalogue.h"
#include "core/craft/properties.h"
#include "core/craft/want.h"
#include "tests/support/shaped_example.h"

using core::base::Message;
using core::base::Millimetres;
using core::units::UnitSystem;

namespace {

std::string said(const Message& message, UnitSystem units = UnitSystem::Millimetres) {
  return app::words::text(message, units).toStdString();
}

std::string lasting(std::int64_t seconds) {
  return app::words::duration(core::units::Duration::milliseconds(seconds * 1000)).toStdString();
}

}  // namespace

TEST_CASE("a time that is reckoned is said no finer than anybody can foretell it") {
  const auto about = [](double minutes) {
    return app::words::about(core::units::Duration::milliseconds(std::llround(minutes * 60'000))).toStdString();
  };
  CHECK(about(0.5) == "30 s");
  CHECK(about(9) == "9 min");
  CHECK(about(12.4) == "10 min");
  CHECK(about(12.5) == "15 min");
  CHECK(about(177) == "2 h 55 min");
  CHECK(about(178) == "3 h");
  CHECK(about(194) == "3 h");
  CHECK(about(196) == "3 h 30 min");
  CHECK(about(23 * 60 + 50) == "1 d");
  CHECK(about(47 * 60 + 14) == "1 d 23 h");
  CHECK(about(49 * 60 + 40) == "2 d 2 h");
}

TEST_CASE("lengths in a sentence follow the units asked for") {
  const Message message = Message("job.overlap")
                              .with("first", std::string("a"))
                              .with("second", std::string("b"))
                              .with("by", Millimetres{6.35});
  CHECK(said(message) == "\"a\" and \"b\" overlap by 6.4 mm");
  CHECK(said(message, UnitSystem::Inches) == "\"a\" and \"b\" overlap by 1/4 in");
}

TEST_CASE("a 64th of an inch that was entered stands in a sentence as it was") {
  const Message message = Message("job.overlap")
                              .with("first", std::string("a"))
                              .with("second", std::string("b"))
                              .with("by", Millimetres{25.4 / 64 * 3});
  CHECK(said(message, UnitSystem::Inches) == "\"a\" and \"b\" overlap by 3/64 in");
  CHECK(said(message) == "\"a\" and \"b\" overlap by 1.2 mm");
}

TEST_CASE("a sentence that says a length changes shows that it does, in either unit, however little it is") {
  const auto change = [](double was, double now, UnitSystem units) {
    return said(Message("match.width")
                    .with("band", std::string("reed"))
                    .with("was", Millimetres{was})
                    .with("now", Millimetres{now}),
                units);
  };
  CHECK(change(9.5, 9.6, UnitSystem::Millimetres) == "band reed: 9.6 mm wide instead of 9.5 mm");
  CHECK(change(9.5, 9.52, UnitSystem::Millimetres) == "band reed: 9.52 mm wide instead of 9.50 mm");
  CHECK(change(9.525, 9.65, UnitSystem::Inches) == "band reed: 0.380 in wide instead of 0.375 in");
  std::mt19937 random(20'260'901);
  for (int i = 0; i < 2000; ++i) {
    const double was = static_cast<double>(random() % 40'000'000) / 1e6;
    const double now = was + std::pow(10.0, -static_cast<int>(random() % 7));
    for (const UnitSystem units : {UnitSystem::Millimetres, UnitSystem::Inches}) {
      const std::string text = change(was, now, units);
      const auto number = [&](const char* before, const char* after) {
        const auto from = text.find(before) + std::string(before).size();
        const std::string found = text.substr(from, after == nullptr ? std::string::npos : text.find(after) - from);
        return found.rfind("\u2248 ", 0) == 0 ? found.substr(4) : found;
      };
      INFO(text);
      CHECK(number(": ", " wide") != number("instead of ", nullptr));
    }
  }
}

TEST_CASE("a length that is more than nothing is not shown as nothing") {
  const auto wider = [](double by, UnitSystem units) {
    return said(Message("match.border-sides-wider").with("by", Millimetres{by}), units);
  };
  CHECK(wider(0.04, UnitSystem::Millimetres) == "left and right borders each 0.04 mm wider");
  CHECK(wider(0.1, UnitSystem::Inches) == "left and right borders each 0.004 in wider");
  // The rounding of a sum is no length.
  CHECK(wider(1e-9, UnitSystem::Millimetres) == "left and right borders each 0.0 mm wider");
}

TEST_CASE("a message without words is shown as it is, never lost") {
  CHECK(said(Message("made.up").with("by", Millimetres{2})).find("made.up") == 0);
  CHECK_FALSE(said(Message("")).find("{") != std::string::npos);
}

TEST_CASE("why a kept job cannot be worked is said in words, within the sentence that tells so") {
  const Message inner = Message("kept.does-not-compose")
                            .with("cause", std::string("job.overlap"))
                            .with("cause.first", std::string("a"))
                            .with("cause.second", std::string("b"))
                            .with("cause.by", Millimetres{6.35});
  CHECK(said(inner, UnitSystem::Inches) ==
        "The kept techniques no longer compose into this job: \"a\" and \"b\" overlap by 1/4 in");
  // A record may name any cause.
  CHECK(
      said(Message("kept.does-not-compose").with("cause", std::string("kept.does-not-compose"))).find("{says:cause}") !=
      std::string::npos);
}

TEST_CASE("an argument that is missing leaves its name standing") {
  CHECK(said(Message("json.key-twice")) == "the key \"{key}\" is given twice");
}

TEST_CASE("braces within an argument are left alone") {
  CHECK(said(Message("json.key-twice").with("key", std::string("{key}{key}"))) ==
        "the key \"{key}{key}\" is given twice");
}

TEST_CASE("numbers that are not finite are shown and do not stop anything") {
  const double endless = std::numeric_limits<double>::infinity();
  CHECK(said(Message("humidity.out-of-range").with("percent", endless)) == "? % is no humidity of a room");
  CHECK(said(Message("job.overlap").with("by", Millimetres{std::numeric_limits<double>::quiet_NaN()})).find("by ?") !=
        std::string::npos);
}

TEST_CASE("every measure that a technique can want is called by a name") {
  for (const auto& traits : core::craft::measures()) {
    const std::string id = "design.measure." + std::string(traits.name);
    INFO(id);
    REQUIRE(app::words::sourceOf(id) != nullptr);
    const Message told = Message("design.wants-least.length")
                             .with("measure", id)
                             .with("is", Millimetres{3})
                             .with("wanted", Millimetres{5})
                             .with("techniques", std::string("Strips"))
                             .with("why", std::string("It must hold."));
    CHECK(said(told) == said(Message(id)) + " is 3.0 mm, and 5.0 mm or more is wanted for \"Strips\". It must hold.");
  }
  for (const char* bound : {"least", "most"}) {
    for (const char* quantity : {"length", "temperature", "humidity"}) {
      CHECK(app::words::sourceOf(std::string("design.wants-") + bound + '.' + quantity) != nullptr);
    }
  }
}

TEST_CASE("every metal a leaf may be is called by a name") {
  for (const std::string& metal : core::craft::valuesOf("metal")) {
    INFO(metal);
    const QString called = app::words::property(QStringLiteral("metal"), QString::fromStdString(metal));
    CHECK_FALSE(called.isEmpty());
    CHECK((called != QString::fromStdString(metal) || metal == "palladium" || metal == "aluminium" ||
           metal == "silver" || metal == "copper"));
  }
}

TEST_CASE("every figure of a design has a label with its element's id and a datum") {
  std::vector<std::string> texts = {
      tests::workedExample(), tests::inchExample(),
      tests::changed(tests::inchExample(), R"("leaf": [)", R"("package": {"spacer": "1/4 in"}, "leaf": [)")};
  for (const std::string& form : tests::shapedForms()) texts.push_back(tests::shapedExample(form));
  for (const std::string& text : texts) {
    const auto design = tests::designOf(text);
    for (const auto& figure : design.figures.all()) {
      INFO(figure.id);
      const std::string label = app::words::figureLabel(figure).toStdString();
      CHECK(label != figure.id);
      CHECK(label.find('{') == std::string::npos);
      CHECK(label.find(figure.element) != std::string::npos);
      CHECK_FALSE(app::words::figureDatum(figure).isEmpty());
    }
  }
}

TEST_CASE("no two figures of a job have the same label and datum") {
  std::vector<std::string> texts = {tests::workedExample()};
  for (const std::string& form : tests::shapedForms()) texts.push_back(tests::shapedExample(form));
  for (const std::string& text : texts) {
    const auto design = tests::designOf(text);
    std::set<std::string> seen;
    for (const auto& figure : design.figures.all()) {
      INFO(figure.id);
      CHECK(
          seen.insert((app::words::figureLabel(figure) + '|' + app::words::figureDatum(figure)).toStdString()).second);
    }
  }
}

TEST_CASE("marks and glue are told with the place they are measured from") {
  const auto design = tests::designOf(tests::workedExample());
  CHECK(app::words::figureLabel(*design.figures.find("board.top.sight.width")) ==
        QStringLiteral("top board, sight width"));
  CHECK(app::words::figureDatum(*design.figures.find("board.top.mark.left")) ==
        QStringLiteral("from the marked corner, on the back"));
  CHECK(app::words::figureDatum(*design.figures.find("band.inner.glueFrom")) == QStringLiteral("from the cut end"));
}

TEST_CASE("times are said in whole minutes, and in seconds below one") {
  CHECK(lasting(30) == "30 s");
  CHECK(lasting(60) == "1 min");
  CHECK(lasting(25 * 60) == "25 min");
  CHECK(lasting(90 * 60) == "1 h 30 min");
  CHECK(lasting(48 * 3600) == "2 d");
  CHECK(lasting(49 * 3600 + 60) == "2 d 1 h 1 min");
  CHECK(lasting(0) == "0 s");
}

TEST_CASE("every word of the small lists is there and differs from its neighbours") {
  using core::craft::WaitKind;
  std::set<QString> kinds;
  for (const WaitKind kind : {WaitKind::Dry, WaitKind::Cure, WaitKind::Press, WaitKind::Tack, WaitKind::Open,
                              WaitKind::Soak, WaitKind::Rest}) {
    kinds.insert(app::words::waitKind(kind));
  }
  CHECK(kinds.size() == 7);
  using core::craft::Hands;
  std::set<QString> hands;
  for (const Hands each : {Hands::Clean, Hands::Paste, Hands::Paint, Hands::Leaf, Hands::Blade}) {
    hands.insert(app::words::hands(each));
  }
  CHECK(hands.size() == 5);
  CHECK(kinds.count(QString()) + hands.count(QString()) == 0);
}

TEST_CASE("nothing calls a thing safe, archival or cured") {
  // As words of their own: "safety data sheet" is none of them.
  const std::regex verdict(R"(\b(safe|safely|archival|permanent|acid-free|cured)\b)", std::regex::icase);
  CHECK(std::regex_search(std::string("It is Safe now."), verdict));
  const auto entries = app::words::allEntries();
  CHECK(entries.size() > 600);
  for (const app::words::Entry& entry : entries) {
    INFO(entry.id << ": " << entry.source);
    CHECK_FALSE(std::regex_search(std::string(entry.source), verdict));
  }
}

TEST_CASE("things are named as a maker says them") {
  const auto words = app::words::thingWords();
  CHECK(words.board == "{id} board");
  CHECK(words.strip == "{side} strip of {band}");
  CHECK(words.spandrel == "{id} spandrel");
  CHECK(words.wash == "{id} wash panel");
  CHECK(words.places.at("tl") == "top left");
}
