// What a technique may say of acts and set-ups, and what is refused where it is written.
#include "core/craft/catalogue.h"
#include "core/craft/technique_reader.h"
#include "tests/core/craft/full_technique.h"
#include "tests/support/catch.h"

namespace craft_tests {
namespace {

using Lines = std::vector<std::string>;

// A technique for each band: its strips are brushed, which opens a window, and laid within it; then they set.
std::string bandTechnique(const std::string& members, const std::string& ofBrush = "") {
  const std::string work = R"("work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "x"}, )";
  const std::string waitOf = R"("model": "none", "test": "Touch it.", "source": "x")";
  return R"({"format": "mountwright-technique/1", "id": "own-strips", "title": "Lay strips", "rank": 5,
    "when": {"each": "band"}, )" +
         members + R"(
    "steps": [
      {"id": "brush", "each": "strip", "title": "Brush it", "do": ["Brush."], "good": "Even.", "hands": "paste", )" +
         work + ofBrush + R"("makes": ["this.pasted"],
       "waits": [{"id": "open", "kind": "open", "title": "glue open", "makes": "this.open",
         "opens": {"early": "0 min", "likely": "0 min", "late": "0 min"},
         "closes": {"early": "1 min", "likely": "2 min", "late": "3 min"},
         "ifMissed": {"do": "Brush again.", "ends": ["this.pasted"]}, )" +
         waitOf + R"(}]},
      {"id": "lay", "each": "strip", "title": "Lay it", "do": ["Lay."], "good": "Flat.", "hands": "paste", )" +
         work + R"("needs": ["this.open"], "makes": ["this.laid"],
       "waits": [{"id": "sets", "kind": "dry", "title": "strip sets", "makes": "this.set",
         "opens": {"early": "1 h", "likely": "2 h", "late": "3 h"}, )" +
         waitOf + R"(}]},
      {"id": "trim", "each": "strip", "title": "Trim it", "do": ["Trim."], "good": "True.", "hands": "blade", )" +
         work + R"("needs": ["this.set"], "makes": ["this.trimmed"]},
      {"id": "look", "title": "Look", "do": ["Look."], "good": "True.", "hands": "clean", )" +
         work + R"("makes": ["this.seen"]}
    ]})";
}

std::string together(const std::string& entry) { return "\"together\": [" + entry + "], "; }

}  // namespace

TEST_CASE("what may be worked together is read as it is written") {
  const auto read = core::craft::readTechnique(
      bandTechnique(R"("stage": "glue", )" +
                    together(R"({"steps": ["brush", "lay"], "over": "owner", "title": "Lay the strips", "way": "short"},
                  {"steps": ["trim"], "over": "job", "title": "Trim all strips", "alike": ["paper"]})")));
  REQUIRE(read.technique);
  const auto& technique = *read.technique;
  REQUIRE(technique.together.size() == 2);
  CHECK(technique.together[0].steps == std::vector<std::string>{"brush", "lay"});
  CHECK(technique.together[0].over == core::craft::Together::Over::Owner);
  CHECK(technique.together[0].way == core::craft::Way::Short);
  CHECK(technique.together[1].alike == std::vector<std::string>{"paper"});
  CHECK(technique.together[1].way == core::craft::Way::Every);
  for (const auto& step : technique.steps) CHECK(step.stage == core::craft::Stage::Glue);
}

TEST_CASE("what can never be gathered is refused where it is written") {
  const struct {
    const char* entry;
    const char* told;
  } cases[] = {
      {R"({"steps": ["lay", "trim"], "over": "owner", "title": "Lay and trim"})",
       "/together/0/steps technique.together-wait"},
      {R"({"steps": ["brush"], "over": "owner", "title": "Brush all"})", "/together/0/steps technique.together-window"},
      {R"({"steps": ["brush", "gum"], "over": "owner", "title": "Gum"})",
       "/together/0/steps/1 technique.together-no-such-step"},
      {R"({"steps": ["lay", "brush"], "over": "owner", "title": "Backwards"})",
       "/together/0/steps/1 technique.together-not-in-order"},
      {R"({"steps": ["trim", "look"], "over": "owner", "title": "Unlike"})",
       "/together/0/steps technique.together-unlike"},
      {R"({"steps": ["trim"], "over": "owner"})", "/together/0 technique.together-without-title"},
      {R"({"steps": ["trim"], "over": "owner", "title": "Trim", "alike": ["scent"]})",
       "/together/0/alike/0 technique.together-alike"},
      {R"({"steps": [], "over": "each"})", "/together/0/steps technique.empty-list"},
      {R"({"steps": ["trim"], "over": "each"}, {"steps": ["trim"], "over": "job", "title": "Trim"})",
       "/together/1/steps technique.together-twice"},
      {R"({"steps": ["trim"], "over": "house", "title": "Trim"})", "/together/0/over read.unknown-word"},
  };
  for (const auto& one : cases) {
    INFO(one.entry);
    CHECK(problemsOf(bandTechnique(together(one.entry))) == Lines{one.told});
  }
}

TEST_CASE("a technique done once has nothing to gather over") {
  const std::string text =
      R"({"format": "mountwright-technique/1", "id": "once", "title": "Once", "rank": 1, "when": {"always": true},
      "together": [{"steps": ["a"], "over": "job", "title": "All"}],
      "steps": [{"id": "a", "title": "Do it", "do": ["Do."], "good": "Done.", "hands": "clean", "makes": ["piece.a"],
      "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "x"}}]})";
  CHECK(problemsOf(text) == Lines{"/together/0/over technique.together-of-nothing"});
}

TEST_CASE("a set-up is to something, and some step uses it") {
  CHECK(problemsOf(bandTechnique("", R"("setup": {"tool": "brush"}, )")) ==
        Lines{"/steps/0/setup technique.setup-to-nothing"});
  const auto wasted = core::craft::readTechnique(bandTechnique("", R"("setup": {"tool": "brush", "words": "wide"}, )"));
  REQUIRE(wasted.technique);
  core::craft::Catalogue catalogue;
  catalogue.add(*wasted.technique);
  // Brushing makes what nobody needs, and the open time is no setting.
  const auto found = core::craft::checkCatalogue(catalogue);
  REQUIRE(found.size() == 1);
  CHECK(found.front().problem.message.id == "technique.setup-unused");
  CHECK(found.front().problem.pointer == "/steps/0/setup");
}

TEST_CASE("a stage is one of the list") {
  CHECK(problemsOf(bandTechnique(R"("stage": "polish", )")) == Lines{"/stage read.unknown-word"});
}

}  // namespace craft_tests
