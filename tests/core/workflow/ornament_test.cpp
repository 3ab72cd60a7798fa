// Shaped windows, spandrels and washes as things of a job, and what techniques can ask of them.
#include "core/workflow/things.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;
using craft::ThingKind;

namespace {

design::Wash wash(const std::string& id, bool washFirst) {
  design::Wash made;
  made.id = id;
  made.colour = "buff";
  made.washFirst = washFirst;
  return made;
}

// The demo job with a spandrel and two washes, one before the lines and one after.
design::Design ornamented() {
  auto design = designOf(demoJobText());
  design.job.spandrels.emplace_back();
  design.job.spandrels.back().id = "crown";
  design.job.spandrels.back().paper = "reed print";
  design.job.washes = {wash("early", true), wash("late", false)};
  return design;
}

std::vector<std::string> needsOf(const design::Design& design, const std::string& need) {
  craft::Catalogue catalogue;
  addTechnique(catalogue,
               oneStepTechnique("flood", R"("this.flat")", R"("when": {"each": "wash"})", R"("ends": ["this.wet"], )"));
  addTechnique(catalogue, oneStepTechnique("after", R"("piece.after")", R"("when": {"always": true})",
                                           "\"needs\": [" + need + "], "));
  return composed(design, catalogue).find("after/act")->needs;
}

}  // namespace

TEST_CASE("a window is straight only where it is a rectangle, and an arch is called by its head", "[workflow]") {
  auto design = designOf(demoJobText());
  const auto top = [&](const std::string& property) {
    return workflow::Things(design, {}).find("top")->properties.at(property);
  };
  CHECK(top("window") == "straight");
  CHECK(top("shape") == "rectangle");
  design.job.window.form.shape = design::Shape::Oval;
  CHECK(top("window") == "shaped");
  CHECK(top("shape") == "oval");
  design.job.window.form.shape = design::Shape::Arch;
  design.job.window.form.head = design::Head::FourCentred;
  CHECK(top("shape") == "fourCentred");
}

TEST_CASE("a line is curved only where it follows a shaped window", "[workflow]") {
  auto design = designOf(demoJobText());
  design.job.lines.front().along = design::Edge::Window;
  const std::string ofWindow = design.job.lines.front().id;
  const std::string ofBand = design.job.lines.back().id;
  const auto course = [&](const std::string& line) {
    return workflow::Things(design, {}).find(line)->properties.at("course");
  };
  CHECK(course(ofWindow) == "straight");
  design.job.window.form.shape = design::Shape::Chamfered;
  CHECK(course(ofWindow) == "curved");
  CHECK(course(ofBand) == "straight");
}

TEST_CASE("spandrels and washes come after lines and before leaf, with their names and properties", "[workflow]") {
  const auto design = ornamented();
  workflow::ThingWords words;
  words.spandrel = "{id} spandrel";
  words.wash = "{id} wash panel";
  const workflow::Things things(design, words);
  const auto* crown = things.find("crown");
  const auto* early = things.find("early");
  REQUIRE(crown);
  REQUIRE(early);
  CHECK(crown->words.at("name") == "crown spandrel");
  CHECK(crown->properties.at("paper") == "reed print");
  CHECK(crown->properties.at("from") == "springing");
  CHECK(early->words.at("name") == "early wash panel");
  CHECK(early->properties.at("colour") == "buff");
  CHECK(early->properties.at("order") == "washFirst");
  CHECK(things.find("late")->properties.at("order") == "linesFirst");
  CHECK(things.previous(*things.find("late"), ThingKind::Wash) == early);
  CHECK(things.of(ThingKind::Line).back()->order < crown->order);
  CHECK(crown->order < early->order);
  CHECK(things.find("late")->order < things.of(ThingKind::Leaf).front()->order);
}

TEST_CASE("a need of every thing speaks only of those with the properties it asks for", "[workflow]") {
  const auto design = ornamented();
  using Facts = std::vector<std::string>;
  CHECK(needsOf(design, R"({"every": "wash", "is": "flat"})") == Facts{"early.flat", "late.flat"});
  CHECK(needsOf(design, R"({"every": "wash", "where": {"order": "washFirst"}, "is": "flat"})") == Facts{"early.flat"});
  CHECK(needsOf(design, R"({"every": "wash", "where": {"order": ["linesFirst", "washFirst"]}, "is": "flat"})").size() ==
        2);
  CHECK(needsOf(design, R"({"every": "wash", "where": {"colour": "slate"}, "is": "flat"})").empty());
}

TEST_CASE("a family of figures is every figure that begins so, in the design's order, or none", "[workflow]") {
  const auto figures = [](const std::string& pattern) {
    craft::Catalogue catalogue;
    addTechnique(catalogue, oneStepTechnique("mark", R"("this.marked")", R"("when": {"each": "board"})",
                                             "\"figures\": [\"" + pattern + "\"], "));
    const auto workflow = composed(designOf(demoJobText()), catalogue);
    std::vector<std::string> ids;
    for (const auto& figure : workflow.find("mark/act@under")->figures) ids.push_back(figure.id);
    return ids;
  };
  CHECK(figures("board.this.mark.*") == std::vector<std::string>{"board.under.mark.left", "board.under.mark.right",
                                                                 "board.under.mark.top", "board.under.mark.bottom"});
  CHECK(figures("board.this.arc.*").empty());
}

TEST_CASE("a corner is asked for by the words it is said with", "[workflow]") {
  craft::Catalogue catalogue;
  addTechnique(catalogue, oneStepTechnique("once", R"("piece.once")",
                                           R"("when": {"any": "corner", "where": {"corner": "bottom left"}})", ""));
  CHECK(composed(designOf(demoJobText()), catalogue).steps.size() == 1);
}
