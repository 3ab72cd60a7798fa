#include "core/workflow/compose.h"

#include <algorithm>
#include <random>

#include "core/base/json.h"
#include "core/base/text.h"
#include "core/workflow/workflow_json.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;

namespace {

std::string listOf(const workflow::Workflow& workflow) { return base::writeJson(workflow::stepsJson(workflow), 1); }

std::size_t place(const workflow::Workflow& workflow, const std::string& id) {
  const auto index = workflow.indexOf(id);
  INFO(id);
  REQUIRE(index);
  return *index;
}

bool mentions(const std::vector<std::string>& lines, const std::string& text) {
  return std::any_of(lines.begin(), lines.end(),
                     [&](const std::string& l) { return l.find(text) != std::string::npos; });
}

}  // namespace

TEST_CASE("every step comes after whoever makes what it needs and before whoever ends it", "[workflow]") {
  for (const char* job : {"pilots-chart", "heron"}) {
    const auto design = designOf(fileText(std::string(PROJECT_ROOT) + "/recipes/jobs/" + job + ".job.json"));
    const auto workflow = composed(design, shippedTechniques());
    for (std::size_t i = 0; i < workflow.steps.size(); ++i) {
      for (const std::string& fact : workflow.steps[i].needs) {
        REQUIRE_FALSE(workflow.making(fact).empty());
        for (const std::size_t maker : workflow.making(fact)) CHECK(maker <= i);
      }
      for (const std::string& fact : workflow.steps[i].ends) {
        for (const std::size_t needer : workflow.needing(fact)) CHECK(needer <= i);
      }
    }
  }
}

TEST_CASE("composition does not depend on the order techniques were read in", "[workflow]") {
  const auto design = designOf(demoJobText());
  const auto shipped = shippedTechniques();
  const std::string expected = listOf(composed(design, shippedTechniques()));
  std::mt19937 random(7);
  std::vector<craft::Technique> shuffled;
  for (const auto* technique : shipped.all()) shuffled.push_back(*technique);
  for (int round = 0; round < 20; ++round) {
    std::shuffle(shuffled.begin(), shuffled.end(), random);
    craft::Catalogue catalogue;
    for (const auto& technique : shuffled) catalogue.add(technique);
    CHECK(listOf(composed(design, catalogue)) == expected);
  }
}

TEST_CASE("a needed fact nobody makes is told with who needs it", "[workflow]") {
  const auto design = designOf(demoJobText());
  const auto lines = composeProblems(design, shippedTechniques({"square-boards"}));
  REQUIRE_FALSE(lines.empty());
  CHECK(mentions(lines, "compose.nobody-makes step="));
  for (const std::string& line : lines) CHECK(line.find("squared") == std::string::npos);
}

namespace {

// A piece with one field of leaf over its face, and how each kind of choice came out.
std::string leafJob(const std::string& method, const std::string& size) {
  const std::string coverage = method == "scattered" ? R"(, "coverage": 0.2)" : "";
  return R"({"format": "mountwright-job/1", "title": "A leaf",
    "artwork": {"width": "310 mm", "height": "240 mm"},
    "mount": {"window": {"shape": "rectangle", "overlap": "3 mm"}, "boards": [{"id": "only", "thickness": "1.5 mm"}],
              "borders": {"sides": "70 mm", "weighting": "equal"}},
    "leaf": [{"id": "field", "region": "face", "method": ")" +
         method + R"(", "size": ")" + size + "\"" + coverage + "}]}";
}

}  // namespace

TEST_CASE("leaf on a size no technique works is told at the size, with those that would do", "[workflow]") {
  const auto shipped = shippedTechniques();
  const std::map<std::string, std::vector<std::string>> works = {{"scattered", {"methylCellulose", "starch"}},
                                                                 {"laid", {"water", "oil"}}};
  for (const auto& [method, sizes] : works) {
    for (const char* size : {"methylCellulose", "starch", "water", "oil"}) {
      INFO(method << " on " << size);
      const auto result = workflow::compose(designOf(leafJob(method, size)), shipped);
      const bool can = std::count(sizes.begin(), sizes.end(), size) > 0;
      CHECK(result.ok() == can);
      if (can) continue;
      REQUIRE(result.error().size() == 1);
      const auto& told = result.error().front();
      CHECK(told.problem.pointer == "/leaf/0/size");
      CHECK(told.problem.message.id == "compose.no-way.leaf");
      CHECK(told.instead == sizes);
    }
  }
}

TEST_CASE("a technique that leaves its role's work unfinished is told at the role, with those that finish it",
          "[workflow]") {
  auto catalogue = shippedTechniques();
  addTechnique(catalogue, oneStepTechnique("half-a-bevel", R"("this.halfColoured")",
                                           R"("role": "bevel-mask", "when": {"each": "bevel"})", ""));
  const auto design = designOf(demoJobWith("\"room\"", "\"techniques\": {\"bevel-mask\": \"half-a-bevel\"}, \"room\""));
  const auto result = workflow::compose(design, catalogue);
  REQUIRE_FALSE(result.ok());
  for (const auto& told : result.error()) {
    CHECK(told.problem.pointer == "/techniques/bevel-mask");
    CHECK(told.problem.message.id == "compose.no-way-by");
    CHECK(told.instead == std::vector<std::string>{"colour-bevel", "colour-bevel-fluid"});
  }
}

TEST_CASE("each technique of the demo job that makes needed facts is missed when it is away", "[workflow]") {
  const auto design = designOf(demoJobText());
  const auto whole = composed(design, shippedTechniques());
  std::vector<std::string> used;
  for (const auto& step : whole.steps) {
    if (!std::count(used.begin(), used.end(), step.technique)) used.push_back(step.technique);
  }
  std::size_t missed = 0;
  for (const std::string& technique : used) {
    // Whether somebody else needs one of its facts.
    const bool needed = std::any_of(whole.steps.begin(), whole.steps.end(), [&](const auto& step) {
      return step.technique != technique && std::any_of(step.needs.begin(), step.needs.end(), [&](const auto& fact) {
               const auto makers = whole.making(fact);
               return std::any_of(makers.begin(), makers.end(),
                                  [&](std::size_t i) { return whole.steps[i].technique == technique; });
             });
    });
    const auto lines = composeProblems(design, shippedTechniques({technique}));
    // An alternative of the same role, or a need with alternatives, may step in; then nothing is missing.
    for (const std::string& line : lines) {
      INFO(technique << ": " << line);
      // Or another of what the maker chose could be worked.
      CHECK((line.find("compose.nobody-makes step=") == 0 || line.find("compose.no-way.leaf") == 0));
      CHECK(needed);
    }
    if (!lines.empty()) ++missed;
  }
  CHECK(missed >= 8);
}

TEST_CASE("an invented technique lands where its facts put it", "[workflow]") {
  auto catalogue = shippedTechniques();
  addTechnique(catalogue, oneStepTechnique("zinnober-glaze", R"("this.zinnober.glazed")", R"("when": {"each": "band"})",
                                           R"("needs": ["this.set", {"every": "bevel", "is": "bevel.cured"}], )"));
  addTechnique(catalogue, oneStepTechnique("quorn-inspect", R"("piece.quorn.inspected")", R"("when": {"always": true})",
                                           R"("needs": [{"every": "band", "is": "zinnober.glazed"}], )"));
  const auto workflow = composed(designOf(demoJobText()), catalogue);
  const std::size_t glaze = place(workflow, "zinnober-glaze/act@inner");
  const std::size_t inspect = place(workflow, "quorn-inspect/act");
  for (const std::size_t maker : workflow.making("inner.set")) CHECK(maker < glaze);
  for (const std::size_t maker : workflow.making("under.bevel.cured")) CHECK(maker < glaze);
  CHECK(glaze < inspect);
}

TEST_CASE("a cycle is told as the path of steps that closes it", "[workflow]") {
  auto catalogue = shippedTechniques();
  addTechnique(catalogue,
               oneStepTechnique("hen", R"("piece.hen")", R"("when": {"always": true})", R"("needs": ["piece.egg"], )"));
  addTechnique(catalogue,
               oneStepTechnique("egg", R"("piece.egg")", R"("when": {"always": true})", R"("needs": ["piece.hen"], )"));
  const auto lines = composeProblems(designOf(demoJobText()), catalogue);
  REQUIRE(lines.size() == 1);
  CHECK(lines.front() ==
        "compose.cycle path=Do the act (Invented) \u2192 Do the act (Invented) \u2192 Do the act (Invented)");
}

TEST_CASE("a need with alternatives takes the first that the job makes", "[workflow]") {
  craft::Catalogue catalogue;
  addTechnique(catalogue,
               oneStepTechnique("first", R"("piece.first")", R"("when": {"any": "board", "atLeast": 2})", ""));
  addTechnique(catalogue, oneStepTechnique("second", R"("piece.second")", R"("when": {"always": true})", ""));
  addTechnique(catalogue, oneStepTechnique("chooser", R"("piece.chosen")", R"("when": {"always": true})",
                                           R"("needs": [{"anyOf": ["piece.first", "piece.second"]}], )"));
  const std::string two = demoJobText();
  const auto both = composed(designOf(two), catalogue);
  CHECK(both.find("chooser/act")->needs == std::vector<std::string>{"piece.first"});
  const std::string one = R"({"format": "mountwright-job/1",
    "artwork": {"width": "310 mm", "height": "240 mm"},
    "mount": {"window": {"shape": "rectangle", "overlap": "3 mm"}, "boards": [{"id": "only", "thickness": "1.5 mm"}],
              "borders": {"sides": "70 mm", "weighting": "equal"}}})";
  const auto single = composed(designOf(one), catalogue);
  CHECK(single.find("chooser/act")->needs == std::vector<std::string>{"piece.second"});
}

TEST_CASE("a preparation is pulled in only where it is needed", "[workflow]") {
  craft::Catalogue catalogue;
  const std::string shop =
      R"("when": {"needed": true}, "scope": "shop", "keeps": {"for": "4 weeks", "source": "common practice"})";
  addTechnique(catalogue,
               oneStepTechnique("brew", R"("paste.brew.ready")", shop, R"("needs": ["paste.grain.ground"], )"));
  addTechnique(catalogue, oneStepTechnique("grind", R"("paste.grain.ground")", shop, ""));
  addTechnique(catalogue, oneStepTechnique("idle", R"("paste.idle.ready")", shop, ""));
  addTechnique(catalogue, oneStepTechnique("user", R"("piece.pasted")", R"("when": {"always": true})",
                                           R"("needs": ["paste.brew.ready"], )"));
  const auto workflow = composed(designOf(demoJobText()), catalogue);
  CHECK(workflow.steps.size() == 3);
  CHECK(place(workflow, "grind/act") < place(workflow, "brew/act"));
  CHECK(place(workflow, "brew/act") < place(workflow, "user/act"));
  CHECK(workflow.find("idle/act") == nullptr);
  CHECK(workflow.find("brew/act")->ofShop);
}

TEST_CASE("a job picks among alternatives by role, and a wrong pick is told", "[workflow]") {
  craft::Catalogue catalogue;
  const auto add = [&](const std::string& id, const std::string& role) {
    addTechnique(catalogue, oneStepTechnique(id, R"("piece.)" + id + "\"",
                                             R"("role": ")" + role + R"(", "when": {"always": true})", ""));
  };
  add("tape", "mask");
  add("fluid", "mask");
  add("other", "else");
  auto design = designOf(demoJobText());
  CHECK(composed(design, catalogue).find("fluid/act") != nullptr);  // the same rank: the first id
  CHECK(composed(design, catalogue).find("tape/act") == nullptr);
  design.job.techniques = {{"mask", "tape"}};
  CHECK(composed(design, catalogue).find("tape/act") != nullptr);
  CHECK(composed(design, catalogue).find("fluid/act") == nullptr);
  design.job.techniques = {{"mask", "wax"}, {"polish", "tape"}, {"else", "tape"}};
  const auto lines = composeProblems(design, catalogue);
  CHECK(mentions(lines, "compose.no-such-technique role=mask technique=wax"));
  CHECK(mentions(lines, "compose.no-such-role role=polish"));
  CHECK(mentions(lines, "compose.wrong-role role=else technique=tape"));
}

TEST_CASE("what fills a role without doing what the role is for is refused, by its rank and by choice", "[workflow]") {
  craft::Catalogue catalogue = shippedTechniques();
  auto design = designOf(demoJobText());
  design.job.techniques.erase("joining");
  REQUIRE(composeProblems(design, catalogue).empty());
  const auto mine = [](const std::string& rank) {
    return base::replaceAll(
        oneStepTechnique("mine", R"("piece.aa")", R"("role": "joining", "when": {"always": true})", ""),
        R"("rank": 500)", R"("rank": )" + rank);
  };
  addTechnique(catalogue, mine("1"));
  const std::string told = "compose.stranger-in-role technique=mine role=joining";
  CHECK(mentions(composeProblems(design, catalogue), told));
  // Beside the usual one it harms nobody until a job chooses it.
  addTechnique(catalogue, mine("9000"));
  CHECK(composeProblems(design, catalogue).empty());
  design.job.techniques["joining"] = "mine";
  CHECK(mentions(composeProblems(design, catalogue), told));
}

TEST_CASE("a large field is split so that each part fits its window", "[workflow]") {
  craft::Catalogue catalogue;
  addTechnique(
      catalogue,
      oneStepTechnique(
          "sow", R"("this.sown")",
          R"("when": {"each": "leaf"}, "repeat": {"area": "leaf.this.area", "each": "20000 mm2", "source": "common practice"})",
          R"("each": "part", "needs": ["previous.sown"], )"));
  const auto workflow = composed(designOf(demoJobText()), catalogue);
  // 66 085 mm2 in parts of at most 20 000.
  REQUIRE(workflow.steps.size() == 4);
  CHECK(workflow.steps[0].id == "sow/act@field#1");
  CHECK(workflow.steps[3].id == "sow/act@field#4");
  CHECK(workflow.steps[0].needs.empty());
  CHECK(workflow.steps[3].needs == std::vector<std::string>{"field#3.sown"});
}

TEST_CASE("the parts of a field share what the field takes", "[workflow]") {
  craft::Catalogue catalogue;
  addTechnique(
      catalogue,
      oneStepTechnique(
          "sow", R"("this.sown")",
          R"("when": {"each": "leaf"}, "repeat": {"area": "leaf.this.area", "each": "20000 mm2", "source": "common practice"})",
          R"("each": "part", "materials": [{"what": "size", "amount": {"figure": "leaf.owner.size", "factor": 1, "unit": "ml",
             "source": "common practice"}}], )"));
  const auto design = designOf(demoJobText());
  const auto workflow = composed(design, catalogue);
  double shared = 0;
  for (const auto& step : workflow.steps) shared += step.materials.at(0).amount.value();
  CHECK(workflow.steps.size() == 4);
  CHECK(shared == Approx(design.figures.find("leaf.field.size")->value));
}

TEST_CASE("what is in reach is what touches or lies inside", "[workflow]") {
  craft::Catalogue catalogue;
  addTechnique(catalogue, oneStepTechnique("line", R"("this.dry")", R"("when": {"each": "line"})", ""));
  addTechnique(catalogue, oneStepTechnique("leafing", R"("this.leafed")", R"("when": {"each": "leaf"})",
                                           R"("needs": [{"every": "line", "of": "reach", "is": "dry"}], )"));
  const auto workflow = composed(designOf(demoJobText()), catalogue);
  // The line inside the band cannot be touched from the field outside it.
  CHECK(workflow.find("leafing/act@field")->needs == std::vector<std::string>{"outside.dry"});
}

TEST_CASE("figures are only those the design has", "[workflow]") {
  const auto design = designOf(demoJobText());
  const auto workflow = composed(design, shippedTechniques());
  std::size_t figures = 0;
  for (const auto& step : workflow.steps) {
    for (const auto& figure : step.figures) {
      CHECK(design.figures.find(figure.id) != nullptr);
      ++figures;
    }
  }
  CHECK(figures > 40);
}

TEST_CASE("step ids do not change with the ids' meaning: renamed things give the same steps renamed", "[workflow]") {
  std::string text = demoJobText();
  const auto original = composed(designOf(text), shippedTechniques());
  const std::string renamed =
      base::replaceAll(base::replaceAll(text, "\"inner\"", "\"quay\""), "band:inner.", "band:quay.");
  const auto other =
      composed(designOf(base::replaceAll(renamed, "outside:inner", "outside:quay")), shippedTechniques());
  REQUIRE(original.steps.size() == other.steps.size());
  for (std::size_t i = 0; i < original.steps.size(); ++i) {
    CHECK(base::replaceAll(original.steps[i].id, "@inner", "@quay") == other.steps[i].id);
  }
}

TEST_CASE("equal settings that may be shared are made once, for all that need them", "[workflow]") {
  const std::string lines = R"("lines": [
    { "id": "outside", "along": "band:inner.outer", "gap": "2 mm", "width": "1 mm", "colour": "copper" },
    { "id": "inside",  "along": "band:inner.inner", "gap": "0 mm", "width": "1 mm", "colour": "copper" },
    { "id": "fine",    "along": "band:inner.outer", "gap": "6 mm", "width": "0.5 mm", "colour": "copper" }
  ],
  "leaf")";
  std::string text = demoJobText();
  const std::size_t from = text.find("\"lines\"");
  const std::size_t to = text.find("\"leaf\"");
  text.replace(from, to + 6 - from, lines);
  const auto workflow = composed(designOf(text), shippedTechniques());
  const auto* tried = workflow.find("ruled-lines/try-line@inside");
  REQUIRE(tried != nullptr);
  CHECK(tried->setup->to == "colour copper, width 1.0 mm");
  CHECK(workflow.find("ruled-lines/try-line@outside") == nullptr);
  // Another width is another setting.
  CHECK(workflow.find("ruled-lines/try-line@fine") != nullptr);
  for (const char* line : {"inside", "outside"}) {
    const auto& needs = workflow.find("ruled-lines/rule@" + std::string(line))->needs;
    CHECK(std::count(needs.begin(), needs.end(), "inside.tried") == 1);
    CHECK(std::count(needs.begin(), needs.end(), "outside.tried") == 0);
  }
  // A line on the edge it follows has no ticks, and is ruled after those of the others.
  CHECK(workflow.find("ruled-lines/mark@inside") == nullptr);
  for (const char* line : {"outside", "fine"}) {
    CHECK(place(workflow, "ruled-lines/mark@" + std::string(line)) < place(workflow, "ruled-lines/rule@inside"));
  }
}

TEST_CASE("a setting says of each figure what is set by it", "[workflow]") {
  const auto workflow = composed(designOf(demoJobText()), shippedTechniques());
  CHECK(workflow.find("cut-windows/prove-blade@under")->setup->to ==
        "board 2.0 mm, angle 45°, depth 2.9 mm, overrun 2.4 mm");
  craft::Catalogue catalogue;
  addTechnique(catalogue, oneStepTechnique("set", R"("this.set")", R"("when": {"each": "board"})",
                                           R"("setup": {"tool": "cutter", "figures": ["board.this.bevel.angle"]}, )"));
  CHECK(composed(designOf(demoJobText()), catalogue).find("set/act@top")->setup->to == "angle 45°");
}
