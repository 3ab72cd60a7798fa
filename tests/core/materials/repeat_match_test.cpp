#include <cmath>

#include "core/design/figures.h"
#include "tests/core/materials/matched.h"
#include "tests/support/catch.h"

using namespace core;
using namespace tests;
using materials::MatchKind;
using materials::MatchState;
using materials::Measure;
using units::Length;

namespace {

double reread(const std::string& text, const std::string& figure) {
  const auto design = designOf(text);
  const auto* found = design.figures.find(figure);
  REQUIRE(found != nullptr);
  return found->value;
}

// The example with other room, offsets or repeat.
std::string exampleWith(const std::string& from, const std::string& to) { return changed(workedExample(), from, to); }

}  // namespace

TEST_CASE("the example's corners are open by 11 of 24; one millimetre and another centring close them") {
  // (367 - 297)/2 = 35 = 24 + 11. On ground at the sides: 47 = 48 - 1, so the sides need 1 more.
  const auto match = matchIn(workedExample());
  CHECK(match.state == MatchState::Open);
  CHECK(match.mismatch == Approx(11));
  REQUIRE(!match.options.empty());
  const auto& first = match.options.front();
  CHECK(first.cost == tenths(10));
  REQUIRE(first.changes.size() == 1);
  CHECK(first.changes[0].measure == Measure::Sides);
  CHECK(first.changes[0].by == tenths(10));
  REQUIRE(first.centrings.size() == 1);
  CHECK(!first.centrings[0].horizontal);
  CHECK(first.figures.outer == geometry::Box{369, 297});
  CHECK(first.figures.stripHorizontal == 381);
  CHECK(first.figures.stripVertical == 309);
  CHECK(first.figures.firstMotifHorizontal == Approx(22.5));  // 190.5 - 7 x 24
  CHECK(first.figures.firstMotifVertical == Approx(22.5));    // 154.5 + 12 - 6 x 24
  CHECK(first.figures.grounds.insideSides == 11);
  CHECK(first.figures.grounds.insideTopBottom == 10);
  CHECK(first.figures.grounds.left == 43.5);  // 70 - 1.5 - 11 - 14
  CHECK(first.figures.grounds.top == 44.5);
  CHECK(says(first.disturbs, "match.uneven-inside"));
  CHECK(says(first.disturbs, "match.moves-too"));
}

TEST_CASE("without another centring the example takes 11 at top and bottom, 13 at the sides, or two halves") {
  const auto match = matchIn(workedExample());
  const auto* topBottom = optionWith(match, {Measure::TopBottom});
  REQUIRE(topBottom != nullptr);
  CHECK(topBottom->cost == tenths(110));
  CHECK(topBottom->figures.outer == geometry::Box{367, 319});  // 48 = 2 x 24
  const auto* sides = optionWith(match, {Measure::Sides});
  REQUIRE(sides != nullptr);
  CHECK(sides->cost == tenths(130));                       // not 11 less: the ground is 10, and a line lies in it
  CHECK(sides->figures.outer == geometry::Box{393, 297});  // 96 = 4 x 24
  const auto* both = optionWith(match, {Measure::Sides, Measure::TopBottom});
  REQUIRE(both != nullptr);
  CHECK(both->kind == MatchKind::BothGrounds);
  CHECK(both->cost == tenths(110));
  CHECK(both->changes[0].by == tenths(-55));
  CHECK(both->changes[1].by == tenths(55));
  // Of one cost: the fewer measures first.
  CHECK(topBottom < both);
}

TEST_CASE("edits put into the file close its corners") {
  const auto match = matchIn(workedExample());
  const auto& first = match.options.front();
  CHECK(editAt(first, "/bands/0/offset") == R"({"sides": "11 mm", "topBottom": "10 mm"})");
  CHECK(editAt(first, "/bands/0/centre") == R"({"horizontal": "motif", "vertical": "ground"})");
  std::string text = exampleWith(R"("offset": "10 mm")", R"("offset": )" + editAt(first, "/bands/0/offset"));
  text = changed(text, R"("motif": "mirror")", R"("motif": "mirror", "centre": )" + editAt(first, "/bands/0/centre"));
  CHECK(reread(text, "band.inner.corner.phase") == 0);
  CHECK(reread(text, "band.inner.firstMotif.horizontal") == Approx(first.figures.firstMotifHorizontal));
  CHECK(matchIn(text).state == MatchState::Meets);
  CHECK(matchIn(text).options.empty());
}

TEST_CASE("borders that follow keep the ground outside, whatever way they were entered") {
  const std::string weighted = R"("borders": { "sides": "70 mm", "weighting": "4:3" })";
  const struct {
    const char* borders;
    const char* pointer;
  } rows[] = {
      {R"("borders": { "sides": "70 mm", "weighting": "4:3" })", "/mount/borders"},
      {R"("borders": { "top": "70 mm", "bottom": "80 mm", "sides": "65 mm" })", "/mount/borders"},
      {R"("borders": { "outer": { "width": "456 mm", "height": "410 mm" }, "weighting": "+6 mm" })",
       "/mount/borders/outer/height"},
      {R"("borders": { "outer": { "width": "456 mm", "height": "410 mm" }, "weighting": "4:3" })", "/mount/borders"}};
  for (const auto& row : rows) {
    INFO(row.borders);
    const std::string text = exampleWith(weighted, row.borders);
    const auto design = designOf(text);
    const auto match = materials::matchOf(design.job, design.layout, 0);
    const auto* kept = optionWith(match, {Measure::TopBottom, Measure::BorderTopBottom});
    REQUIRE(kept != nullptr);
    CHECK(kept->kind == MatchKind::GroundKept);
    CHECK(kept->cost == tenths(220));
    CHECK(kept->figures.grounds.top == Approx(design.layout.seenTop - 24).margin(2e-6));
    CHECK(kept->figures.grounds.bottom == Approx(design.layout.seenBottom - 24).margin(2e-6));
    std::string after = changed(text, R"("offset": "10 mm")", R"("offset": )" + editAt(*kept, "/bands/0/offset"));
    const std::string value = editAt(*kept, row.pointer);
    after = std::string(row.pointer) == "/mount/borders"
                ? changed(after, row.borders, R"("borders": )" + value)
                : changed(after, R"("height": "410 mm")", R"("height": )" + value);
    CHECK(reread(after, "band.inner.corner.phase") == Approx(0).margin(1e-9));
    CHECK(reread(after, "outer.height") == Approx(design.layout.outerHeight + 22).margin(2e-6));
  }
}

TEST_CASE("half a repeat closes by centring alone, the motif kept in the middle at the top") {
  // 35 and a repeat of 14: 2.5 repeats.
  const auto match = matchIn(exampleWith(R"("repeat": "24 mm")", R"("repeat": "14 mm")"));
  CHECK(match.mismatch == Approx(7));
  REQUIRE(match.options.size() > 1);
  for (std::size_t i : {0u, 1u}) {
    CHECK(match.options[i].kind == MatchKind::Centring);
    CHECK(match.options[i].cost == Length());
    CHECK(match.options[i].edits.size() == 1);
  }
  CHECK(says(match.options[0].says, "match.upright-on-ground"));
  CHECK(says(match.options[1].says, "match.level-on-ground"));
  // Centred on ground at the top already: that is what changes.
  const auto other = matchIn(exampleWith(
      R"("repeat": "24 mm")", R"("repeat": "14 mm", "centre": {"horizontal": "ground", "vertical": "ground"})"));
  CHECK(says(other.options.front().says, "match.level-on-motif"));
}

TEST_CASE("a closing off the steps of a rule comes with the nearest steps and what they leave") {
  // (367.07 - 297)/2 = 35.035: open by 11.035, by -0.965 on ground.
  const auto match = matchIn(exampleWith(R"("width": "310 mm")", R"("width": "310.07 mm")"));
  const auto& first = match.options.front();
  CHECK(first.cost == Length::nanometres(965'000));
  CHECK(std::fabs(first.figures.mismatch) < 1e-9);
  REQUIRE(first.onSteps);
  CHECK(first.onSteps->mismatch == Approx(0.035));
  CHECK(first.onSteps->edits[0].value == R"({"sides": "11 mm", "topBottom": "10 mm"})");
  CHECK(!matchIn(workedExample()).options.front().onSteps);
}

TEST_CASE("a band with no room gets it from a narrower band or wider borders, and the reason is said") {
  // Borders of 36 at top and bottom: 34.5 seen, 28.5 of it clear of the lip at the bottom. The band's outer line ends
  // 25 out, which leaves 3.5. Top and bottom want 11 more: 7.5 too much.
  std::string text =
      exampleWith(R"("sides": "70 mm", "weighting": "4:3")", R"("top": "36 mm", "bottom": "36 mm", "sides": "70 mm")");
  text = changed(text, R"(, "keepOff": { "edge": "6 mm" })", "");
  const auto match = matchIn(text);
  const auto* narrower = optionWith(match, {Measure::TopBottom, Measure::Width});
  const auto* wider = optionWith(match, {Measure::TopBottom, Measure::BorderTopBottom});
  REQUIRE(narrower != nullptr);
  REQUIRE(wider != nullptr);
  for (const auto* made : {narrower, wider}) {
    CHECK(made->kind == MatchKind::Room);
    CHECK(made->why.id == "match.why-room");
    CHECK(!made->bringsNotice);
    CHECK(made->changes[0].by == tenths(110));
    CHECK(made->cost == tenths(185));
  }
  CHECK(narrower->changes[1].by == tenths(-75));
  CHECK(wider->changes[1].by == tenths(75));
  CHECK(wider->figures.grounds.bottom == 7);  // 43.5 - 1.5 - 21 - 14: the line's 1 and the lip's 6
}

TEST_CASE("what brings a notice comes after what does not, and the notice is told") {
  std::string text =
      exampleWith(R"("sides": "70 mm", "weighting": "4:3")", R"("sides": "31 mm", "weighting": "equal")");
  text = changed(text, R"(, "keepOff": { "edge": "6 mm" })", "");
  const auto match = matchIn(text);
  bool noticed = false;
  for (const auto& option : match.options) {
    if (!option.bringsNotice) CHECK(!noticed);
    noticed = noticed || option.bringsNotice;
    if (option.bringsNotice) CHECK(says(option.disturbs, "job.under-lip"));
  }
  CHECK(noticed);
}

TEST_CASE("inch jobs are edited in inches where the new measure lies on a 64th") {
  // The heron: sides 1/2, top and bottom 5/8. Sheet 9 3/8 x 12 1/2: (W - H)/2 = -1 9/16 - 1/8 = -1 11/16; repeat 1:
  // 5/16 open, on ground -3/16.
  const auto match =
      matchIn(changed(inchExample(), R"("width": "1/2 in" })", R"("width": "1/2 in", "repeat": "1 in" })"));
  CHECK(match.mismatch == Approx(0.3125 * 25.4));
  CHECK(match.options.front().cost == Length::nanometres(25'400'000 / 16 * 3));
  CHECK(editAt(match.options.front(), "/bands/0/offset") == R"({"sides": "11/16 in", "topBottom": "5/8 in"})");
}

TEST_CASE("mismatch and first motifs are the figures' own") {
  for (int repeat = 5; repeat < 60; ++repeat) {
    for (const char* centre :
         {"", R"(, "centre": {"vertical": "ground"})", R"(, "centre": {"horizontal": "ground"})"}) {
      const std::string text =
          exampleWith(R"("repeat": "24 mm")", R"("repeat": ")" + std::to_string(repeat) + R"( mm")" + centre);
      INFO(repeat << centre);
      CHECK(matchIn(text).mismatch == Approx(reread(text, "band.inner.corner.phase")).margin(1e-9));
    }
  }
}

TEST_CASE("plain paper and paper without a repeat have nothing to match") {
  CHECK(matchIn(exampleWith(R"("motif": "mirror")", R"("motif": "plain")")).state == MatchState::Plain);
  CHECK(matchIn(exampleWith(R"("repeat": "24 mm", )", "")).state == MatchState::Plain);
}

TEST_CASE("a directional paper runs round and is told where its last corner closes best") {
  const std::string text = exampleWith(R"("motif": "mirror")", R"("motif": "directional")");
  const auto match = matchIn(text);
  CHECK(match.state == MatchState::Directional);
  CHECK(match.options.empty());
  REQUIRE(match.round);
  // Outer 2(367 + 297) = 1328 = 55 x 24 + 8; mean 1272 = 53 x 24; inner 2(339 + 269) = 1216 = 51 x 24 - 8.
  CHECK(match.round->outer == Approx(8));
  CHECK(match.round->mean == Approx(0).margin(1e-9));
  CHECK(match.round->inner == Approx(-8));
  CHECK(match.round->best == materials::RunRound::Along::Mean);
  CHECK(says(match.notes, "match.seam-at-bottom"));
  CHECK(says(match.notes, "match.round-closes-mean"));
}

TEST_CASE("the offset told for a directional paper closes its last corner") {
  const std::string text = changed(exampleWith(R"("motif": "mirror")", R"("motif": "directional")"),
                                   R"("repeat": "24 mm")", R"("repeat": "25 mm")");
  auto design = designOf(text);
  const auto before = materials::runRound(design.job.bands[0], design.layout.bands[0]);
  REQUIRE(before);
  REQUIRE(std::fabs(before->rest) > 0.3);
  const Length by = Length::nanometres(std::llround(before->offsetBy * 1e6));
  design.job.bands[0].offsetSides = design.job.bands[0].offsetSides + by;
  design.job.bands[0].offsetTopBottom = design.job.bands[0].offsetTopBottom + by;
  base::Problems problems;
  const auto layout = design::layOut(design.job, problems);
  CHECK(!problems.hasErrors());
  CHECK(materials::runRound(design.job.bands[0], layout.bands[0])->rest == Approx(0).margin(1e-5));
}
