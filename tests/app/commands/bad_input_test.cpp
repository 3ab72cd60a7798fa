// Files no maker would write. Each is told in the shape of a problem; none crashes, hangs or is taken for good.
#include <regex>

#include "tests/app/commands/ran.h"

using tests::changed;
using tests::Commands;
using tests::workedExample;

namespace {

// Every line has a place and a message.
void checkShape(const std::vector<std::string>& lines) {
  static const std::regex kLine(R"(^a\.job\.json:((/[^ ]*)?|[0-9]+:[0-9]+): .+$)");
  for (const std::string& line : lines) {
    INFO(line);
    CHECK(std::regex_match(line, kLine));
  }
}

void checkRefused(const Commands& commands, const std::string& text, const std::string& place) {
  const auto lines = commands.problems(text);
  INFO(core::base::join(lines, "\n"));
  REQUIRE_FALSE(lines.empty());
  checkShape(lines);
  bool found = false;
  for (const std::string& line : lines) found = found || core::base::startsWith(line, "a.job.json:" + place + ": ");
  INFO("wanted at " << place);
  CHECK(found);
}

}  // namespace

TEST_CASE("a job cut off anywhere is one syntax error and never a job") {
  const Commands commands;
  const std::string whole = workedExample();
  const std::size_t end = whole.find_last_of('}');
  for (std::size_t length = 0; length <= end; length += length < 40 ? 1 : 37) {
    INFO(length);
    const auto lines = commands.problems(whole.substr(0, length));
    CHECK(lines.size() == 1);
    checkShape(lines);
  }
}

TEST_CASE("what is not JSON, not UTF-8, too large or nested too deep is refused") {
  const Commands commands;
  const std::string deep(100'000, '[');
  const std::vector<std::string> texts = {"",
                                          " ",
                                          "\xff\xfe{}",
                                          "nonsense",
                                          "[1, 2",
                                          "{\"format\": \"\xc3\x28\"}",
                                          "\xef\xbb\xbf{}x",
                                          deep,
                                          "{\"a\":" + deep + std::string(100'000, ']') + "}",
                                          workedExample() + "x",
                                          std::string(3, '\0')};
  for (const std::string& text : texts) {
    INFO(text.substr(0, 20));
    const auto lines = commands.problems(text);
    CHECK(lines.size() == 1);
    checkShape(lines);
  }
}

TEST_CASE("ten megabytes are refused as too large and not read to the end") {
  const Commands commands;
  const auto ran = commands.check(std::string(10'000'000, ' ') + workedExample());
  CHECK(ran.exit == 1);
  CHECK(tests::contains(ran.out, "larger than 4096 KiB"));
}

TEST_CASE("roots that are not an object are refused at the root") {
  const Commands commands;
  for (const char* text : {"null", "[]", "1", "\"x\"", "true"}) {
    INFO(text);
    checkRefused(commands, text, "");
  }
}

TEST_CASE("numbers at the edge of what a double holds are refused at their place") {
  const Commands commands;
  const auto withCoverage = [](const std::string& number) {
    return changed(workedExample(), "\"coverage\": 0.15", "\"coverage\": " + number);
  };
  const auto lines = commands.problems(withCoverage("1e400"));
  CHECK(lines.size() == 1);
  checkShape(lines);
  checkRefused(commands, withCoverage("-1"), "/leaf/0/coverage");
  checkRefused(commands, withCoverage("1.0001"), "/leaf/0/coverage");
  checkRefused(commands, changed(workedExample(), "\"angle\": 45,", "\"angle\": 29.9,"), "/mount/boards/0/bevel/angle");
}

TEST_CASE("minus zero is zero") {
  const Commands commands;
  const auto minus = commands.run(
      {QStringLiteral("figures"),
       commands.file(QStringLiteral("m.job.json"), changed(workedExample(), "\"gap\": \"0 mm\"", "\"gap\": \"-0 mm\"")),
       QStringLiteral("--json")});
  const auto plain =
      commands.run({QStringLiteral("figures"), commands.file(QStringLiteral("p.job.json"), workedExample()),
                    QStringLiteral("--json")});
  CHECK(minus.exit == 0);
  CHECK(minus.out == plain.out);
  checkRefused(commands, changed(workedExample(), "\"overlap\": \"3 mm\"", "\"overlap\": -0"), "/mount/window/overlap");
}

TEST_CASE("keys given twice and keys not known are refused") {
  const Commands commands;
  checkRefused(commands,
               changed(workedExample(), "\"offset\": \"10 mm\"", "\"offset\": \"10 mm\", \"offset\": \"10 mm\""),
               "/bands/0/offset");
  checkRefused(commands, changed(workedExample(), "\"paper\"", "\"colour\""), "/bands/0/colour");
  checkRefused(commands, changed(workedExample(), "\"paper\"", "\"a/b~c\""), "/bands/0/a~1b~0c");
}

TEST_CASE("ids that are malformed, reserved or given twice are refused where they stand") {
  const Commands commands;
  const auto withId = [](const std::string& id) {
    return changed(workedExample(), "{ \"id\": \"outside\"", "{ \"id\": \"" + id + "\"");
  };
  for (const char* id : {"", "Outside", "1st", "out side", "-a", "a_b", "leaf", "piece", "art", "inner", "inside",
                         "abcdefghijklmnopqrstuvwxyzabcdefg", "\xc3\xa9"}) {
    INFO(id);
    const auto lines = commands.problems(withId(id));
    REQUIRE_FALSE(lines.empty());
    CHECK(core::base::startsWith(
        lines[0], std::string("a.job.json:/lines/") + (std::string(id) == "inside" ? "1" : "0") + "/id: "));
  }
  CHECK(commands.problems(withId("abcdefghijklmnopqrstuvwxyzabcdef")).empty());
}

TEST_CASE("lengths that are bare, unitless, too fine, too long or not positive are refused at their place") {
  const Commands commands;
  for (const char* length : {"14", "\"14\"", "\"14mm\"", "\"14 mm \"", "\"14 ft\"", "\"1/3 in\"", "\"1/128 in\"",
                             "\"3/8 mm\"", "\"0 mm\"", "\"-14 mm\"", "\"14,5 mm\"", "\"1e1 mm\"", "\"0.0000001 mm\"",
                             "\"10000.1 mm\"", "\"99999999999999999999 mm\"", "null", "[]", "\"\""}) {
    INFO(length);
    checkRefused(commands, changed(workedExample(), "\"width\": \"14 mm\"", std::string("\"width\": ") + length),
                 "/bands/0/width");
  }
}

TEST_CASE("a band wider than the board and a reveal narrower than the bevel say by how much") {
  const Commands commands;
  const auto wide = commands.problems(changed(workedExample(), "\"width\": \"14 mm\"", "\"width\": \"60 mm\""));
  REQUIRE_FALSE(wide.empty());
  // 10 + 60 from a face edge 68.5 from the mount's.
  CHECK(tests::contains(wide[0], "hangs over the"));
  CHECK(tests::contains(wide[0], "by 1.5 mm"));
  const auto narrow = commands.problems(changed(workedExample(), "\"reveal\": \"6 mm\"", "\"reveal\": \"1.5 mm\""));
  REQUIRE_FALSE(narrow.empty());
  CHECK(tests::contains(narrow[0], "a.job.json:/mount/boards/1/reveal: "));
  CHECK(tests::contains(narrow[0], "0.5 mm"));
}

TEST_CASE("stock that cannot be used is told where it stands, by how much, and in whose money") {
  const Commands commands;
  const auto stocked = [](const std::string& stock) {
    return changed(workedExample(), "\"package\":", "\"stock\": [" + stock + "], \"package\":");
  };
  const auto narrow = commands.problems(
      stocked(R"({"id": "slip", "kind": "paper", "width": "8 mm", "height": "90 mm", "usableMargin": "5 mm"})"));
  REQUIRE(narrow.size() == 1);
  CHECK(tests::contains(narrow[0], "a.job.json:/stock/0/usableMargin: "));
  CHECK(tests::contains(narrow[0], "2.0 mm too wide"));
  const auto mixed = commands.problems(
      stocked(R"({"id": "a", "kind": "paper", "width": "300 mm", "height": "400 mm", "price": "2 GBP"},)"
              R"({"id": "b", "kind": "paper", "width": "300 mm", "height": "400 mm", "price": "2 EUR"})"));
  REQUIRE(mixed.size() == 1);
  CHECK(tests::contains(mixed[0], "a.job.json:/stock/1/price: "));
  CHECK(tests::contains(mixed[0], "GBP"));
}

TEST_CASE("a window that does not fit is told with what would") {
  const Commands commands;
  const auto lines =
      commands.problems(changed(workedExample(), "\"rectangle\"", R"("arch", "head": "pointed", "rise": "240 mm")"));
  REQUIRE(lines.size() == 1);
  CHECK(tests::contains(lines[0], "a.job.json:/mount/window/rise: "));
  CHECK(tests::contains(lines[0], "234.0 mm"));
  CHECK(tests::contains(lines[0], "6.0 mm"));
}
