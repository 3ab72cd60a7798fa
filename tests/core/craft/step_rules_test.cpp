#include "tests/core/craft/full_technique.h"
#include "tests/support/catch.h"

namespace craft_tests {

TEST_CASE("Each rule of a step's texts fails at its place") {
  requireEach({
      {"a title of nine words", "Cut the {side} strip of {paper}", "Cut the {side} strip of {paper} with great care",
       "/steps/0/title technique.too-many-words"},
      {"a sentence of sixteen words", "Lay the {paper} face down.",
       "Lay the {paper} face down on a clean sheet and smooth it out with one flat hand.",
       "/steps/0/do/0 technique.too-many-words"},
      {"a list without a sentence", R"(["Work from the middle outwards."])", "[]", "/steps/2/do technique.empty-list"},
      {"a sentence that is no text", R"(["Work from the middle outwards."])", "[3]",
       "/steps/2/do/0 read.expected-text"},
      {"an empty text", R"("All four corners meet.")", R"("")", "/steps/3/good read.empty-text"},
      {"a missing text", R"("good": "All four corners meet.",)", "", "/steps/3 read.missing-key"},
      {"a placeholder a strip has no property for", "A blunt blade drags the print.", "A blunt blade drags {colour}.",
       "/steps/0/trap technique.unknown-placeholder"},
      {"a placeholder of a part in a step for the band", "All four corners meet.", "All {of} corners meet.",
       "/steps/3/good technique.unknown-placeholder"},
      {"a brace that opens nothing", "All four corners meet.", "All four corners} meet.",
       "/steps/3/good technique.loose-brace"},
      {"a brace that is not closed", "All four corners meet.", "All four {name meet.",
       "/steps/3/good technique.loose-brace"},
      {"an unknown placeholder in a tool", R"("steel rule")", R"("{metal} rule")",
       "/steps/0/tools/1 technique.unknown-placeholder"},
  });
}

TEST_CASE("Each rule of a step's words fails at its place") {
  requireEach({
      {"an unknown key", R"("hands": "blade",)", R"("hands": "blade", "feet": "dry",)",
       "/steps/0/feet read.unknown-key"},
      {"wrong hands", R"("hands": "blade")", R"("hands": "knife")", "/steps/0/hands read.unknown-word"},
      {"a side that is none", R"("up": "back")", R"("up": "left")", "/steps/0/up read.unknown-word"},
      {"an act nobody has drawn", R"("act": "cutStrips")", R"("act": "cutstrips")",
       "/steps/0/act technique.unknown-act"},
      {"a place that no act has", R"("places": ["tool", "work"])", R"("places": ["thumb"])",
       "/steps/0/places/0 read.unknown-word"},
      {"two sentences at one place", R"("places": ["tool", "work"])", R"("places": ["tool", "tool"])",
       "/steps/0/places/1 technique.place-twice"},
      {"more places than numbers", R"("places": ["tool", "work"])", R"("places": ["", "", "", ""])",
       "/steps/0/places read.too-many-items"},
      {"an act that is no word", R"("act": "cutStrips")", R"("act": ["cutStrips"])", "/steps/0/act read.expected-text"},
      {"an unknown resource", R"("resource": "press")", R"("resource": "oven")", "/steps/1/resource read.unknown-word"},
      {"an id given twice", R"("id": "smooth")", R"("id": "cut-strip")", "/steps/2/id technique.duplicate-id"},
      {"a malformed id", R"("id": "smooth")", R"("id": "smooth it")", "/steps/2/id technique.malformed-id"},
      {"each of what does not belong to a band", R"("each": "part")", R"("each": "line")",
       "/steps/2/each technique.each-not-here"},
      {"each of a word unknown", R"("each": "part")", R"("each": "once")", "/steps/2/each technique.each-not-here"},
      {"something that is neither true nor false", R"("uninterruptible": true)", R"("uninterruptible": "yes")",
       "/steps/1/uninterruptible read.expected-boolean"},
  });
}

TEST_CASE("Strips belong to a technique for each band, parts to one that repeats") {
  const std::string band = R"("each": "band", "where": {"motif": ["mirror", "plain"], "paper": "wave-block print"})";
  CHECK_THAT(problemsOf(changed(band, R"("each": "leaf")")),
             Catch::Matchers::VectorContains(std::string("/steps/0/each technique.each-not-here")));
  CHECK_THAT(problemsOf(changed(band, R"("each": "leaf")")),
             !Catch::Matchers::VectorContains(std::string("/steps/2/each technique.each-not-here")));
  const auto problems = problemsOf(
      changed(R"("repeat": {"area": "band.this.area", "each": "20000 mm2", "source": "common practice"},)", ""));
  CHECK_THAT(problems,
             Catch::Matchers::Equals(std::vector<std::string>{"/steps/2/each technique.each-not-here",
                                                              "/steps/3/needs/0/of technique.relation-not-here"}));
}

TEST_CASE("Each rule of a step's work fails at its place") {
  const char* kWork = R"("work": {"early": "2 min", "likely": "3 min", "late": "6 min", "source": "common practice"})";
  requireEach({
      {"likely before early", kWork,
       R"("work": {"early": "4 min", "likely": "3 min", "late": "6 min", "source": "common practice"})",
       "/steps/0/work/likely technique.span-order"},
      {"late before likely", kWork,
       R"("work": {"early": "2 min", "likely": "3 min", "late": "170 s", "source": "common practice"})",
       "/steps/0/work/late technique.span-order"},
      {"no time at all", kWork,
       R"("work": {"early": "0 min", "likely": "3 min", "late": "6 min", "source": "common practice"})",
       "/steps/0/work/early technique.no-time"},
      {"a span without its late", kWork,
       R"("work": {"early": "2 min", "likely": "3 min", "source": "common practice"})",
       "/steps/0/work read.missing-key"},
      {"a missing source", kWork, R"("work": {"early": "2 min", "likely": "3 min", "late": "6 min"})",
       "/steps/0/work read.missing-key"},
      {"a duration without its unit", kWork,
       R"("work": {"early": "2", "likely": "3 min", "late": "6 min", "source": "common practice"})",
       "/steps/0/work/early duration.malformed"},
      {"a number for a duration", kWork,
       R"("work": {"early": 2, "likely": "3 min", "late": "6 min", "source": "common practice"})",
       "/steps/0/work/early read.expected-text"},
      {"more than 10 000 hours", kWork,
       R"("work": {"early": "2 min", "likely": "3 min", "late": "10001 h", "source": "common practice"})",
       "/steps/0/work/late duration.too-long"},
  });
}

TEST_CASE("Each rule of what a step lists fails at its place") {
  requireEach({
      {"an amount both by count and by figure", R"({"count": 1, "unit")",
       R"({"count": 1, "figure": "band.owner.area", "unit")", "/steps/0/materials/0/amount technique.amount-one-of"},
      {"an amount by nothing", R"({"count": 1, "unit")", R"({"unit")",
       "/steps/0/materials/0/amount technique.amount-one-of"},
      {"an amount of nothing", R"({"count": 1, "unit")", R"({"count": 0, "unit")",
       "/steps/0/materials/0/amount/count read.out-of-range"},
      {"an amount without a factor", R"("factor": 0.00015, )", "", "/steps/0/materials/1/amount read.missing-key"},
      {"an amount without a source", R"("unit": "ml", "source": "common practice")", R"("unit": "ml")",
       "/steps/0/materials/1/amount read.missing-key"},
      {"a figure no design has", R"("figures": ["band.owner.strip.axis")", R"("figures": ["band.owner.strip.depth")",
       "/steps/0/figures/0 technique.unknown-figure"},
      {"a figure of another thing", R"("figures": ["band.owner.strip.axis")", R"("figures": ["board.this.reveal")",
       "/steps/0/figures/0 technique.figure-of-other-thing"},
      {"a figure counted not at all", R"("count": 2, "from")", R"("count": 0, "from")",
       "/steps/0/figures/1/count read.out-of-range"},
      {"a way of marking that is none", R"("by": "marks")", R"("by": "eye")",
       "/steps/0/figures/1/by read.unknown-word"},
      {"a check with a figure but no tolerance", R"("figure": "band.owner.strip.axis", "within": "0.5 mm")",
       R"("figure": "band.owner.strip.axis")", "/steps/0/checks/1 technique.half-a-measure"},
      {"a check with a tolerance but no figure", R"("figure": "band.owner.strip.axis", "within": "0.5 mm")",
       R"("within": "0.5 mm")", "/steps/0/checks/1 technique.half-a-measure"},
      {"a tolerance of nothing", R"("within": "0.5 mm")", R"("within": "0 mm")",
       "/steps/0/checks/1/within technique.no-tolerance"},
      {"a tolerance without its unit", R"("within": "0.5 mm")", R"("within": "0.5")",
       "/steps/0/checks/1/within length.no-unit"},
      {"as made what no design has", R"("asMade": ["band.owner.strip.axis"])", R"("asMade": ["band.owner.colour"])",
       "/steps/0/asMade/0 technique.unknown-figure"},
      {"a family of figures where one is measured", R"("asMade": ["band.owner.strip.axis"])",
       R"("asMade": ["band.owner.strip.*"])", "/steps/0/asMade/0 technique.figure-family-not-here"},
      {"a family of figures no design has", R"("figures": ["band.owner.strip.axis",)",
       R"("figures": ["band.owner.arc.*",)", "/steps/0/figures/0 technique.unknown-figure"},
      {"a fault without what it ends", R"(, "ends": ["this.*"]})", "}", "/steps/0/faults/0 read.missing-key"},
  });
}

TEST_CASE("A fault leaves the maker one way out or a choice of keys") {
  constexpr const char* kTrim = R"({"id": "trim", "key": "Trim it", "do": "Trim the {side} strip.", "ends": []},)";
  constexpr const char* kSeen = R"("seen": "The strip is long.",)";
  requireEach({
      {"a choice of one", kTrim, "", "/steps/0/faults/1/ways technique.so-many-ways"},
      {"a choice and a remedy of its own", kSeen, R"("seen": "The strip is long.", "do": "Trim it.",)",
       "/steps/0/faults/1/do technique.ways-or-do"},
      {"a choice and ends of its own", kSeen, R"("seen": "The strip is long.", "ends": ["this.cut"],)",
       "/steps/0/faults/1/ends technique.ways-or-do"},
      {"two ways of one id", R"("id": "trim")", R"("id": "anew")",
       "/steps/0/faults/1/ways/1/id technique.duplicate-id"},
      {"a way without its key", R"("key": "Trim it", )", "", "/steps/0/faults/1/ways/0 read.missing-key"},
      {"a key too long to be read", "Trim it\"", "Shortening\"", "/steps/0/faults/1/ways/0/key technique.key-too-long"},
      {"a key that nobody knows the length of", "Trim it\"", "Trim {side}\"",
       "/steps/0/faults/1/ways/0/key technique.placeholder-on-key"},
      {"a way that does not say what it ends", R"("Trim the {side} strip.", "ends": [])", R"("Trim the {side} strip.")",
       "/steps/0/faults/1/ways/0 read.missing-key"},
  });
}

TEST_CASE("Each rule of a caution fails at its place") {
  requireEach({
      {"a word that is no signal word", R"("word": "CAUTION")", R"("word": "DANGER")",
       "/steps/0/cautions/0/word read.unknown-word"},
      {"a text of thirteen words", "Damp hands stain the print.",
       "Damp hands stain the print, so dry them well on a clean cloth first.",
       "/steps/0/cautions/1/text technique.too-many-words"},
      {"a malformed sign", R"("sign": "W022")", R"("sign": "W22")",
       "/steps/0/cautions/0/sign technique.malformed-sign"},
      {"a sign on a NOTICE", R"("word": "CAUTION", "sign")", R"("word": "NOTICE", "sign")",
       "/steps/0/cautions/0/sign technique.sign-on-notice"},
      {"a second sign", R"({"word": "NOTICE", "hazard": "paper")",
       R"({"word": "WARNING", "sign": "W024", "hazard": "paper")", "/steps/0/cautions/1/sign technique.second-sign"},
      {"a caution without its hazard", R"("hazard": "blade", )", "", "/steps/0/cautions/0 read.missing-key"},
      {"a room of no bound", R"({"below": "10 C", "above": "65 %"})", "{}",
       "/steps/0/cautions/1/room technique.no-room"},
      {"a bound without its unit", R"("below": "10 C")", R"("below": "10")",
       "/steps/0/cautions/1/room/below temperature.malformed"},
      {"a humidity that no room has", R"("above": "65 %")", R"("above": "165 %")",
       "/steps/0/cautions/1/room/above humidity.out-of-range"},
      {"bounds that leave out no room", R"("below": "10 C", "above": "65 %")", R"("below": "20 C", "above": "10 C")",
       "/steps/0/cautions/1/room technique.every-room"},
      {"a room beside what it may be", R"("below": "10 C")", R"("beneath": "10 C")",
       "/steps/0/cautions/1/room/beneath read.unknown-key"},
  });
}

TEST_CASE("Each rule of a set-up's words and of a step's choice of things fails at its place") {
  requireEach({
      {"a setting without its name", R"(, "as": "length")", "", "/steps/0/setup/figures/1 read.missing-key"},
      {"a setting of four words", R"("as": "length")", R"("as": "length of the strip")",
       "/steps/0/setup/figures/1/as technique.too-many-words"},
      {"a property that no strip has", R"("where": {"side")", R"("where": {"flank")",
       "/steps/0/where/flank technique.unknown-property"},
      {"a side that no strip has", R"("top", "bottom", "left", "right"])", R"("top", "nearest"])",
       "/steps/0/where/side/1 technique.unknown-value"},
  });
}

}  // namespace craft_tests
