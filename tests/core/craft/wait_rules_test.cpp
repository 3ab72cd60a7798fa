#include "core/craft/technique_reader.h"
#include "tests/core/craft/full_technique.h"
#include "tests/support/catch.h"

namespace craft_tests {

namespace {

constexpr const char* kCloses = R"("closes": {"early": "3 min", "likely": "5 min", "late": "8 min"},)";
constexpr const char* kOpens = R"("opens": {"early": "20 min", "likely": "30 min", "late": "1.5 h"},)";
constexpr const char* kOpensAtOnce = R"("opens": {"early": "0 s", "likely": "0 s", "late": "0 s"},)";
constexpr const char* kMissed =
    R"("ifMissed": {"do": "Brush on fresh paste.", "ends": ["this.wet", {"every": "strip", "of": "owner", "is": "wet"}]})";

}  // namespace

TEST_CASE("What closes is not punctual as well, since its closing is heeded") {
  requireEach({{"punctual beside closes", R"("attended": true,)", R"("attended": true, "punctual": true,)",
                "/steps/1/waits/0/punctual technique.punctual-window"}});
}

TEST_CASE("A window closes after it opens, early, likely and late") {
  requireEach({
      {"early", kOpensAtOnce, R"("opens": {"early": "3 min", "likely": "4 min", "late": "5 min"},)",
       "/steps/1/waits/0/closes/early technique.closes-before-opens"},
      {"likely", kOpensAtOnce, R"("opens": {"early": "1 min", "likely": "6 min", "late": "7 min"},)",
       "/steps/1/waits/0/closes/likely technique.closes-before-opens"},
      {"late", kOpensAtOnce, R"("opens": {"early": "1 min", "likely": "2 min", "late": "9 min"},)",
       "/steps/1/waits/0/closes/late technique.closes-before-opens"},
  });
}

TEST_CASE("What closes again says when, and what then") {
  requireEach({
      {"an open time that never closes", kCloses, "", "/steps/1/waits/0 technique.closes-missing"},
      {"ends nothing", kMissed, R"("ifMissed": {"do": "Brush on fresh paste.", "ends": []})",
       "/steps/1/waits/0/ifMissed/ends technique.missed-ends-nothing"},
      {"does nothing", kMissed, R"("ifMissed": {"ends": ["this.*"]})", "/steps/1/waits/0/ifMissed read.missing-key"},
  });
  CHECK(problemsOf(changed(std::string(R"("source": "common practice",
          )") + kMissed,
                           R"("source": "common practice")")) ==
        std::vector<std::string>{"/steps/1/waits/0 technique.if-missed-missing"});
}

TEST_CASE("The answers of a touch test are words for keys, told apart, and only of what the wait can come to") {
  constexpr const char* kAnswers = R"({"notYet": "No sheen", "found": "Glossy", "pastIt": "Dull"})";
  requireEach({
      {"a word longer than a key", kAnswers, R"({"found": "Glistening"})",
       "/steps/1/waits/0/answers/found technique.key-too-long"},
      {"more words than a key holds", kAnswers, R"({"found": "it is still wet"})",
       "/steps/1/waits/0/answers/found technique.too-many-words"},
      {"a placeholder", kAnswers, R"({"found": "{side}"})",
       "/steps/1/waits/0/answers/found technique.placeholder-on-key"},
      {"nothing", kAnswers, R"({"found": ""})", "/steps/1/waits/0/answers/found read.empty-text"},
      {"two alike", kAnswers, R"({"notYet": "Dull", "pastIt": "Dull"})",
       "/steps/1/waits/0/answers technique.answers-alike"},
      {"an unknown answer", kAnswers, R"({"perhaps": "Dull"})", "/steps/1/waits/0/answers/perhaps read.unknown-key"},
      {"too late for what never closes", R"("test": "The back of a finger feels no cold.",)",
       R"("test": "The back of a finger feels no cold.", "answers": {"pastIt": "Gone"},)",
       "/steps/1/waits/1/answers/pastIt technique.past-it-not-here"},
  });
  const auto read = core::craft::readTechnique(fullTechnique());
  REQUIRE(read.technique);
  const auto& waits = read.technique->steps[1].waits;
  CHECK(waits[0].answers == core::craft::Answers{"No sheen", "Glossy", "Dull"});
  CHECK(waits[1].answers == core::craft::Answers{});
}

TEST_CASE("Each rule of a wait fails at its place") {
  requireEach({
      {"a drying that closes", kOpens,
       R"("opens": {"early": "2 min", "likely": "3 min", "late": "4 min"},
          "closes": {"early": "5 min", "likely": "6 min", "late": "7 min"},)",
       "/steps/1/waits/1/closes technique.closes-not-here"},
      {"a drying that can be missed", kOpens,
       R"("opens": {"early": "2 min", "likely": "3 min", "late": "4 min"},
          "ifMissed": {"do": "Paste again.", "ends": ["this.wet"]},)",
       "/steps/1/waits/1/ifMissed technique.if-missed-not-here"},
      {"a span that runs backwards", kOpens, R"("opens": {"early": "40 min", "likely": "30 min", "late": "1.5 h"},)",
       "/steps/1/waits/1/opens/likely technique.span-order"},
      {"a drying of no time", kOpens, R"("opens": {"early": "0 s", "likely": "0 s", "late": "1.5 h"},)",
       "/steps/1/waits/1/opens technique.wait-of-nothing"},
      {"10 000 hours", kOpens, R"("opens": {"early": "20 min", "likely": "30 min", "late": "10000 h"},)",
       "/steps/1/waits/1/opens/late technique.wait-too-long"},
      {"more than 10 000 hours", kOpens, R"("opens": {"early": "20 min", "likely": "30 min", "late": "60 weeks"},)",
       "/steps/1/waits/1/opens/late duration.too-long"},
      {"found in the frost", R"("at": {"temperature": "20 C")", R"("at": {"temperature": "2 C")",
       "/steps/1/waits/0/at technique.room-not-predictable"},
      {"found at -40 degrees", R"("at": {"temperature": "20 C")", R"("at": {"temperature": "-40 C")",
       "/steps/1/waits/0/at/temperature temperature.out-of-range"},
      {"an unknown key in a span", kOpens,
       R"("opens": {"early": "20 min", "likely": "30 min", "late": "1.5 h", "source": "label"},)",
       "/steps/1/waits/1/opens/source read.unknown-key"},
      {"an unknown kind", R"("kind": "dry")", R"("kind": "drying")", "/steps/1/waits/1/kind read.unknown-word"},
      {"an unknown model", R"("model": "oxidation")", R"("model": "rust")", "/steps/1/waits/1/model read.unknown-word"},
      {"no model", R"("model": "oxidation",)", "", "/steps/1/waits/1 read.missing-key"},
      {"a title of five words", "strip dries", "strip dries in the rack",
       "/steps/1/waits/1/title technique.too-many-words"},
      {"a test of sixteen words", "The back of a finger feels no cold.",
       "The back of a finger feels no cold and the edge of the strip lifts nowhere at all.",
       "/steps/1/waits/1/test technique.too-many-words"},
      {"no test", R"("test": "The back of a finger feels no cold.",)", "", "/steps/1/waits/1 read.missing-key"},
      {"an id given twice", R"("id": "dry")", R"("id": "open")", "/steps/1/waits/1/id technique.duplicate-id"},
      {"a room that is no workshop", R"("temperature": "20 C")", R"("temperature": "200 C")",
       "/steps/1/waits/0/at/temperature temperature.out-of-range"},
      {"a humidity without its unit", R"("humidity": "55 %")", R"("humidity": "55")",
       "/steps/1/waits/0/at/humidity humidity.malformed"},
      {"makes every", R"("makes": "this.dry")", R"("makes": {"every": "strip", "is": "dry"})",
       "/steps/1/waits/1/makes technique.every-not-here"},
      {"follows what belongs to nothing known", R"("follows": "this.wet")", R"("follows": "glue.wet")",
       "/steps/1/waits/1/follows technique.unknown-first-word"},
      {"a placeholder a strip has no property for", "strip dries", "{colour} dries",
       "/steps/1/waits/1/title technique.unknown-placeholder"},
  });
}

TEST_CASE("A wait without a source is told") {
  CHECK(problemsOf(changed(R"("test": "The back of a finger feels no cold.",
          "source": "common practice")",
                           R"("test": "The back of a finger feels no cold.")")) ==
        std::vector<std::string>{"/steps/1/waits/1 read.missing-key"});
}

}  // namespace craft_tests
