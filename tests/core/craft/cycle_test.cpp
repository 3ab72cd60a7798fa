#include "core/craft/technique_reader.h"
#include "tests/core/craft/full_technique.h"
#include "tests/support/catch.h"

namespace craft_tests {

namespace {

std::string step(const std::string& id, const std::string& facts) {
  return R"({"id": ")" + id + R"(", "title": "Work", "do": ["Work."], "good": "Done.", "hands": "clean",
    "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"}, )" +
         facts + "}";
}

// The path told for a technique for each board with these steps, "" where there is no cycle.
std::string cycleOf(const std::vector<std::string>& steps) {
  std::string text = R"({"format": "mountwright-technique/1", "id": "boards", "title": "Boards", "rank": 1,
                         "when": {"each": "board"}, "steps": [)";
  for (std::size_t i = 0; i < steps.size(); ++i) text += (i == 0 ? "" : ", ") + steps[i];
  const auto read = core::craft::readTechnique(text + "]}");
  if (read.technique) return "";
  REQUIRE(read.problems.sorted().size() == 1);
  const auto problem = read.problems.sorted()[0];
  REQUIRE(problem.message.id == "technique.cycle");
  return problem.pointer + ' ' + std::get<std::string>(*problem.message.argument("path"));
}

}  // namespace

TEST_CASE("Steps that need each other are told as the path that closes") {
  CHECK(cycleOf({step("cut", R"("makes": ["this.cut"])"),
                 step("rule", R"("needs": ["this.washed"], "makes": ["this.ruled"])"),
                 step("wash", R"("needs": ["this.ruled", "this.cut"], "makes": ["this.washed"])")}) ==
        "/steps/1 rule -> wash -> rule");
}

TEST_CASE("A step that needs what it makes is a cycle") {
  CHECK(cycleOf({step("cut", R"("needs": ["this.cut"], "makes": ["this.cut"])")}) == "/steps/0 cut -> cut");
}

TEST_CASE("A fact that a wait makes counts as made by its step") {
  CHECK(cycleOf({step("paint", R"("needs": ["this.rubbed"], "waits": [{"id": "dry", "kind": "dry", "title": "dries",
                      "makes": "this.dry", "opens": {"early": "1 h", "likely": "2 h", "late": "3 h"}, "model": "none",
                      "test": "Touch it.", "source": "common practice"}])"),
                 step("rub", R"("needs": ["this.dry"], "makes": ["this.rubbed"])")}) ==
        "/steps/0 paint -> rub -> paint");
}

TEST_CASE("Who needs a fact comes before who ends it, and that can close a cycle") {
  CHECK(cycleOf({step("mask", R"("makes": ["this.masked"])"),
                 step("peel", R"("needs": ["this.masked"], "ends": ["this.masked"], "makes": ["this.bare"])"),
                 step("paint", R"("needs": ["this.masked", "this.bare"], "makes": ["this.painted"])")}) ==
        "/steps/1 peel -> paint -> peel");
}

TEST_CASE("A step may end what it needs itself") {
  CHECK(cycleOf({step("mask", R"("makes": ["this.masked"])"),
                 step("peel", R"("needs": ["this.masked"], "ends": ["this.masked"])")}) == "");
}

TEST_CASE("A chain from each thing to the one before it is no cycle") {
  CHECK(cycleOf({step("cut", R"("needs": ["previous.cut"], "makes": ["this.cut"])")}) == "");
  CHECK(cycleOf({step("cut", R"("needs": ["previous.joined"], "makes": ["this.cut"])"),
                 step("join", R"("needs": ["this.cut"], "makes": ["this.joined"])")}) == "");
}

TEST_CASE("Two alternatives that a job may choose between are no cycle, the first of them is") {
  const std::string wash = step("wash", R"("needs": ["this.ruled"], "makes": ["this.washed"])");
  CHECK(cycleOf({step("rule", R"("needs": [{"anyOf": ["boards.sealed", "this.washed"]}], "makes": ["this.ruled"])"),
                 wash}) == "");
  CHECK(cycleOf({step("rule", R"("needs": [{"anyOf": ["this.washed", "boards.sealed"]}], "makes": ["this.ruled"])"),
                 wash}) == "/steps/0 rule -> wash -> rule");
}

TEST_CASE("Each of two cycles is told once") {
  std::string text = R"({"format": "mountwright-technique/1", "id": "boards", "title": "Boards", "rank": 1,
                         "when": {"each": "board"}, "steps": [)";
  text += step("a", R"("needs": ["this.b"], "makes": ["this.a"])") + ", ";
  text += step("b", R"("needs": ["this.a"], "makes": ["this.b"])") + ", ";
  text += step("c", R"("needs": ["this.c"], "makes": ["this.c"])") + "]}";
  CHECK(problemsOf(text) == std::vector<std::string>{"/steps/0 technique.cycle", "/steps/2 technique.cycle"});
}

}  // namespace craft_tests
