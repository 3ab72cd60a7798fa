#include "core/craft/technique_reader.h"
#include "tests/core/craft/full_technique.h"
#include "tests/support/catch.h"

namespace craft_tests {

namespace {

constexpr const char* kWhen =
    R"("when": {"each": "band", "where": {"motif": ["mirror", "plain"], "paper": "wave-block print"}, "deliver": ["framed"], "artwork": ["overlap", "float"], "spacer": ["yes"], "decorated": ["yes", "no"]})";
constexpr const char* kRepeat =
    R"("repeat": {"area": "band.this.area", "each": "20000 mm2", "source": "common practice"})";

// A technique done once for the shop, with `head` before its steps.
std::string shopTechnique(const std::string& head) {
  return R"({"format": "mountwright-technique/1", "id": "cook-paste", "title": "Cook paste", "rank": 1, )" + head +
         R"(, "steps": [{"id": "cook", "title": "Cook the paste", "do": ["Stir."], "good": "Clear.", "hands": "clean",
         "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"},
         "makes": ["paste.ready"]}]})";
}

}  // namespace

TEST_CASE("A file of another version is refused and not judged further") {
  const std::string text = R"({"format": "mountwright-technique/2", "colour": "new in version 2"})";
  CHECK(problemsOf(text) == std::vector<std::string>{"/format technique.unknown-format"});
}

TEST_CASE("What is no JSON is told with its line") {
  const auto read = core::craft::readTechnique("{\n  \"format\": oops\n}");
  REQUIRE(read.problems.sorted().size() == 1);
  CHECK(read.problems.sorted()[0].line == 2);
  CHECK_FALSE(read.technique.has_value());
}

TEST_CASE("Each rule of the head fails at its place") {
  requireEach({
      {"a missing key", R"("rank": 40,)", "", " read.missing-key"},
      {"an unknown key", R"("rank": 40,)", R"("rank": 40, "rnk": 1,)", "/rnk read.unknown-key"},
      {"a key given twice", R"("rank": 40,)", R"("rank": 40, "rank": 40,)", "/rank json.key-twice"},
      {"a malformed id", R"("id": "lay-band")", R"("id": "Lay band")", "/id technique.malformed-id"},
      {"an id of 49 characters", R"("id": "lay-band")", R"("id": "a234567890123456789012345678901234567890123456789")",
       "/id technique.malformed-id"},
      {"a malformed role", R"("role": "band")", R"("role": "Band")", "/role technique.malformed-id"},
      {"a rank too high", R"("rank": 40,)", R"("rank": 10000,)", "/rank read.out-of-range"},
      {"a rank that is no whole number", R"("rank": 40,)", R"("rank": 4.5,)", "/rank read.expected-integer"},
      {"a placeholder in the technique's title", "Lay a band of printed paper", "Lay the {name}",
       "/title technique.placeholder-without-thing"},
      {"an unknown scope", R"("rank": 40,)", R"("rank": 40, "scope": "house",)", "/scope read.unknown-word"},
      {"keeps in a technique of the job", R"("rank": 40,)",
       R"("rank": 40, "keeps": {"for": "1 d", "source": "common practice"},)", "/keeps technique.keeps-of-job"},
      {"two modes at once", kWhen, R"("when": {"each": "band", "needed": true})", "/when technique.when-one-of"},
      {"no mode", kWhen, R"("when": {})", "/when technique.when-one-of"},
      {"each of what a technique cannot be done for", kWhen, R"("when": {"each": "strip"})",
       "/when/each read.unknown-word"},
      {"atLeast without any", kWhen, R"("when": {"each": "band", "atLeast": 2})",
       "/when/atLeast technique.at-least-without-any"},
      {"an unknown property", kWhen, R"("when": {"each": "band", "where": {"colour": "copper"}})",
       "/when/where/colour technique.unknown-property"},
      {"an unknown value", kWhen, R"("when": {"each": "band", "where": {"motif": ["mirror", "wavy"]}})",
       "/when/where/motif/1 technique.unknown-value"},
      {"no value", kWhen, R"("when": {"each": "band", "where": {"motif": []}})",
       "/when/where/motif technique.empty-list"},
      {"a repeat both by count and by area", kRepeat,
       R"("repeat": {"count": 2, "area": "band.this.area", "source": "common practice"})",
       "/repeat technique.repeat-one-of"},
      {"a repeat by nothing", kRepeat, R"("repeat": {"source": "common practice"})", "/repeat technique.repeat-one-of"},
      {"a repeat of one", kRepeat, R"("repeat": {"count": 1, "source": "common practice"})",
       "/repeat/count read.out-of-range"},
      {"a repeat without a source", kRepeat, R"("repeat": {"count": 2})", "/repeat read.missing-key"},
      {"a repeat by a length", kRepeat,
       R"("repeat": {"area": "band.this.mitre", "each": "20000 mm2", "source": "common practice"})",
       "/repeat/area technique.not-an-area"},
      {"an area without its unit", kRepeat,
       R"("repeat": {"area": "band.this.area", "each": "20000", "source": "common practice"})",
       "/repeat/each technique.malformed-area"},
  });
}

TEST_CASE("Each rule of what a technique wants fails at its place") {
  constexpr const char* kLap = R"({"of": "lap", "atLeast": "5 mm", )";
  constexpr const char* kDamp = R"("of": "humidity", "atMost": "60 %")";
  constexpr const char* kStatic = R"("without": "package.glazing.charged")";
  requireEach({
      {"a measure nobody knows", kLap, R"({"of": "lips", "atLeast": "5 mm", )", "/wants/0/of read.unknown-word"},
      {"no bound", kLap, R"({"of": "lap", )", "/wants/0 technique.one-bound"},
      {"both bounds", kLap, R"({"of": "lap", "atLeast": "5 mm", "atMost": "9 mm", )", "/wants/0 technique.one-bound"},
      {"a bound of nothing", kStatic, R"("without": "package.glazing.charged", "atMost": "60 %")",
       "/wants/3/atMost technique.bound-of-nothing"},
      {"two things at once", kDamp, R"("of": "humidity", "atMost": "60 %", "without": "art.away")",
       "/wants/1 technique.want-one-of"},
      {"nothing at all", kLap, "{", "/wants/0 technique.want-one-of"},
      {"a bare number", kLap, R"({"of": "lap", "atLeast": 5, )", "/wants/0/atLeast read.expected-text"},
      {"a length without its unit", kLap, R"({"of": "lap", "atLeast": "5", )", "/wants/0/atLeast length.no-unit"},
      {"a length below nothing", kLap, R"({"of": "lap", "atLeast": "-5 mm", )", "/wants/0/atLeast length.negative"},
      {"a length for a humidity", kDamp, R"("of": "humidity", "atMost": "60 mm")",
       "/wants/1/atMost humidity.malformed"},
      {"a humidity beyond a room's", kDamp, R"("of": "humidity", "atMost": "120 %")",
       "/wants/1/atMost humidity.out-of-range"},
      {"a property the thing has not", R"("where": {"motif": "mirror"})", R"("where": {"metal": "gold"})",
       "/wants/2/where/metal technique.unknown-property"},
      {"a fact that is none", kStatic, R"("without": "static")", "/wants/3/without technique.malformed-fact"},
      {"too many words", "Damp paper cockles.",
       "One two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen.",
       "/wants/1/why technique.too-many-words"},
      {"no reason", R"("why": "Static lifts the print.", )", "", "/wants/3 read.missing-key"},
      {"no source", R"(, "why": "A narrower lap lets go.", "source": "common practice")",
       R"(, "why": "A narrower lap lets go.")", "/wants/0 read.missing-key"},
      {"a key nobody knows", kLap, R"({"of": "lap", "atLeast": "5 mm", "least": "5 mm", )",
       "/wants/0/least read.unknown-key"},
  });
}

TEST_CASE("What a step asks of its thing by where is told where there is no such property") {
  constexpr const char* kWhere = R"("repeat": "yes"})";
  requireEach({
      {"a property of another kind", kWhere, R"("method": "laid"})",
       "/steps/0/where/method technique.unknown-property"},
      {"a value it never has", kWhere, R"("repeat": "often"})", "/steps/0/where/repeat technique.unknown-value"},
  });
}

TEST_CASE("What a technique done once cannot have is told") {
  const auto problems = [](const char* head) { return problemsOf(shopTechnique(head)); };
  using Lines = std::vector<std::string>;
  const char* kNeeded = R"("when": {"needed": true})";
  CHECK(problems(kNeeded).empty());
  CHECK(problems(R"("when": {"needed": false})") == Lines{"/when/needed technique.when-false"});
  CHECK(problems(R"("when": {"any": "leaf", "atLeast": 0})") == Lines{"/when/atLeast read.out-of-range"});
  CHECK(problems(R"("when": {"any": "leaf", "atLeast": 2, "where": {"size": "starch"}})").empty());
  CHECK(problems(R"("when": {"always": true, "where": {"size": "starch"}})") ==
        Lines{"/when/where technique.where-without-kind"});
  CHECK(problems(R"("when": {"needed": true}, "repeat": {"count": 2, "source": "common practice"})") ==
        Lines{"/repeat technique.repeat-without-thing"});
}

TEST_CASE("Steps of a technique done once are done for each of nothing") {
  std::string text = shopTechnique(R"("when": {"needed": true})");
  text.insert(text.find(R"("title": "Cook the paste")"), R"("each": "leaf", )");
  CHECK(problemsOf(text) == std::vector<std::string>{"/steps/0/each technique.each-of-nothing"});
}

TEST_CASE("What the shop keeps needs a shelf life and is of no one thing") {
  const auto problems = [](const char* head) { return problemsOf(shopTechnique(head)); };
  using Lines = std::vector<std::string>;
  CHECK(problems(R"("scope": "shop", "when": {"needed": true})") == Lines{" technique.keeps-missing"});
  CHECK(problems(R"("scope": "shop", "keeps": {"for": "4 weeks"}, "when": {"needed": true})") ==
        Lines{"/keeps read.missing-key"});
  CHECK(
      problems(R"("scope": "shop", "keeps": {"for": "0 d", "source": "common practice"}, "when": {"needed": true})") ==
      Lines{"/keeps/for technique.no-time"});
  CHECK(problems(
            R"("scope": "shop", "keeps": {"for": "4 weeks", "source": "common practice"}, "when": {"each": "leaf"})") ==
        Lines{"/when technique.shop-for-each"});
  std::string soaking = shopTechnique(
      R"("scope": "shop", "keeps": {"for": "1 d", "source": "common practice"}, "when": {"needed": true})");
  const std::string makes = R"("makes": ["paste.ready"])";
  soaking.replace(soaking.find(makes), makes.size(),
                  R"("waits": [{"id": "soaks", "kind": "soak", "title": "paste soaks",
      "makes": "paste.ready", "opens": {"early": "1 h", "likely": "1 d", "late": "2 d"}, "model": "none",
      "test": "Look.", "source": "common practice"}])");
  CHECK(problemsOf(soaking) == Lines{"/keeps technique.keeps-too-short"});
  const auto read = core::craft::readTechnique(shopTechnique(
      R"("scope": "shop", "keeps": {"for": "4 weeks", "source": "common practice"}, "when": {"needed": true})"));
  REQUIRE(read.technique.has_value());
  CHECK(read.technique->ofShop);
  CHECK((read.technique->keeps == core::units::Duration::minutes(4 * 7 * 24 * 60)));
}

TEST_CASE("A technique has at least one step") {
  CHECK(
      problemsOf(R"({"format": "mountwright-technique/1", "id": "a", "title": "A", "rank": 1, "when": {"always": true},
                       "steps": []})") == std::vector<std::string>{"/steps technique.no-steps"});
}

TEST_CASE("Every problem of a file is told at once, in the order of the document") {
  CHECK(problemsOf(R"({"steps": [], "rank": -1, "format": "mountwright-technique/1", "id": "A", "title": "A",
                       "when": {"always": true}})") ==
        std::vector<std::string>{"/steps technique.no-steps", "/rank read.out-of-range", "/id technique.malformed-id"});
}

TEST_CASE("What is known of undoing a technique is a sentence with its source, or is left out") {
  const std::string keeps =
      R"("scope": "shop", "keeps": {"for": "4 weeks", "source": "x"}, "when": {"needed": true}, )";
  using Lines = std::vector<std::string>;
  const auto with = [&](const char* member) { return shopTechnique(keeps + member); };
  CHECK(problemsOf(with(R"("reversal": {"how": "It comes undone with water."})")) ==
        Lines{"/reversal read.missing-key"});
  CHECK(problemsOf(with(R"("reversal": {"how": "", "source": "x"})")).size() == 1);
  CHECK(problemsOf(with(R"("reversal": "water")")).size() == 1);
  const auto read = core::craft::readTechnique(with(R"("reversal": {"how": "Water undoes it.", "source": "x"})"));
  REQUIRE(read.technique.has_value());
  CHECK(read.technique->reversal == core::craft::Reversal{"Water undoes it.", "x"});
}

}  // namespace craft_tests
