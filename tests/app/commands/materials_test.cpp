// The materials of a job: text and JSON.
#include <algorithm>
#include <sstream>

#include "tests/app/commands/ran.h"
#include "tests/support/golden.h"
#include "tests/support/stocked_example.h"

using core::base::Value;
using tests::changed;
using tests::Commands;
using tests::stockedExample;
using tests::workedExample;

namespace {

Value json(const Commands& commands, const std::string& text, int exit = app::commands::kDone) {
  const auto ran = commands.run(
      {QStringLiteral("materials"), commands.file(QStringLiteral("a.job.json"), text), QStringLiteral("--json")});
  INFO(ran.err);
  CHECK(ran.exit == exit);
  return tests::parsed(ran.out);
}

const Value& member(const Value& object, const char* key) {
  INFO(key);
  const Value* found = object.find(key);
  REQUIRE(found != nullptr);
  return *found;
}

// A part of what nobody keeps would be gone when it is read.
const Value& member(const Value&& object, const char* key) = delete;

const Value& withId(const Value& list, std::string_view id) {
  INFO(id);
  const auto& items = list.items();
  const auto found =
      std::find_if(items.begin(), items.end(), [&](const Value& one) { return member(one, "id").asText() == id; });
  REQUIRE(found != items.end());
  return *found;
}

double millimetres(const Value& length) { return member(length, "value").asNumber(); }
const std::string& shown(const Value& length) { return member(length, "display").asText(); }

}  // namespace

TEST_CASE("the text of the worked example with stock is as it was looked at") {
  const Commands commands;
  const auto ran =
      commands.run({QStringLiteral("materials"), commands.file(QStringLiteral("a.job.json"), stockedExample())});
  CHECK(ran.exit == app::commands::kDone);
  CHECK(ran.err.empty());
  tests::checkGolden(PROJECT_ROOT, "materials/worked.txt", ran.out);
}

TEST_CASE("the strips of a spacer and the support of a float are listed, the spacer with its whole length") {
  const Commands commands;
  const std::string text = changed(changed(workedExample(), "\"overlap\": \"3 mm\"", "\"margin\": \"8 mm\""),
                                   "\"glazing\": \"2 mm\"", "\"glazing\": \"2 mm\", \"spacer\": \"5 mm\"");
  const auto ran = commands.run({QStringLiteral("materials"), commands.file(QStringLiteral("a.job.json"), text)});
  INFO(ran.out);
  CHECK(ran.exit == app::commands::kDone);
  CHECK(ran.out.find("support of the float") != std::string::npos);
  CHECK(ran.out.find("spacer, top and bottom") != std::string::npos);
  CHECK(ran.out.find("spacer, left and right") != std::string::npos);
  const auto told = json(commands, text);
  double length = 0;
  for (const char* id : {"spacer.horizontal", "spacer.vertical"}) {
    const Value& piece = withId(member(told, "pieces"), id);
    length += member(piece, "count").asNumber() * millimetres(member(piece, "width"));
  }
  const std::string whole =
      core::units::lengthText(length, core::units::UnitSystem::Millimetres, core::units::Rounding::Up);
  CHECK(ran.out.find("spacer: " + whole + " of strip in all, 3.0 mm wide and 5.0 mm thick") != std::string::npos);
  CHECK(shown(member(withId(member(told, "pieces"), "support"), "width")) == "310.0 mm");
}

TEST_CASE("the JSON of the worked example with stock is as it was looked at") {
  const Commands commands;
  const auto ran = commands.run({QStringLiteral("materials"), QStringLiteral("--json"),
                                 commands.file(QStringLiteral("a.job.json"), stockedExample())});
  CHECK(ran.exit == app::commands::kDone);
  tests::checkGolden(PROJECT_ROOT, "materials/worked.json", ran.out);
}

TEST_CASE("JSON has every part of the format, in one order") {
  const Commands commands;
  for (const std::string& text : {workedExample(), stockedExample()}) {
    const Value root = json(commands, text);
    std::vector<std::string> keys;
    for (const auto& [key, value] : root.members()) keys.push_back(key);
    CHECK(keys ==
          std::vector<std::string>{"format", "pieces", "groups", "sheets", "match", "amounts", "costs", "quote"});
    CHECK(member(root, "format").asText() == "mountwright-materials/1");
  }
}

TEST_CASE("without stock the cutting list still comes") {
  const Commands commands;
  const Value root = json(commands, workedExample());
  CHECK(member(root, "pieces").items().size() == 7);
  CHECK(member(root, "sheets").items().empty());
  CHECK(member(root, "costs").items().empty());
  CHECK(member(root, "amounts").items().size() == 4);
  const Value& strip = withId(member(root, "pieces"), "band.inner.horizontal");
  CHECK(millimetres(member(strip, "width")) == 379);
  CHECK(shown(member(strip, "width")) == "379.0 mm");
  CHECK(millimetres(member(strip, "height")) == 14);
  CHECK(millimetres(member(strip, "allowance")) == 24);
  CHECK(member(strip, "by").asText() == "nothing");
}

TEST_CASE("mount and glass are shown rounded down, paper up") {
  const Commands commands;
  const Value root = json(commands, changed(workedExample(), R"("trim": "6 mm")", R"("trim": "6.02 mm")"));
  const Value& pieces = member(root, "pieces");
  CHECK(shown(member(withId(pieces, "board.top"), "height")) == "409.3 mm");
  CHECK(shown(member(withId(pieces, "glazing"), "height")) == "409.3 mm");
  CHECK(shown(member(withId(pieces, "band.inner.horizontal"), "width")) == "379.1 mm");
}

TEST_CASE("inches are asked for as with figures") {
  const Commands commands;
  const QString file = commands.file(QStringLiteral("a.job.json"), stockedExample());
  const auto ran = commands.run({QStringLiteral("materials"), file, QStringLiteral("--units"), QStringLiteral("in")});
  CHECK(ran.exit == app::commands::kDone);
  CHECK(tests::contains(ran.out, " in"));
  // What is to be written into a job file of millimetres stays in them.
  std::istringstream lines(ran.out);
  for (std::string line; std::getline(lines, line);) {
    INFO(line);
    CHECK((tests::contains(line, "in the job file") || !tests::contains(line, " mm")));
  }
}

TEST_CASE("too little stock leaves with 1, and everything is said all the same") {
  const Commands commands;
  const std::string text = changed(stockedExample(), R"("quantity": 2)", R"("quantity": 0)");
  const Value root = json(commands, text, app::commands::kProblem);
  CHECK(member(root, "pieces").items().size() == 7);
  CHECK(member(root, "costs").items().size() == 5);
  const auto ran = commands.run({QStringLiteral("materials"), commands.file(QStringLiteral("b.job.json"), text)});
  CHECK(ran.exit == app::commands::kProblem);
  CHECK(tests::contains(ran.err, "b.job.json:: inner band, top and bottom: "));
  CHECK(tests::contains(ran.err, "(2 lack)"));
  CHECK(tests::contains(ran.out, "not priced: "));
}

TEST_CASE("labour is the hands' own minutes at the maker's rate") {
  const Commands commands;
  const std::string text = changed(stockedExample(), R"("prices": {)", R"("prices": { "labour": "24 GBP/h",)");
  const QStringList recipes = {QStringLiteral("--recipes"), commands.recipes()};
  const QString file = commands.file(QStringLiteral("a.job.json"), text);
  const auto steps = commands.run(QStringList{QStringLiteral("steps"), QStringLiteral("--json"), file} + recipes);
  double minutes = 0;
  const Value composed = tests::parsed(steps.out);
  for (const Value& step : member(composed, "steps").items()) minutes += member(step, "work").asNumber();
  REQUIRE(minutes > 60);
  const auto ran = commands.run(QStringList{QStringLiteral("materials"), QStringLiteral("--json"), file} + recipes);
  REQUIRE(ran.exit == app::commands::kDone);
  const Value root = tests::parsed(ran.out);
  const Value& labour = withId(member(root, "costs"), "labour");
  CHECK(member(labour, "quantity").asNumber() == Approx(minutes / 60));
  CHECK(std::stod(member(member(labour, "cost"), "value").asText()) == Approx(minutes / 60 * 24).margin(0.0001));
}

TEST_CASE("a job that cannot be composed, or has no techniques, has its list and no price for labour") {
  const Commands commands;
  const std::string text = changed(stockedExample(), R"("prices": {)", R"("prices": { "labour": "24 GBP/h",)");
  const QString none = commands.path(QStringLiteral("none"));
  REQUIRE(QDir().mkpath(none));
  const auto lacksLabour = [&](const std::string& job, const QString& recipes, int exit) {
    const auto ran = commands.run({QStringLiteral("materials"), QStringLiteral("--json"), QStringLiteral("--recipes"),
                                   recipes, commands.file(QStringLiteral("a.job.json"), job)});
    CHECK(ran.exit == exit);
    CHECK(ran.err.empty() == (exit == app::commands::kDone));
    const Value root = tests::parsed(ran.out);
    CHECK(member(root, "pieces").items().size() == 7);
    const auto& left = member(member(root, "quote"), "notPriced").items();
    CHECK(std::any_of(left.begin(), left.end(), [](const Value& one) { return one.asText() == "labour"; }));
  };
  lacksLabour(text, none, app::commands::kDone);
  lacksLabour(changed(text, "\"room\":", R"("techniques": { "joining": "no-such" }, "room":)"), commands.recipes(),
              app::commands::kProblem);
}

TEST_CASE("the sum of what is told exactly is the total") {
  const Commands commands;
  const Value root = json(commands, stockedExample());
  core::units::Money sum;
  for (const Value& line : member(root, "costs").items()) {
    sum = sum + *core::units::parseMoney(member(member(line, "cost"), "value").asText());
  }
  CHECK(core::units::exactText(sum) == member(member(member(root, "quote"), "total"), "value").asText());
  CHECK(member(member(root, "quote"), "currency").asText() == "GBP");
}

TEST_CASE("stock changes no byte of figures and steps") {
  const Commands commands;
  for (const char* command : {"figures", "steps", "rehearse"}) {
    for (const bool asJson : {false, true}) {
      const auto run = [&](const std::string& text) {
        QStringList arguments{QString::fromLatin1(command), commands.file(QStringLiteral("a.job.json"), text)};
        if (asJson) arguments << QStringLiteral("--json");
        const auto ran = commands.run(arguments);
        return std::to_string(ran.exit) + ran.out + ran.err;
      };
      CHECK(run(workedExample()) == run(stockedExample()));
    }
  }
}
