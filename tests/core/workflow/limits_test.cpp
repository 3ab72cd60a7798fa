// How much work a job can be.
#include "core/base/problem.h"
#include "core/workflow/compose.h"
#include "core/workflow/rehearse.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;

namespace {

// One technique of `steps` steps for each of a hundred parts of the demo job's leaf field; all but the first three have
// the members.
std::string inParts(std::size_t steps, const std::string& members) {
  std::string text = R"({"format": "mountwright-technique/1", "id": "parts", "title": "Parts", "rank": 1,
    "when": {"each": "leaf"}, "repeat": {"count": 100, "source": "own"}, "steps": [)";
  for (std::size_t i = 0; i < steps; ++i) {
    text += (i > 0 ? "," : "") + std::string(R"({"id": "s)") + std::to_string(i) +
            R"(", "each": "part", "title": "Do it", "do": ["Do it."], "good": "Done.", "hands": "clean",
               "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "own"},
               "makes": ["this.fact)" +
            std::to_string(i) + "\"]" + (i < 3 ? "" : members) + "}";
  }
  return text + "]}";
}

}  // namespace

TEST_CASE("a job of as many steps as there may be is composed and rehearsed, and one of more is told", "[limits]") {
  const auto design = designOf(demoJobText());
  craft::Catalogue catalogue;
  addTechnique(catalogue, inParts(49, ""));
  const auto whole = composed(design, catalogue);
  CHECK(whole.steps.size() == 4900);
  CHECK(workflow::rehearse(whole).events.size() == 4900);

  addTechnique(catalogue, inParts(51, ""));
  CHECK(composeProblems(design, catalogue) == std::vector<std::string>{"compose.too-many-steps most=5000"});
}

TEST_CASE("facts said of too many things at once are told and not put in order", "[limits]") {
  const auto design = designOf(demoJobText());
  craft::Catalogue catalogue;
  addTechnique(catalogue, inParts(20, R"(, "needs": [{"every": "part", "is": "fact0"}, {"every": "part", "is": "fact1"},
                                                     {"every": "part", "is": "fact2"}])"));
  CHECK(composeProblems(design, catalogue) == std::vector<std::string>{"compose.too-much"});
}
