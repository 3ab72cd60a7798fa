#include "core/craft/technique_reader.h"
#include "tests/core/craft/full_technique.h"
#include "tests/support/catch.h"

namespace craft_tests {

TEST_CASE("Each rule of a fact fails at its place") {
  requireEach({
      {"a fact of one word", R"("art.away")", R"("art")", "/steps/0/needs/0 technique.malformed-fact"},
      {"a fact with an empty word", R"("art.away")", R"("art..away")", "/steps/0/needs/0 technique.malformed-fact"},
      {"a fact with a space", R"("art.away")", R"("art.is away")", "/steps/0/needs/0 technique.malformed-fact"},
      {"a fact of a job's own id", R"("art.away")", R"("top.window.cut")",
       "/steps/0/needs/0 technique.unknown-first-word"},
      {"a fact that is no text", R"("art.away")", "7", "/steps/0/needs/0 read.expected-text"},
      {"every fact in needs", R"("art.away")", R"("this.*")", "/steps/0/needs/0 technique.every-fact-not-here"},
      {"every fact in ends of a step", R"("boards.bare")", R"("this.*")",
       "/steps/1/ends/0 technique.every-fact-not-here"},
      {"every fact of what is not this", R"(["this.*"])", R"(["owner.*"])",
       "/steps/0/faults/0/ends/0 technique.malformed-fact"},
      {"an owner where nothing owns", R"("this.fitted")", R"("owner.fitted")", "/steps/3/makes/0 technique.no-owner"},
      {"every in makes", R"("makes": ["this.fitted"])", R"("makes": [{"every": "strip", "is": "fitted"}])",
       "/steps/3/makes/0 technique.every-not-here"},
      {"anyOf in makes", R"("makes": ["this.fitted"])", R"("makes": [{"anyOf": ["this.fitted"]}])",
       "/steps/3/makes/0 technique.any-of-not-here"},
      {"anyOf in ends", R"(["boards.bare"])", R"([{"anyOf": ["boards.bare"]}])",
       "/steps/1/ends/0 technique.any-of-not-here"},
      {"anyOf in anyOf", R"("paste.starch.ready")", R"({"anyOf": ["paste.starch.ready"]})",
       "/steps/0/needs/3/anyOf/0 technique.any-of-not-here"},
      {"anyOf of nothing", R"("art.away")", R"({"anyOf": []})", "/steps/0/needs/0/anyOf technique.empty-list"},
      {"anyOf with another key", R"("art.away")", R"({"anyOf": ["art.away"], "of": "job"})",
       "/steps/0/needs/0/of read.unknown-key"},
  });
}

TEST_CASE("Each rule of a fact of every thing fails at its place") {
  const char* kNeed = R"({"every": "strip", "of": "owner", "is": "pasted"})";
  const char* kCorner = R"({"every": "corner", "of": "adjoining", "is": "marked"})";
  const char* kLine = R"({"every": "line", "of": "reach", "is": "dry"})";
  requireEach({
      {"an unknown kind", kNeed, R"({"every": "stripe", "of": "owner", "is": "pasted"})",
       "/steps/2/needs/0/every read.unknown-word"},
      {"an unknown relation", kNeed, R"({"every": "strip", "of": "near", "is": "pasted"})",
       "/steps/2/needs/0/of read.unknown-word"},
      {"no fact", kNeed, R"({"every": "strip", "of": "owner"})", "/steps/2/needs/0 read.missing-key"},
      {"a malformed fact", kNeed, R"({"every": "strip", "of": "owner", "is": "this.*"})",
       "/steps/2/needs/0/is technique.malformed-every-fact"},
      {"an unknown key", kNeed, R"({"every": "strip", "of": "owner", "is": "pasted", "not": 1})",
       "/steps/2/needs/0/not read.unknown-key"},
      {"boards that belong to one band", kLine, R"({"every": "board", "of": "this", "is": "dry"})",
       "/steps/3/needs/1/of technique.relation-not-here"},
      {"an owner's strips where nothing owns", kLine, R"({"every": "strip", "of": "owner", "is": "dry"})",
       "/steps/3/needs/1/of technique.relation-not-here"},
      {"corners adjoining a band", kLine, R"({"every": "corner", "of": "adjoining", "is": "dry"})",
       "/steps/3/needs/1/of technique.relation-not-here"},
      {"strips adjoining a strip", kCorner, R"({"every": "strip", "of": "adjoining", "is": "marked"})",
       "/steps/0/needs/2/of technique.relation-not-here"},
      {"strips that belong to a strip", kCorner, R"({"every": "strip", "of": "this", "is": "marked"})",
       "/steps/0/needs/2/of technique.relation-not-here"},
      {"a property the kind has not", kLine, R"({"every": "line", "where": {"paper": "laid"}, "is": "dry"})",
       "/steps/3/needs/1/where/paper technique.unknown-property"},
      {"a value the property never has", kLine, R"({"every": "wash", "where": {"order": "last"}, "is": "dry"})",
       "/steps/3/needs/1/where/order technique.unknown-value"},
      {"an empty list of values", kLine, R"({"every": "line", "where": {"course": []}, "is": "dry"})",
       "/steps/3/needs/1/where/course technique.empty-list"},
      {"an innermost band", kLine, R"({"every": "band", "of": "innermost", "is": "dry"})",
       "/steps/3/needs/1/of technique.relation-not-here"},
  });
}

TEST_CASE("A fact of every thing can ask for properties, one value or several") {
  const auto read = core::craft::readTechnique(changed(
      R"({"every": "line", "of": "reach", "is": "dry"})",
      R"({"every": "wash", "of": "reach", "where": {"order": "washFirst", "colour": ["grey", "buff"]}, "is": "dry"})"));
  REQUIRE(read.technique);
  const core::craft::FactPattern& fact = read.technique->steps[3].needs[1].alternatives.front();
  CHECK(fact.every == core::craft::ThingKind::Wash);
  CHECK(fact.where == core::craft::Where{{"colour", {"grey", "buff"}}, {"order", {"washFirst"}}});
}

TEST_CASE("A step done once has no this, no previous and nothing in reach") {
  const auto problems = [](const std::string& need) {
    return problemsOf(R"({"format": "mountwright-technique/1", "id": "close", "title": "Close", "rank": 1,
      "when": {"always": true}, "steps": [{"id": "close", "title": "Close it", "do": ["Close it."], "good": "Shut.",
      "hands": "clean", "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"},
      "needs": [)" + need +
                      R"(], "makes": ["package.closed"], "faults": []}]})");
  };
  using Lines = std::vector<std::string>;
  CHECK(problems(R"({"every": "line", "is": "dry"}, "boards.joined")").empty());
  CHECK(problems(R"({"every": "board", "of": "innermost", "is": "cut"})").empty());
  CHECK(problems(R"("this.cut")") == Lines{"/steps/0/needs/0 technique.word-without-thing"});
  CHECK(problems(R"("previous.cut")") == Lines{"/steps/0/needs/0 technique.word-without-thing"});
  CHECK(problems(R"("owner.cut")") == Lines{"/steps/0/needs/0 technique.word-without-thing"});
  CHECK(problems(R"({"every": "line", "of": "reach", "is": "dry"})") ==
        Lines{"/steps/0/needs/0/of technique.relation-without-thing"});
  CHECK(problems(R"({"every": "strip", "of": "this", "is": "dry"})") ==
        Lines{"/steps/0/needs/0/of technique.relation-without-thing"});
}

}  // namespace craft_tests
