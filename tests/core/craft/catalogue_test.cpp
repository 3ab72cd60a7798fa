#include "core/craft/catalogue.h"

#include "core/craft/technique_reader.h"
#include "tests/support/catch.h"

namespace craft_tests {

namespace {

using core::craft::Catalogue;

core::craft::Technique technique(const std::string& id, int rank, const std::string& when, const std::string& facts) {
  const auto read = core::craft::readTechnique(
      R"({"format": "mountwright-technique/1", "id": ")" + id + R"(", "title": "Work", "rank": )" +
      std::to_string(rank) + R"(, "when": )" + when + R"(, "steps": [{"id": "work", "title": "Work", "do": ["Work."],
      "good": "Done.", "hands": "clean",
      "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"}, )" +
      facts + "}]}");
  REQUIRE(read.technique.has_value());
  return *read.technique;
}

constexpr const char* kEachBoard = R"({"each": "board"})";
constexpr const char* kAlways = R"({"always": true})";

}  // namespace

TEST_CASE("Techniques come by rank and id, whatever order they were added in") {
  Catalogue catalogue;
  catalogue.add(technique("wash", 2, kAlways, R"("makes": ["piece.washed"])"));
  catalogue.add(technique("rule", 2, kAlways, R"("makes": ["piece.ruled"])"));
  catalogue.add(technique("cut", 10, kAlways, R"("makes": ["piece.cut"])"));
  const auto all = catalogue.all();
  REQUIRE(all.size() == 3);
  CHECK(all[0]->id == "rule");
  CHECK(all[1]->id == "wash");
  CHECK(all[2]->id == "cut");
}

TEST_CASE("A technique of the same id replaces the one before") {
  Catalogue catalogue;
  catalogue.add(technique("wash", 2, kAlways, R"("makes": ["piece.washed"])"));
  catalogue.add(technique("wash", 7, kAlways, R"("makes": ["piece.washed"])"));
  REQUIRE(catalogue.find("wash") != nullptr);
  CHECK(catalogue.find("wash")->rank == 7);
  CHECK(catalogue.all().size() == 1);
  CHECK(catalogue.find("rinse") == nullptr);
}

TEST_CASE("A needed fact that no technique makes is told where it is needed") {
  Catalogue catalogue;
  catalogue.add(technique("cut", 1, kEachBoard, R"("needs": ["art.away"], "makes": ["this.cut"])"));
  catalogue.add(technique("join", 2, kAlways, R"("needs": [{"every": "board", "is": "cut"},
                                                          {"every": "board", "is": "clean"}])"));
  const auto problems = core::craft::checkCatalogue(catalogue);
  REQUIRE(problems.size() == 2);
  CHECK(problems[0].technique == "cut");
  CHECK(core::base::dump(problems[0].problem.message) == "technique.nobody-makes fact=art.away step=work");
  CHECK(problems[0].problem.pointer == "/steps/0/needs/0");
  CHECK(problems[1].technique == "join");
  CHECK(core::base::dump(problems[1].problem.message) == "technique.nobody-makes fact=board.clean step=work");
  CHECK(problems[1].problem.pointer == "/steps/0/needs/1");
}

TEST_CASE("A fact of a board is none of a line, and a bevel is a board") {
  Catalogue catalogue;
  catalogue.add(technique("draw", 1, R"({"each": "line"})", R"("makes": ["this.dry"])"));
  catalogue.add(technique("join", 2, kAlways, R"("needs": [{"every": "board", "is": "dry"}])"));
  CHECK(core::craft::checkCatalogue(catalogue).size() == 1);
  catalogue.add(technique("paint", 1, R"({"each": "bevel"})", R"("makes": ["this.dry"])"));
  CHECK(core::craft::checkCatalogue(catalogue).empty());
}

TEST_CASE("A need with alternatives is met where one of them is made") {
  Catalogue catalogue;
  catalogue.add(technique("close", 1, kAlways, R"("needs": [{"anyOf": ["paste.ready", "adhesive.ready"]}])"));
  REQUIRE(core::craft::checkCatalogue(catalogue).size() == 1);
  CHECK(core::craft::checkCatalogue(catalogue)[0].problem.pointer == "/steps/0/needs/0/anyOf/0");
  catalogue.add(technique("mix", 2, kAlways, R"("makes": ["adhesive.ready"])"));
  CHECK(core::craft::checkCatalogue(catalogue).empty());
}

TEST_CASE("A technique that makes nothing of what others of its role make is told with what they make") {
  constexpr const char* kJoins = R"({"always": true}, "role": "joining")";
  Catalogue catalogue;
  catalogue.add(technique("dry", 10, kJoins, R"("makes": ["boards.joined", "boards.ready"])"));
  catalogue.add(technique("last", 20, kJoins, R"("makes": ["boards.joined"])"));
  catalogue.add(technique("cut", 1, kEachBoard, R"("makes": ["this.cut"])"));
  catalogue.add(technique("rest", 30, kAlways, R"("needs": [{"anyOf": ["boards.joined", "piece.cut"]}])"));
  CHECK(core::craft::checkCatalogue(catalogue).empty());
  catalogue.add(technique("mine", 5, kJoins, R"("makes": ["piece.aa"])"));
  const auto problems = core::craft::checkCatalogue(catalogue);
  REQUIRE(problems.size() == 1);
  CHECK(problems[0].technique == "mine");
  CHECK(problems[0].problem.pointer == "/role");
  CHECK(core::base::dump(problems[0].problem.message) ==
        "technique.stranger-in-role role=joining beside=Work fact=boards.joined");
}

TEST_CASE("A technique that makes one of the facts its role is there for is no stranger in it") {
  constexpr const char* kJoins = R"({"always": true}, "role": "joining")";
  Catalogue catalogue;
  catalogue.add(technique("dry", 10, kJoins, R"("makes": ["boards.joined", "boards.ready"])"));
  catalogue.add(technique("mine", 5, kJoins, R"("makes": ["piece.aa", "boards.joined"])"));
  catalogue.add(technique("rest", 30, kAlways, R"("needs": [{"anyOf": ["boards.joined", "boards.ready"]}])"));
  CHECK(core::craft::strangersOfRoles(catalogue).empty());
  // Of what is needed within the role alone nobody else goes short.
  catalogue.add(technique("rest", 30, kJoins, R"("needs": ["boards.joined"], "makes": ["piece.ab"])"));
  CHECK(core::craft::strangersOfRoles(catalogue).empty());
}

}  // namespace craft_tests
