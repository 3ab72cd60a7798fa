// What was measured stands, what came before it stays, what follows it is computed from it.
#include <cmath>
#include <random>

#include "core/design/design.h"
#include "tests/core/design/figure_of.h"
#include "tests/support/catch.h"
#include "tests/support/random_mounts.h"
#include "tests/support/recipes.h"
#include "tests/support/worked_example.h"

using namespace core;
using design::AsMade;
using design::Design;
using tests::figureOf;
using units::Length;

namespace {

Length tenths(int count) { return Length::nanometres(count * 100'000LL); }

Design made(const Design& planned, const AsMade& asMade) {
  auto read = design::remeasured(planned, asMade);
  for (const auto& problem : read.problems.sorted()) UNSCOPED_INFO(base::dump(problem));
  REQUIRE(read.design);
  return std::move(*read.design);
}

std::vector<std::string> refusals(const Design& planned, const AsMade& asMade) {
  std::vector<std::string> ids;
  const auto read = design::remeasured(planned, asMade);
  CHECK(read.design.has_value() != read.problems.hasErrors());
  for (const auto& problem : read.problems.sorted()) ids.push_back(problem.message.id);
  return ids;
}

// Every equation of a mount between its figures, measured or not. A measured figure that two equations would fix is
// left to the measure: `free` names the equations not asked.
void checkEquations(const Design& d, const AsMade& pins) {
  const auto pinned = [&](const std::string& id) { return pins.pins.contains(id); };
  const auto near = [](double value) { return Approx(value).margin(1e-9).epsilon(0); };
  for (std::size_t i = 0; i < d.job.boards.size(); ++i) {
    const std::string b = "board." + d.job.boards[i].id + '.';
    const double plan = figureOf(d, b + "bevel.plan");
    const double t = figureOf(d, b + "thickness");
    const auto angle = d.job.boards[i].bevelAngle;
    CHECK(plan == near(angle.inDegrees() == 90 ? 0 : t / angle.tangent()));
    const char* ways[][3] = {{"width", "left", "right"}, {"height", "top", "bottom"}};
    for (const auto& way : ways) {
      const std::string border = b + "border.";
      const double outer = figureOf(d, std::string("outer.") + way[0]);
      const bool closed = pinned(border + way[1]) && pinned(border + way[2]) &&
                          (pinned(b + "sight." + way[0]) || pinned(b + "face." + way[0]));
      const double sum =
          figureOf(d, border + way[1]) + figureOf(d, b + "sight." + way[0]) + figureOf(d, border + way[2]);
      CHECK(sum == Approx(outer).margin(closed ? 0.5 + 1e-9 : 1e-9).epsilon(0));
      const bool both = pinned(b + "sight." + way[0]) && pinned(b + "face." + way[0]);
      CHECK(figureOf(d, b + "face." + way[0]) ==
            Approx(figureOf(d, b + "sight." + way[0]) + 2 * plan).margin(both ? 0.3 + 1e-9 : 1e-9).epsilon(0));
    }
    if (i == 0) continue;
    const std::string above = "board." + d.job.boards[i - 1].id + ".border.";
    const auto* left = d.figures.find(b + "reveal.left");
    double least = 1e9;
    for (const char* side : {"left", "right", "top", "bottom"}) {
      const double reveal = figureOf(d, b + "border." + side) - figureOf(d, above + side);
      CHECK((left == nullptr ? figureOf(d, b + "reveal") : figureOf(d, b + "reveal." + side)) == near(reveal));
      least = std::min(least, reveal);
    }
    CHECK(figureOf(d, b + "reveal") == near(least));
    CHECK(figureOf(d, b + "reveal.flat") == near(least - plan));
  }
  const std::string top = "board." + d.job.boards[0].id + '.';
  for (const char* side : {"left", "right", "top", "bottom"}) {
    CHECK(figureOf(d, std::string("border.seen.") + side) ==
          near(figureOf(d, top + "border." + side) - figureOf(d, top + "bevel.plan")));
  }
  const std::string inmost = "board." + d.job.boards.back().id + '.';
  CHECK(figureOf(d, "visible.width") == figureOf(d, inmost + "sight.width"));
  CHECK(figureOf(d, "visible.height") == figureOf(d, inmost + "sight.height"));
  const double cover = (d.job.artwork.width.inMillimetres() - figureOf(d, "visible.width")) / 2;
  CHECK(figureOf(d, "art.left") ==
        near(figureOf(d, inmost + "border.left") - cover - d.job.artwork.sheet.left.inMillimetres()));
  double width = figureOf(d, top + "face.width");
  for (const auto& band : d.job.bands) {
    const std::string b = "band." + band.id + '.';
    if (!pinned(b + "inner.width")) {
      CHECK(figureOf(d, b + "inner.width") == near(width + 2 * band.offsetSides.inMillimetres()));
    }
    CHECK(figureOf(d, b + "outer.width") == near(figureOf(d, b + "inner.width") + 2 * figureOf(d, b + "strip.width")));
    if (!pinned(b + "strip.horizontal")) {
      CHECK(figureOf(d, b + "strip.horizontal") ==
            near(figureOf(d, b + "outer.width") + 2 * band.trim.inMillimetres()));
    }
    CHECK(figureOf(d, b + "mitre") == near(figureOf(d, b + "strip.width") * std::sqrt(2.0)));
    width = figureOf(d, b + "outer.width");
  }
  CHECK(figureOf(d, "rebate.width") == near(figureOf(d, "outer.width") + d.job.rebate.allowanceTotal.inMillimetres()));
}

// Board figures that a measure of a board further in, or of a band, comes after.
void checkSame(const Design& before, const Design& after, const std::string& prefix) {
  for (const auto& figure : before.figures.all()) {
    if (figure.id.rfind(prefix, 0) != 0) continue;
    INFO(figure.id);
    CHECK(figureOf(after, figure.id) == figure.value);
  }
}

}  // namespace

TEST_CASE("a thousand random mounts as made: pins stand, what came before is the same to the last bit", "[as-made]") {
  tests::RandomMounts maker(2611);
  std::mt19937 random(4);
  const auto off = [&](int most) { return std::uniform_int_distribution<int>(-most, most)(random); };
  const auto choose = [&](int of) { return std::uniform_int_distribution<int>(0, of - 1)(random) == 0; };
  int laid = 0, refused = 0;
  for (int round = 0; round < 1000; ++round) {
    const std::string text = maker.job();
    INFO(text);
    const Design planned = tests::designOf(text);
    AsMade pins;
    const auto pin = [&](const std::string& id, int most) {
      const double tenth = std::round(figureOf(planned, id) * 10);
      pins.pins[id] = tenths(static_cast<int>(tenth) + off(most));
    };
    std::size_t outermostPinned = planned.job.boards.size();
    for (std::size_t i = 0; i < planned.job.boards.size(); ++i) {
      const auto& board = planned.job.boards[i];
      const std::string b = "board." + board.id + '.';
      const auto before = pins.pins.size();
      for (const char* name :
           {"sight.width", "sight.height", "face.width", "border.left", "border.right", "border.top"}) {
        if (choose(4)) pin(b + name, 8);
      }
      if (choose(3)) pin(b + "thickness", 1);
      if (pins.pins.size() > before) outermostPinned = std::min(outermostPinned, i);
      if (i > 0 && choose(2)) pins.follows[board.id] = design::Follow::Reveal;
    }
    for (const auto& band : planned.job.bands) {
      for (const char* name : {"inner.width", "strip.width", "strip.horizontal"}) {
        if (choose(5)) pin("band." + band.id + '.' + name, 2);
      }
    }
    const auto read = design::remeasured(planned, pins);
    if (!read.design) {
      // Contradictions alone refuse here, each told by its own words.
      ++refused;
      for (const auto& problem : read.problems.sorted()) {
        INFO(base::dump(problem));
        CHECK((problem.message.id.rfind("made.", 0) == 0 || problem.message.id.rfind("job.", 0) == 0));
      }
      continue;
    }
    ++laid;
    for (const auto& [id, value] : pins.pins) {
      CHECK(figureOf(*read.design, id) == value.inMillimetres());
      CHECK(read.design->figures.find(id)->made);
    }
    checkEquations(*read.design, pins);
    for (std::size_t i = 0; i < outermostPinned; ++i) {
      checkSame(planned, *read.design, "board." + planned.job.boards[i].id + '.');
    }
    CHECK(figureOf(*read.design, "outer.width") == figureOf(planned, "outer.width"));
    // Unpinned, everything is as it was.
    const Design back = made(*read.design, AsMade());
    REQUIRE(back.figures.all().size() == planned.figures.all().size());
    for (std::size_t i = 0; i < back.figures.all().size(); ++i) {
      CHECK(back.figures.all()[i].value == planned.figures.all()[i].value);
      CHECK(back.figures.all()[i].display == planned.figures.all()[i].display);
    }
  }
  CHECK(laid > 600);
  CHECK(refused > 20);
}

TEST_CASE("each measure alone: nothing outside it and what follows it moves", "[as-made]") {
  const Design planned = tests::designOf(tests::workedExample());
  AsMade inner;
  inner.pins["board.under.sight.width"] = tenths(3050);
  const Design d = made(planned, inner);
  checkSame(planned, d, "board.top.");
  checkSame(planned, d, "band.");
  checkSame(planned, d, "line.");
  CHECK(figureOf(d, "visible.width") == 305);
  // 1 mm wider, even in the opening above: half a millimetre less to each side.
  CHECK(figureOf(d, "board.under.border.left") == Approx(75.5));
  CHECK(figureOf(d, "board.under.reveal") == Approx(5.5));
  CHECK(figureOf(d, "board.under.reveal.top") == Approx(6));
  CHECK(figureOf(d, "art.left") == Approx(63));
}

TEST_CASE("the top window 1 mm wide: cover or reveal is kept, and bands follow the face edge", "[as-made]") {
  const Design planned = tests::designOf(tests::workedExample());
  AsMade wide;
  wide.pins["board.top.sight.width"] = Length::wholeMillimetres(317);
  const Design cover = made(planned, wide);
  CHECK(figureOf(cover, "outer.width") == 456);
  CHECK(figureOf(cover, "board.top.border.left") == 70);
  CHECK(figureOf(cover, "board.top.border.right") == 69);
  CHECK(figureOf(cover, "board.top.face.width") == 320);
  CHECK(figureOf(cover, "visible.width") == figureOf(planned, "visible.width"));
  CHECK(figureOf(cover, "board.under.reveal.left") == Approx(6.5));
  CHECK(figureOf(cover, "board.under.reveal.right") == Approx(6.5));
  CHECK(figureOf(cover, "board.under.reveal.top") == Approx(6));
  CHECK(figureOf(cover, "board.under.reveal.flat") == Approx(4));
  CHECK(figureOf(cover, "band.inner.inner.width") == 340);
  CHECK(figureOf(cover, "band.inner.strip.horizontal") == 380);
  CHECK(figureOf(cover, "band.inner.strip.vertical") == figureOf(planned, "band.inner.strip.vertical"));
  // The corners meet as the outer edge says: (368 - 297) / 2 = 35.5, 11.5 beyond a repeat of 24.
  CHECK(figureOf(cover, "band.inner.corner.phase") == Approx(11.5));

  wide.follows["under"] = design::Follow::Reveal;
  const Design reveal = made(planned, wide);
  CHECK(figureOf(reveal, "visible.width") == 305);
  CHECK(figureOf(reveal, "board.under.reveal") == 6);
  CHECK(reveal.figures.find("board.under.reveal.left") == nullptr);
  CHECK(figureOf(reveal, "board.under.border.left") == Approx(76));
  CHECK(figureOf(reveal, "art.left") == Approx(63.5));
}

TEST_CASE("a band marked elsewhere, strips cut narrower and shorter", "[as-made]") {
  const Design planned = tests::designOf(tests::workedExample());
  AsMade pins;
  pins.pins["band.inner.inner.width"] = tenths(3396);
  pins.pins["band.inner.strip.width"] = tenths(138);
  pins.pins["band.inner.strip.vertical"] = tenths(3080);
  const Design d = made(planned, pins);
  CHECK(figureOf(d, "band.inner.outer.width") == Approx(367.2));
  CHECK(figureOf(d, "band.inner.strip.horizontal") == Approx(379.2));
  CHECK(figureOf(d, "band.inner.outer.height") == Approx(296.6));
  // 308.0 reaches 5.7 beyond each outer corner, less than the trim of the others: glue from the longer.
  CHECK(figureOf(d, "band.inner.glueFrom") == Approx(26));
  CHECK(figureOf(d, "line.inside.horizontal") == Approx(338.6));
  pins.pins["band.inner.strip.vertical"] = tenths(2960);
  CHECK(refusals(planned, pins) == std::vector<std::string>{"made.strip-too-short"});
}

TEST_CASE("measures that contradict each other are refused with the reason", "[as-made]") {
  const Design planned = tests::designOf(tests::workedExample());
  AsMade pins;
  pins.pins["board.top.sight.width"] = tenths(3160);
  pins.pins["board.top.face.width"] = tenths(3193);
  CHECK(refusals(planned, pins).empty());
  pins.pins["board.top.face.width"] = tenths(3194);
  CHECK(refusals(planned, pins) == std::vector<std::string>{"made.sight-against-face"});
  pins.pins.erase("board.top.face.width");
  pins.pins["board.top.border.left"] = tenths(700);
  pins.pins["board.top.border.right"] = tenths(705);
  CHECK(refusals(planned, pins).empty());
  pins.pins["board.top.border.right"] = tenths(706);
  CHECK(refusals(planned, pins) == std::vector<std::string>{"made.borders-against-outer"});

  AsMade small;
  small.pins["board.top.sight.width"] = tenths(3070);
  CHECK(refusals(planned, small) == std::vector<std::string>{"job.reveal-within-bevel"});
  small.follows["under"] = design::Follow::Reveal;
  CHECK(refusals(planned, small).empty());

  AsMade open;
  open.pins["board.under.sight.width"] = tenths(3112);
  CHECK(refusals(planned, open) == std::vector<std::string>{"made.shows-beyond"});

  AsMade skew;
  skew.pins["board.top.diagonal.marked"] = tenths(4002);
  skew.pins["board.top.diagonal.other"] = tenths(4008);
  CHECK(refusals(planned, skew) == std::vector<std::string>{"made.out-of-square"});
  skew.pins["board.top.diagonal.other"] = tenths(4060);
  CHECK(refusals(planned, skew) == std::vector<std::string>{"made.diagonals-against-opening"});
}

TEST_CASE("a measure far from the computed one is taken for a slip", "[as-made]") {
  CHECK_FALSE(design::implausible("board.top.sight.width", tenths(3170), 316));
  CHECK(design::implausible("board.top.sight.width", tenths(1360), 316)->id == "made.too-far");
  CHECK(design::implausible("board.top.sight.width", Length(), 316)->id == "made.no-size");
  CHECK(design::implausible("board.top.thickness", Length::wholeMillimetres(15), 1.5)->id == "made.too-far");
  CHECK_FALSE(design::implausible("board.top.thickness", tenths(16), 1.5));
}

TEST_CASE("a shaped window as made keeps its form", "[as-made][shaped]") {
  const char* shapes[] = {R"("shape": "ogee", "rise": "110 mm", "radius": "60 mm")",
                          R"("shape": "arch", "head": "round")", R"("shape": "oval")",
                          R"("shape": "rounded", "corner": "15 mm")"};
  int tried = 0;
  for (const std::string shape : shapes) {
    const std::string text = R"({"format": "mountwright-job/1", "artwork": {"width": "206 mm", "height": "306 mm"},
      "mount": {"window": {)" +
                             shape + R"(, "overlap": "3 mm"}, "boards": [
      {"id": "top", "thickness": "1.5 mm"}, {"id": "under", "thickness": "1.5 mm", "reveal": "6 mm"}],
      "borders": {"sides": "70 mm", "weighting": "equal"}}})";
    INFO(text);
    const auto read = design::readDesign(text);
    if (!read.design) continue;  // the form's own entries may be other ones
    ++tried;
    AsMade pins;
    const double width = figureOf(*read.design, "board.top.sight.width");
    const double height = figureOf(*read.design, "board.top.sight.height");
    pins.pins["board.top.sight.width"] = Length::nanometres(std::llround(width * 1e6) + 1'000'000);
    pins.pins["board.top.sight.height"] = Length::nanometres(std::llround(height * 1e6) + 500'000);
    const Design d = made(*read.design, pins);
    const auto& top = d.layout.boards[0];
    const auto bounds = top.sightOutline.bounds();
    CHECK(bounds.right - bounds.left == Approx(width + 1).margin(1e-6));
    CHECK(bounds.bottom - bounds.top == Approx(height + 0.5).margin(1e-6));
    CHECK(bounds.left == Approx(top.borderLeft).margin(1e-6));
    CHECK(bounds.top == Approx(top.borderTop).margin(1e-6));
    CHECK(top.sightArea > read.design->layout.boards[0].sightArea);
    CHECK(d.layout.boards[1].sightArea == Approx(read.design->layout.boards[1].sightArea));
    const Design back = made(d, AsMade());
    CHECK(back.layout.boards[0].sightArea == read.design->layout.boards[0].sightArea);
  }
  CHECK(tried >= 3);
}
