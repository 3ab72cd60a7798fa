// What can hurt is warned of before the act, on the very step that uses it.
#include <algorithm>

#include "core/base/text.h"
#include "tests/recipes/shipped_techniques.h"
#include "tests/support/catch.h"

using namespace core;
using tests::lowered;
using tests::shippedCatalogue;
using tests::speaksOf;

namespace {

// A word by which a step tells that it uses what can hurt, and the hazards a caution may name for it.
struct Danger {
  std::string_view word;
  std::vector<std::string> hazards;
};

const std::vector<Danger>& dangers() {
  static const std::vector<Danger> kDangers = {
      {"blade", {"blade"}},
      {"knife", {"blade"}},
      {"needle", {"blade"}},
      {"scalpel", {"blade"}},
      {"bevel cutter", {"blade"}},
      {"compass", {"point"}},
      {"dividers", {"point"}},
      {"glass", {"glass", "points"}},
      {"glazing", {"glass", "points"}},
      {"powder", {"powder"}},
      {"bronze", {"powder"}},
      {"flake", {"flake"}},
      {"metal leaf", {"leaf dust", "flake"}},
      {"loose leaf", {"leaf dust", "flake"}},
      {"skewings", {"leaf dust", "flake"}},
      {"hot water", {"hot water"}},
      {"kettle", {"hot water"}},
      {"hot plate", {"hot paste"}},
      {"solvent", {"solvent", "solvent rags"}},
      {"alcohol", {"solvent"}},
      {"shellac", {"solvent"}},
      {"acetone", {"solvent"}},
      {"oil size", {"oil size"}},
      {"oily", {"oily rags"}},
      {"rag", {"oily rags", "solvent rags"}},
      {"paint", {"paint"}},
      {"dispersion", {"adhesive"}},
      {"varnish", {"sealer"}},
      {"sealer", {"sealer", "solvent"}},
      {"flat board", {"weights"}},
  };
  return kDangers;
}

// Everything a step says of what is used and how.
std::string whatIsUsed(const craft::Step& step) {
  std::string text = step.title + "; " + base::join(step.sentences, "; ") + "; " + base::join(step.tools, "; ");
  for (const craft::Material& material : step.materials) text += "; " + material.what;
  return lowered(text);
}

bool isWarnedOf(const craft::Step& step, const Danger& danger) {
  return std::any_of(step.cautions.begin(), step.cautions.end(), [&](const craft::Caution& caution) {
    return caution.word != craft::SignalWord::Notice &&
           std::find(danger.hazards.begin(), danger.hazards.end(), caution.hazard) != danger.hazards.end();
  });
}

const Danger& blade() { return dangers().front(); }

// The dangers of a step that no caution of it speaks of.
std::vector<std::string> unwarned(const craft::Step& step) {
  std::vector<std::string> words;
  const std::string text = whatIsUsed(step);
  for (const Danger& danger : dangers()) {
    if (speaksOf(text, danger.word) && !isWarnedOf(step, danger)) words.emplace_back(danger.word);
  }
  return words;
}

template <typename Visit>
void forEachStep(const craft::Catalogue& catalogue, Visit visit) {
  for (const craft::Technique* technique : catalogue.all()) {
    for (const craft::Step& step : technique->steps) visit(*technique, step);
  }
}

}  // namespace

TEST_CASE("no step uses what can hurt without its caution") {
  forEachStep(shippedCatalogue(), [](const craft::Technique& technique, const craft::Step& step) {
    INFO(technique.id << '/' << step.id);
    CHECK(unwarned(step) == std::vector<std::string>());
  });
}

TEST_CASE("a caution taken away is missed wherever it is the only one of its hazard") {
  std::size_t met = 0;
  forEachStep(shippedCatalogue(), [&](const craft::Technique& technique, const craft::Step& step) {
    const std::string text = whatIsUsed(step);
    for (const Danger& danger : dangers()) {
      if (!speaksOf(text, danger.word)) continue;
      ++met;
      craft::Step without = step;
      std::erase_if(without.cautions, [&](const craft::Caution& caution) {
        return std::count(danger.hazards.begin(), danger.hazards.end(), caution.hazard) > 0;
      });
      INFO(technique.id << '/' << step.id << ' ' << danger.word);
      CHECK_FALSE(unwarned(without).empty());
    }
  });
  CHECK(met > 100);
}

TEST_CASE("a step worked with a blade in hand warns of the blade") {
  forEachStep(shippedCatalogue(), [](const craft::Technique& technique, const craft::Step& step) {
    INFO(technique.id << '/' << step.id);
    CHECK((step.hands != craft::Hands::Blade || isWarnedOf(step, blade())));
  });
}

TEST_CASE("a mend that cuts says where the other hand is, on whatever step it stands") {
  std::size_t met = 0;
  forEachStep(shippedCatalogue(), [&](const craft::Technique& technique, const craft::Step& step) {
    for (const craft::Fault& fault : step.faults) {
      std::string mend = lowered(fault.mend);
      for (const craft::FaultWay& way : fault.ways) mend += ' ' + lowered(way.mend);
      const bool cuts = speaksOf(mend, "blade") || speaksOf(mend, "needle") || speaksOf(mend, "slit") ||
                        speaksOf(mend, "scrape") || speaksOf(mend, "shave");
      if (!cuts) continue;
      ++met;
      INFO(technique.id << '/' << step.id << '/' << fault.id << ": " << mend);
      CHECK((isWarnedOf(step, blade()) || mend.find("free hand") != std::string::npos));
    }
  });
  CHECK(met > 5);
}

TEST_CASE("wherever oil or solvent is brushed the rags are a step of their own, with a WARNING") {
  std::size_t met = 0;
  const auto catalogue = shippedCatalogue();
  for (const craft::Technique* technique : catalogue.all()) {
    const auto says = [&](std::string_view hazard, craft::SignalWord word) {
      return std::any_of(technique->steps.begin(), technique->steps.end(), [&](const craft::Step& step) {
        return std::any_of(step.cautions.begin(), step.cautions.end(), [&](const craft::Caution& caution) {
          return caution.hazard == hazard && caution.word == word;
        });
      });
    };
    for (const auto& [used, rags] : {std::pair{"oil size", "oily rags"}, {"solvent", "solvent rags"}}) {
      if (!says(used, craft::SignalWord::Warning)) continue;
      ++met;
      INFO(technique->id << " leaves " << rags);
      CHECK(says(rags, craft::SignalWord::Warning));
    }
  }
  CHECK(met >= 5);
}
