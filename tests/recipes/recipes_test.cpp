#include <algorithm>
#include <array>
#include <cctype>
#include <set>

#include "core/base/text.h"
#include "core/craft/technique_reader.h"
#include "core/workflow/rehearse.h"
#include "tests/recipes/shipped_techniques.h"
#include "tests/support/catch.h"

using namespace core;
using tests::composedJob;
using tests::filesEnding;
using tests::shippedCatalogue;
using tests::textOf;

namespace {

std::string lowered(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return text;
}

// Whether `phrase` stands in `text` as whole words, a plural s allowed.
bool speaksOf(const std::string& text, std::string_view phrase) {
  const auto isLetter = [&](std::size_t at) {
    return at < text.size() && std::isalpha(static_cast<unsigned char>(text[at])) != 0;
  };
  for (std::size_t at = text.find(phrase); at != std::string::npos; at = text.find(phrase, at + 1)) {
    std::size_t end = at + phrase.size();
    if (end < text.size() && text[end] == 's') ++end;
    if ((at == 0 || !isLetter(at - 1)) && !isLetter(end)) return true;
  }
  return false;
}

// What can hurt, and the hazards by which a caution may speak of it.
struct Danger {
  std::string_view word;
  std::vector<std::string> hazards;
};

const std::vector<Danger>& dangers() {
  static const std::vector<Danger> kDangers = {
      {"blade", {"blade"}},         {"knife", {"blade"}},          {"needle", {"blade"}},
      {"bevel cutter", {"blade"}},  {"glass", {"glass"}},          {"glazing", {"glass", "points"}},
      {"powder", {"powder"}},       {"flake", {"flake"}},          {"hot water", {"hot water"}},
      {"hot plate", {"hot paste"}}, {"kettle", {"hot water"}},     {"solvent", {"solvent"}},
      {"acetone", {"solvent"}},     {"oil size", {"oil size"}},    {"paint", {"paint"}},
      {"dispersion", {"adhesive"}}, {"metal leaf", {"leaf dust"}}, {"sealer", {"sealer"}},
      {"rag", {"oily rags"}}};
  return kDangers;
}

std::string toolsAndMaterials(const craft::Step& step) {
  std::string text = base::join(step.tools, "; ");
  for (const craft::Material& material : step.materials) text += "; " + material.what;
  return lowered(text);
}

bool isWarnedOf(const craft::Step& step, const Danger& danger) {
  return std::any_of(step.cautions.begin(), step.cautions.end(), [&](const craft::Caution& caution) {
    return caution.word != craft::SignalWord::Notice &&
           std::find(danger.hazards.begin(), danger.hazards.end(), caution.hazard) != danger.hazards.end();
  });
}

}  // namespace

TEST_CASE("every shipped technique reads without a problem and bears the name of its file") {
  const auto names = filesEnding(RECIPES_DIR, ".technique.json");
  REQUIRE(names.size() >= 20);
  for (const std::string& name : names) {
    INFO(name);
    const auto read = craft::readTechnique(textOf(std::string(RECIPES_DIR) + '/' + name));
    for (const auto& problem : read.problems.sorted())
      UNSCOPED_INFO(problem.pointer << ": " << base::dump(problem.message));
    CHECK(read.problems.empty());
    REQUIRE(read.technique);
    CHECK(read.technique->id + ".technique.json" == name);
  }
}

TEST_CASE("every fact a shipped technique needs is made by a shipped technique") {
  for (const auto& found : craft::checkCatalogue(shippedCatalogue())) {
    FAIL_CHECK(found.technique << ' ' << found.problem.pointer << ' ' << base::dump(found.problem.message));
  }
}

TEST_CASE("no step uses what can hurt without its caution") {
  std::size_t met = 0;
  const auto catalogue = shippedCatalogue();
  for (const craft::Technique* technique : catalogue.all()) {
    for (const craft::Step& step : technique->steps) {
      const std::string text = toolsAndMaterials(step);
      for (const Danger& danger : dangers()) {
        if (!speaksOf(text, danger.word)) continue;
        ++met;
        INFO(technique->id << '/' << step.id << " uses " << danger.word);
        CHECK(isWarnedOf(step, danger));
      }
    }
  }
  CHECK(met > 30);
}

TEST_CASE("a step worked with a blade in hand warns of the blade") {
  const auto catalogue = shippedCatalogue();
  for (const craft::Technique* technique : catalogue.all()) {
    for (const craft::Step& step : technique->steps) {
      if (step.hands != craft::Hands::Blade) continue;
      INFO(technique->id << '/' << step.id);
      CHECK(isWarnedOf(step, dangers().front()));
    }
  }
}

TEST_CASE("a mend that takes a blade or needle stands on a step that warns of it") {
  const auto catalogue = shippedCatalogue();
  for (const craft::Technique* technique : catalogue.all()) {
    for (const craft::Step& step : technique->steps) {
      for (const craft::Fault& fault : step.faults) {
        const std::string mend = lowered(fault.mend);
        if (!speaksOf(mend, "blade") && !speaksOf(mend, "needle")) continue;
        INFO(technique->id << '/' << step.id << '/' << fault.id);
        CHECK(isWarnedOf(step, dangers().front()));
      }
    }
  }
}

TEST_CASE("no text of a technique gives a verdict that only a test or a label can give") {
  for (const std::string& name : filesEnding(RECIPES_DIR, ".technique.json")) {
    const std::string text = lowered(textOf(std::string(RECIPES_DIR) + '/' + name));
    INFO(name);
    CHECK_FALSE(speaksOf(text, "archival"));
    CHECK_FALSE(speaksOf(text, "conservation grade"));
    CHECK_FALSE(speaksOf(text, "safe"));
  }
}

TEST_CASE("every shipped step names its act") {
  const auto catalogue = shippedCatalogue();
  for (const craft::Technique* technique : catalogue.all()) {
    for (const craft::Step& step : technique->steps) {
      INFO(technique->id << '/' << step.id);
      CHECK(step.act.has_value());
    }
  }
}

TEST_CASE("a blade in the hand is a blade in the drawing") {
  const std::set<craft::Act> cuts = {craft::Act::CutSquare, craft::Act::CutBevel, craft::Act::CutCurve,
                                     craft::Act::CutStrips, craft::Act::Mitre,    craft::Act::Peel};
  const auto catalogue = shippedCatalogue();
  for (const craft::Technique* technique : catalogue.all()) {
    for (const craft::Step& step : technique->steps) {
      INFO(technique->id << '/' << step.id);
      if (step.hands == craft::Hands::Blade) CHECK(cuts.contains(*step.act));
    }
  }
}

TEST_CASE("the demo jobs can be worked by one pair of hands that misses no window") {
  const auto files = filesEnding(std::string(RECIPES_DIR) + "/jobs", ".job.json");
  REQUIRE(files.size() >= 2);
  for (const std::string& file : files) {
    INFO(file);
    const auto workflow = composedJob(file);
    const auto rehearsal = workflow::rehearse(workflow);
    CHECK_FALSE(rehearsal.missed);
    const auto begun = std::count_if(rehearsal.events.begin(), rehearsal.events.end(),
                                     [](const auto& event) { return event.kind == workflow::RehearsalKind::Step; });
    CHECK(static_cast<std::size_t>(begun) == workflow.steps.size());
  }
}
