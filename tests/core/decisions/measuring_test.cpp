// As made: entered, held, replaced, taken back, contradicted, chosen.
#include <cmath>

#include "core/base/text.h"
#include "core/decisions/made_changes.h"
#include "core/decisions/offers.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;

namespace {

const std::string kMeasureTop = "cut-windows/measure-window@top";

units::Length tenths(int count) { return units::Length::nanometres(count * 100'000LL); }

intents::EnterAsMade measure(const std::string& figure, int tenth, const std::string& overrules = "") {
  return {kMeasureTop, figure, tenths(tenth), overrules};
}

// The shipped techniques, and a maker's own way of measuring a window from the face as well.
craft::Catalogue measuringFaces() {
  craft::Catalogue catalogue = shippedTechniques({"cut-windows"});
  const std::string text = fileText(PROJECT_ROOT "/recipes/cut-windows.technique.json");
  const std::string list = R"("asMade": [)";
  REQUIRE(text.find(list) != std::string::npos);
  addTechnique(catalogue, base::replaceAll(text, list, list + R"("board.this.face.width", )"));
  return catalogue;
}

double get(const jobs::JobState& state, const std::string& figure) {
  const auto* found = state.design->figures.find(figure);
  REQUIRE(found != nullptr);
  return found->value;
}

}  // namespace

TEST_CASE("a measure is kept, what follows is computed from it, and measuring again replaces it", "[measuring]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil(kMeasureTop);
  const std::string before = jobs::dump(bench.state());
  const double strip = get(bench.state(), "band.inner.strip.horizontal");
  REQUIRE(bench.ask(measure("board.top.sight.width", 3170)).empty());
  CHECK(get(bench.state(), "board.top.sight.width") == 317);
  CHECK(get(bench.state(), "band.inner.strip.horizontal") == Approx(strip + 1));
  CHECK(bench.state().plan->design.figures.find("board.top.sight.width")->value == 316);
  const std::string first = bench.lastIntent();
  REQUIRE(bench.ask(measure("board.top.sight.width", 3165)).empty());
  CHECK(get(bench.state(), "band.inner.strip.horizontal") == Approx(strip + 0.5));
  // Taken back: the earlier measure holds again; that too taken back: the first state.
  REQUIRE(bench.ask(intents::Undo{bench.lastIntent()}).empty());
  CHECK(get(bench.state(), "board.top.sight.width") == 317);
  REQUIRE(bench.ask(intents::Undo{first}).empty());
  CHECK(jobs::dump(bench.state()) == before);
  CHECK(bench.state().design.get() == &bench.state().plan->design);
  // And put back.
  REQUIRE(bench.ask(intents::Undo{bench.state().lastUndo}).empty());
  CHECK(get(bench.state(), "board.top.sight.width") == 317);
  REQUIRE(bench.ask(intents::ForgetAsMade{"board.top.sight.width"}).empty());
  CHECK(jobs::dump(bench.state()) == before);
  CHECK(bench.ask(intents::ForgetAsMade{"board.top.sight.width"}) == "record.not-measured");
}

TEST_CASE("the same events give the same design, twice over and in any order", "[measuring]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil(kMeasureTop);
  REQUIRE(bench.ask(measure("board.top.sight.width", 3170)).empty());
  REQUIRE(bench.ask(intents::ChooseFollow{"under", true}).empty());
  auto events = bench.events();
  std::reverse(events.begin(), events.end());
  const auto twice = bench.events();
  events.insert(events.end(), twice.begin(), twice.end());
  const auto again = jobs::fold(bench.plan(), events);
  CHECK(jobs::dump(again) == jobs::dump(bench.state()));
  CHECK(get(again, "visible.width") == get(bench.state(), "visible.width"));
}

TEST_CASE("a measure that cannot be, or not here, or not yet, is refused with the reason", "[measuring]") {
  Bench bench(demoJobText(), shippedTechniques());
  CHECK(bench.ask(measure("board.top.sight.width", 3170)) == "record.not-yet-measured");
  bench.workUntil(kMeasureTop);
  const std::string before = jobs::dump(bench.state());
  CHECK(bench.ask(measure("board.top.sight.width", 1360)) == "made.too-far");
  CHECK(bench.ask(measure("board.top.sight.width", 0)) == "made.no-size");
  CHECK(bench.ask(measure("band.inner.strip.width", 140)) == "record.not-measured-here");
  CHECK(bench.ask(measure("board.top.bevel.plan", 15)) == "record.not-measured-here");
  CHECK(bench.ask(intents::EnterAsMade{"no/step", "outer.width", tenths(4560), ""}) == "record.no-such-step");
  CHECK(bench.ask(measure("board.top.sight.width", 3070)) == "job.reveal-within-bevel");
  CHECK(bench.ask(intents::ChooseFollow{"top", true}) == "record.no-such-board");
  CHECK(jobs::dump(bench.state()) == before);
}

TEST_CASE("sight and face that do not agree are asked about, and one overrules the other", "[measuring]") {
  Bench bench(demoJobText(), measuringFaces());
  bench.workUntil(kMeasureTop);
  REQUIRE(bench.ask(measure("board.top.sight.width", 3170)).empty());
  CHECK(bench.ask(measure("board.top.face.width", 3190)) == "made.sight-against-face");
  REQUIRE(bench.ask(measure("board.top.face.width", 3190, "board.top.sight.width")).empty());
  CHECK_FALSE(bench.state().measures.contains("board.top.sight.width"));
  CHECK(get(bench.state(), "board.top.sight.width") == Approx(316));
  REQUIRE(bench.ask(intents::Undo{bench.lastIntent()}).empty());
  CHECK(get(bench.state(), "board.top.sight.width") == 317);
  CHECK(get(bench.state(), "board.top.face.width") == 320);
}

TEST_CASE("cover or reveal is offered while the inner window is not cut, and no longer after", "[measuring]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil(kMeasureTop);
  const auto choices = [&] {
    int count = 0;
    for (const auto& offer : decisions::offers(bench.at()))
      count += offer.intent.index() == intents::Intent(intents::ChooseFollow()).index();
    return count;
  };
  CHECK(choices() == 0);
  REQUIRE(bench.ask(measure("board.top.sight.width", 3170)).empty());
  CHECK(choices() == 2);
  CHECK(decisions::boardToFollow(bench.state()) == "under");
  REQUIRE(bench.ask(intents::ChooseFollow{"under", true}).empty());
  CHECK(get(bench.state(), "visible.width") == 305);
  bench.workUntil("cut-windows/measure-window@under");
  CHECK(choices() == 0);
  CHECK(bench.ask(intents::ChooseFollow{"under", false}) == "record.window-already-cut");
}

TEST_CASE("what changed is listed, and finished steps it contradicts", "[measuring]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil(kMeasureTop);
  const auto with = decisions::designWith(bench.state(), "board.top.sight.width", tenths(3170));
  REQUIRE(with.design);
  auto changes = decisions::changesBetween(bench.state(), *bench.state().design, *with.design);
  CHECK(changes.contradicted.empty());
  const auto changed = [&](const std::string& figure) {
    return std::any_of(changes.figures.begin(), changes.figures.end(),
                       [&](const auto& one) { return one.figure == figure && one.ahead; });
  };
  CHECK(changed("band.inner.strip.horizontal"));
  CHECK_FALSE(changed("board.top.sight.width"));
  // The same measure once the strips are cut: it is told which step was worked with the old figure.
  bench.workUntil("paper-bands/fit@inner");
  changes = decisions::changesBetween(bench.state(), *bench.state().design, *with.design);
  bool strips = false;
  for (const auto& one : changes.contradicted) {
    strips = strips || one.change.figure == "band.inner.strip.horizontal";
    CHECK(bench.state().steps[one.step].status == jobs::StepStatus::Done);
    CHECK(one.change.figure.rfind("board.top.", 0) != 0);
  }
  CHECK(strips);
}

TEST_CASE("a measure later steps were worked with is not taken back", "[measuring]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil(kMeasureTop);
  REQUIRE(bench.ask(measure("board.top.sight.width", 3170)).empty());
  const std::string act = bench.lastIntent();
  bench.workUntil("paper-bands/fit@inner");
  CHECK(bench.ask(intents::Undo{act}) == "record.others-rest-on-it");
  CHECK(get(bench.state(), "band.inner.strip.horizontal") == Approx(380));
}

TEST_CASE("a new blank forgets what was measured of the old one", "[measuring]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil(kMeasureTop);
  REQUIRE(bench.ask(measure("board.top.sight.width", 3170)).empty());
  REQUIRE(bench.ask(intents::ReportFault{kMeasureTop, "wrong-size"}).empty());
  CHECK(bench.state().measures.empty());
  CHECK(get(bench.state(), "board.top.sight.width") == 316);
  REQUIRE(bench.ask(intents::Undo{bench.lastIntent()}).empty());
  CHECK(get(bench.state(), "board.top.sight.width") == 317);
}

TEST_CASE("a new blank is cut to the size of the boards that lie there", "[measuring]") {
  const std::string markTop = "square-boards/mark-corner@top";
  const std::string markUnder = "square-boards/mark-corner@under";
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil(markTop);
  const double planned = get(bench.state(), "outer.width");
  const auto wider = units::Length::nanometres(std::llround(planned * 1e6) + 800'000);
  REQUIRE(bench.ask(intents::EnterAsMade{markTop, "outer.width", wider, ""}).empty());

  SECTION("the other board was cut to that size and its measure passed over") {
    bench.workUntil(kMeasureTop);
    REQUIRE(bench.at().isDone(*bench.plan()->workflow.indexOf(markUnder)));
    REQUIRE(bench.ask(intents::ReportFault{kMeasureTop, "wrong-size"}).empty());
    REQUIRE_FALSE(bench.at().isDone(*bench.plan()->workflow.indexOf(markTop)));
    CHECK(get(bench.state(), "outer.width") == Approx(planned + 0.8));
    // And what follows from it.
    CHECK(get(bench.state(), "board.top.border.right") + get(bench.state(), "board.top.border.left") +
              get(bench.state(), "board.top.sight.width") ==
          Approx(planned + 0.8));
    // The under board made anew as well, nothing holds it any more.
    REQUIRE(bench.ask(intents::ReportFault{markUnder, "out-of-square", "new-blank"}).empty());
    CHECK(get(bench.state(), "outer.width") == Approx(planned));
  }
  SECTION("the other board was measured itself") {
    bench.workUntil(markUnder);
    const auto own = units::Length::nanometres(std::llround(planned * 1e6) + 600'000);
    REQUIRE(bench.ask(intents::EnterAsMade{markUnder, "outer.width", own, ""}).empty());
    bench.workUntil(kMeasureTop);
    REQUIRE(bench.ask(intents::ReportFault{kMeasureTop, "wrong-size"}).empty());
    CHECK(get(bench.state(), "outer.width") == Approx(planned + 0.6));
    // Made anew in its turn, the under board's measure goes; the top board is not measured yet.
    REQUIRE(bench.ask(intents::ReportFault{markUnder, "out-of-square", "new-blank"}).empty());
    CHECK(get(bench.state(), "outer.width") == Approx(planned));
  }
  SECTION("no other board is cut yet") {
    REQUIRE(bench.finish(markTop).empty());
    REQUIRE(bench.ask(intents::ReportFault{markTop, "out-of-square", "new-blank"}).empty());
    CHECK(get(bench.state(), "outer.width") == Approx(planned));
  }
  SECTION("said to be as computed again, it is so on every board") {
    bench.workUntil(kMeasureTop);
    REQUIRE(bench.ask(intents::ForgetAsMade{"outer.width"}).empty());
    REQUIRE(bench.ask(intents::ReportFault{kMeasureTop, "wrong-size"}).empty());
    CHECK(get(bench.state(), "outer.width") == Approx(planned));
  }
}

TEST_CASE("a hostile measure on record is left out or told, never believed", "[measuring]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil(kMeasureTop);
  REQUIRE(bench.ask(measure("board.top.sight.width", 3170)).empty());
  auto events = bench.events();
  REQUIRE(events.back().type == record::Measured::kType);
  const auto with = [&](const char* key, base::Value value) {
    auto changed = events;
    changed.back().payload.set(key, std::move(value));
    return jobs::fold(bench.plan(), changed);
  };
  CHECK(with("nanometres", base::Value::integer(-5)).measures.empty());
  CHECK(with("nanometres", base::Value::text("317 mm")).measures.empty());
  CHECK(with("figure", base::Value::text("board.top.bevel.plan")).measures.empty());
  CHECK(with("figure", base::Value::text("board.none.sight.width")).measures.empty());
  // Believable as a length but not as this window: the plan's figures stay, and the reason is there.
  const auto narrow = with("nanometres", base::Value::integer(100'000'000));
  CHECK_FALSE(narrow.unmeasurable.id.empty());
  CHECK(get(narrow, "board.top.sight.width") == 316);
}
