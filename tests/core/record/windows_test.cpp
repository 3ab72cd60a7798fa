#include <algorithm>

#include "core/record/alert_schedule.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;
using Kind = record::BenchPlace::Kind;

namespace {

const char* const kBrush = "strips-adhesive/brush@inner.top";
const char* const kLay = "strips-adhesive/lay@inner.top";

const record::RunningWait& windowOf(const Bench& bench, const std::string& step) {
  const auto index = bench.plan()->workflow.indexOf(step);
  REQUIRE(index);
  const auto* window = bench.at().gate(*index);
  REQUIRE(window != nullptr);
  return *window;
}

// A size that must tack for twenty minutes, its laying, and an act that cannot be left.
craft::Catalogue sizeAndLay() {
  craft::Catalogue catalogue;
  const std::string always = R"("when": {"always": true})";
  addTechnique(catalogue,
               oneStepTechnique("brush-size", R"("piece.sized")", always, R"("waits": [{"id": "tack", "kind": "tack",
    "title": "size tacks", "makes": "piece.tack",
    "opens": {"early": "15 min", "likely": "20 min", "late": "30 min"},
    "closes": {"early": "40 min", "likely": "60 min", "late": "90 min"}, "model": "evaporation", "test": "Touch it.",
    "source": "common practice", "ifMissed": {"do": "Size again.", "ends": ["piece.sized"]}}], )"));
  addTechnique(catalogue, oneStepTechnique("lay", R"("piece.laid")", always, R"("needs": ["piece.tack"], )"));
  std::string longer =
      oneStepTechnique("long-act", R"("piece.long")", always, R"("uninterruptible": true, "needs": ["piece.sized"], )");
  const std::string usual = R"({"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"})";
  longer.replace(longer.find(usual), usual.size(),
                 R"({"early": "30 min", "likely": "50 min", "late": "60 min", "source": "common practice"})");
  addTechnique(catalogue, longer);
  return catalogue;
}

std::vector<std::pair<std::string, std::int64_t>> alertMinutes(const Bench& bench) {
  std::vector<std::pair<std::string, std::int64_t>> alerts;
  for (const auto& alert : record::alertsOf(bench.at())) {
    alerts.emplace_back(intents::name(alert.alert),
                        (alert.dueBoottimeNanoseconds - bench.now().boottimeNanoseconds) / 60'000'000'000);
  }
  std::sort(alerts.begin(), alerts.end());
  return alerts;
}

}  // namespace

TEST_CASE("an open time gates its step, and missing it brings back what the technique says", "[windows]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil(kBrush);
  REQUIRE(bench.finish(kBrush).empty());
  CHECK(bench.shown() == kLay);
  const std::string wait = windowOf(bench, kLay).id;
  bench.advance(120);
  CHECK(bench.place().kind == Kind::Missed);
  CHECK(bench.place().wait == wait);
  CHECK(bench.finish(kLay) == "record.window-closed");
  REQUIRE(bench.ask(intents::MendMissed{wait}).empty());
  CHECK(bench.shown() == kBrush);
  REQUIRE(bench.finish(kBrush).empty());
  CHECK(bench.finish(kLay).empty());
}

TEST_CASE("a step begun inside its window may be finished after it", "[windows]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil(kBrush);
  REQUIRE(bench.finish(kBrush).empty());
  REQUIRE(bench.ask(intents::BeginStep{kLay}).empty());
  CHECK(record::alertsOf(bench.at()).size() ==
        static_cast<std::size_t>(std::count_if(bench.state().waits.begin(), bench.state().waits.end(),
                                               [&](const auto& entry) { return bench.at().matters(entry.second); })));
  bench.advance(120);
  CHECK(bench.shown() == kLay);
  CHECK(bench.finish(kLay).empty());
}

TEST_CASE("the maker's word that a step was begun in time is taken, and kept", "[windows]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil(kBrush);
  REQUIRE(bench.finish(kBrush).empty());
  bench.advance(120);
  intents::FinishStep inTime;
  inTime.step = kLay;
  inTime.begunInTime = true;
  inTime.checkAnswers.assign(bench.plan()->workflow.find(kLay)->checks.size(), "yes");
  CHECK(bench.ask(inTime).empty());
  const auto* word = bench.events().back().payload.find("begunInTime");
  REQUIRE(word != nullptr);
  CHECK(word->asBoolean());
}

TEST_CASE("a tack window calls when it opens and in time before it closes, once each", "[windows]") {
  Bench bench(demoJobText(), sizeAndLay());
  REQUIRE(bench.finish("brush-size/act").empty());
  using Alerts = std::vector<std::pair<std::string, std::int64_t>>;
  CHECK(alertMinutes(bench) == Alerts{{"closing", 38}, {"open", 20}});
  const std::string wait = "brush-size/act/tack";
  bench.advance(20);
  REQUIRE(bench.ask(intents::Hear{wait, intents::AlertClass::Open}).empty());
  CHECK(alertMinutes(bench) == Alerts{{"closing", 18}});
  CHECK(bench.ask(intents::Hear{wait, intents::AlertClass::Open}) == "record.already-heard");
  REQUIRE(bench.ask(intents::LookAt{wait, intents::Verdict::NotYet}).empty());
  // The opening moved, so it will be called again.
  CHECK(alertMinutes(bench) == Alerts{{"closing", 18}, {"open", 3}});
  bench.advance(4);
  REQUIRE(bench.ask(intents::LookAt{wait, intents::Verdict::Tacky}).empty());
  CHECK(bench.shown() == "lay/act");
  CHECK(alertMinutes(bench).empty());
  CHECK(bench.finish("lay/act").empty());
}

TEST_CASE("what cannot be left is not begun so late that a window closes meanwhile", "[windows]") {
  Bench bench(demoJobText(), sizeAndLay());
  REQUIRE(bench.finish("brush-size/act").empty());
  const auto decision = record::decide(bench.at(), intents::BeginStep{"long-act/act"});
  REQUIRE_FALSE(decision);
  CHECK(decision.error().id == "record.would-miss-window");
  bench.advance(20);
  REQUIRE(bench.finish("lay/act").empty());
  CHECK(bench.ask(intents::BeginStep{"long-act/act"}).empty());
}

TEST_CASE("waits run on through a power cut", "[windows]") {
  Bench bench(demoJobText(), sizeAndLay());
  REQUIRE(bench.finish("brush-size/act").empty());
  bench.advance(5);
  bench.reboot(10);
  using Alerts = std::vector<std::pair<std::string, std::int64_t>>;
  CHECK(alertMinutes(bench) == Alerts{{"closing", 23}, {"open", 5}});
  bench.advance(5);
  CHECK(bench.shown() == "lay/act");
}

TEST_CASE("a step with a blade in the hand is told to the alerts", "[windows]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil("cut-windows/cut-window@top");
  CHECK_FALSE(record::bladeInHand(bench.at()));
  REQUIRE(bench.ask(intents::BeginStep{"cut-windows/cut-window@top"}).empty());
  CHECK(record::bladeInHand(bench.at()));
  REQUIRE(bench.finish("cut-windows/cut-window@top").empty());
  CHECK_FALSE(record::bladeInHand(bench.at()));
}

TEST_CASE("a preparation outlives its shelf life only for what still needs it", "[windows]") {
  craft::Catalogue catalogue;
  addTechnique(
      catalogue,
      oneStepTechnique(
          "brew", R"("paste.brew.ready")",
          R"("when": {"needed": true}, "scope": "shop", "keeps": {"for": "2 h", "source": "common practice"})", ""));
  addTechnique(catalogue, oneStepTechnique("user", R"("piece.pasted")", R"("when": {"always": true})",
                                           R"("needs": ["paste.brew.ready"], )"));
  addTechnique(catalogue, oneStepTechnique("later", R"("piece.later")", R"("when": {"always": true})",
                                           R"("needs": ["piece.pasted"], )"));
  Bench bench(demoJobText(), catalogue);
  REQUIRE(bench.finish("brew/act").empty());
  CHECK(bench.events().back().stream == "bench/device");
  CHECK(bench.shown() == "user/act");
  bench.advance(180);
  CHECK(bench.shown() == "brew/act");
  REQUIRE(bench.finish("brew/act").empty());
  REQUIRE(bench.finish("user/act").empty());
  bench.advance(180);
  CHECK(bench.shown() == "later/act");
  REQUIRE(bench.finish("later/act").empty());
  CHECK(bench.place().kind == Kind::Finished);
}
