#include <algorithm>

#include "core/alerts/alert_schedule.h"
#include "core/decisions/offers.h"
#include "core/jobs/looks.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;
using Kind = jobs::BenchPlace::Kind;

namespace {

const char* const kBrush = "strips-adhesive/brush@inner.top";
const char* const kLay = "strips-adhesive/lay@inner.top";

const jobs::RunningWait& windowOf(const Bench& bench, std::string_view step) {
  const auto index = bench.plan()->workflow.indexOf(std::string(step));
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
    "closes": {"early": "40 min", "likely": "60 min", "late": "100 min"}, "model": "none", "test": "Touch it.",
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

using Alerts = std::vector<std::pair<std::string, std::int64_t>>;

Alerts alertMinutes(const Bench& bench) {
  Alerts alerts;
  for (const auto& alert : alerts::alertsOf(bench.at()).alerts) {
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
  const std::string wait = windowOf(bench, kLay).id;
  REQUIRE(bench.ask(intents::BeginStep{kLay}).empty());
  const auto alerts = alerts::alertsOf(bench.at()).alerts;
  CHECK(std::none_of(alerts.begin(), alerts.end(), [&](const auto& alert) { return alert.wait == wait; }));
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
  inTime.checked = static_cast<std::int64_t>(bench.plan()->workflow.find(kLay)->checks.size());
  CHECK(bench.ask(inTime).empty());
  const auto* word = bench.events().back().payload.find("begunInTime");
  REQUIRE(word != nullptr);
  CHECK(word->asBoolean());
}

TEST_CASE("a tack window calls to lay out, to look, when it should be open, to begin and when it is missed",
          "[windows]") {
  Bench bench(demoJobText(), sizeAndLay());
  REQUIRE(bench.finish("brush-size/act").empty());
  CHECK(alertMinutes(bench) == Alerts{{"closing", 38}, {"look", 16}, {"missed", 90}, {"open", 27}, {"soon", 6}});
  const std::string wait = "brush-size/act/tack";
  // What a later call has overtaken is not called any more.
  bench.advance(17);
  CHECK(alertMinutes(bench) == Alerts{{"closing", 21}, {"look", 0}, {"missed", 73}, {"open", 10}});
  bench.advance(11);
  REQUIRE(bench.ask(intents::Hear{wait, intents::AlertClass::Open}).empty());
  CHECK(alertMinutes(bench) == Alerts{{"closing", 10}, {"missed", 62}});
  CHECK(bench.ask(intents::Hear{wait, intents::AlertClass::Open}) == "record.already-heard");
  REQUIRE(bench.ask(intents::LookAt{wait, intents::Verdict::NotYet}).empty());
  // The opening moved and the closing with it, so it will be called again.
  CHECK(alertMinutes(bench) == Alerts{{"closing", 23}, {"look", 1}, {"missed", 67}, {"open", 5}});
  bench.advance(4);
  REQUIRE(bench.ask(intents::LookAt{wait, intents::Verdict::Tacky}).empty());
  CHECK(bench.shown() == "lay/act");
  CHECK(alertMinutes(bench).empty());
  CHECK(bench.finish("lay/act").empty());
}

TEST_CASE("what an alert says names the piece, the wait and the act", "[windows]") {
  Bench bench(demoJobText(), sizeAndLay());
  REQUIRE(bench.finish("brush-size/act").empty());
  int closing = 0;
  for (const auto& alert : alerts::alertsOf(bench.at()).alerts) {
    INFO(base::dump(alert.say));
    CHECK_FALSE(alert.say.id.empty());
    for (const char* argument : {"piece", "wait", "answer", "act", "tools"}) CHECK(alert.say.argument(argument));
    ++closing;
  }
  CHECK(closing > 3);
}

TEST_CASE("an alert is put off for two or five minutes and never past the moment its act begins", "[windows]") {
  Bench bench(demoJobText(), sizeAndLay());
  REQUIRE(bench.finish("brush-size/act").empty());
  const std::string wait = "brush-size/act/tack";
  using intents::AlertClass;
  CHECK(bench.ask(intents::Snooze{wait, AlertClass::Open, 5}) == "record.nothing-to-put-off");
  bench.advance(28);
  CHECK(bench.ask(intents::Snooze{wait, AlertClass::Open, 7}) == "record.not-put-off");
  REQUIRE(bench.ask(intents::Snooze{wait, AlertClass::Open, 5}).empty());
  CHECK(alertMinutes(bench) == Alerts{{"closing", 10}, {"missed", 62}, {"open", 5}});
  bench.advance(6);
  CHECK(bench.ask(intents::Snooze{wait, AlertClass::Open, 5}) == "record.not-put-off");
  REQUIRE(bench.ask(intents::Snooze{wait, AlertClass::Open, 2}).empty());
  bench.advance(5);
  CHECK(bench.ask(intents::Snooze{wait, AlertClass::Closing, 2}) == "record.not-put-off");
}

TEST_CASE("a missed window is called once, plainly, and found past it by touch not at all", "[windows]") {
  Bench bench(demoJobText(), sizeAndLay());
  REQUIRE(bench.finish("brush-size/act").empty());
  bench.advance(91);
  CHECK(alertMinutes(bench) == Alerts{{"missed", -1}});
  const auto missed = alerts::alertsOf(bench.at()).alerts.front();
  CHECK(missed.level == alerts::Level::Low);
  CHECK(missed.takesScreen());
  REQUIRE(bench.ask(intents::LookAt{"brush-size/act/tack", intents::Verdict::PastIt}).empty());
  CHECK(alertMinutes(bench).empty());
}

TEST_CASE("where nobody knows how long the bench was off, each wait may be due, until it is told", "[windows]") {
  Bench bench(demoJobText(), sizeAndLay());
  REQUIRE(bench.finish("brush-size/act").empty());
  bench.advance(5);
  bench.setSynced(false);
  bench.reboot(10);
  auto alerts = alerts::alertsOf(bench.at()).alerts;
  REQUIRE(alerts.size() == 1);
  CHECK(alerts[0].alert == intents::AlertClass::Look);
  CHECK_FALSE(alerts[0].certain);
  CHECK(bench.askShop(intents::TellOffTime{"no such boot", units::Duration::minutes(10)}) == "shop.no-such-boot");
  REQUIRE(bench.askShop(intents::TellOffTime{bench.now().bootId, units::Duration::minutes(10)}).empty());
  alerts = alerts::alertsOf(bench.at()).alerts;
  CHECK(alerts.size() > 1);
  CHECK(alerts[0].certain);
}

TEST_CASE("what cannot be left is not begun so late that a window closes meanwhile", "[windows]") {
  Bench bench(demoJobText(), sizeAndLay());
  REQUIRE(bench.finish("brush-size/act").empty());
  const auto decision = decisions::decide(bench.at(), intents::BeginStep{"long-act/act"});
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
  CHECK(alertMinutes(bench) == Alerts{{"closing", 23}, {"look", 1}, {"missed", 75}, {"open", 12}, {"soon", -8}});
  bench.advance(5);
  CHECK(bench.shown() == "lay/act");
}

TEST_CASE("a step with a blade in the hand is told to the alerts", "[windows]") {
  Bench bench(demoJobText(), shippedTechniques());
  bench.workUntil("cut-windows/cut-window@top");
  CHECK_FALSE(alerts::alertsOf(bench.at()).bladeInHand);
  REQUIRE(bench.ask(intents::BeginStep{"cut-windows/cut-window@top"}).empty());
  CHECK(alerts::alertsOf(bench.at()).bladeInHand);
  REQUIRE(bench.finish("cut-windows/cut-window@top").empty());
  CHECK_FALSE(alerts::alertsOf(bench.at()).bladeInHand);
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

namespace {

bool asksWhetherSo(const Bench& bench) {
  const auto offers = decisions::offers(bench.at());
  return std::any_of(offers.begin(), offers.end(), [](const decisions::Offer& offer) {
    const auto* look = std::get_if<intents::LookAt>(&offer.intent);
    return look != nullptr && look->sure;
  });
}

jobs::Observed taughtBy(const Bench& bench) { return jobs::observed(bench.state(), {}, {}); }

}  // namespace

TEST_CASE("tacky after a minute of twenty is followed at once, and teaches nothing until the maker says it is so",
          "[windows]") {
  Bench bench(demoJobText(), sizeAndLay());
  REQUIRE(bench.finish("brush-size/act").empty());
  const std::string wait = "brush-size/act/tack";
  bench.advance(1);
  CHECK(bench.ask(intents::LookAt{wait, intents::Verdict::Tacky, true}) == "record.nothing-doubted");
  REQUIRE(bench.ask(intents::LookAt{wait, intents::Verdict::Tacky}).empty());
  // The wait itself follows the finger.
  CHECK(bench.shown() == "lay/act");
  CHECK(bench.at().waitState(bench.state().waits.at(wait)).foundByTouch);
  CHECK(taughtBy(bench).opening.empty());
  // While the leaf is in hand nothing is asked; laid, it is.
  CHECK_FALSE(asksWhetherSo(bench));
  CHECK(bench.ask(intents::LookAt{wait, intents::Verdict::Tacky, true}) == "record.nothing-doubted");
  REQUIRE(bench.finish("lay/act").empty());
  CHECK(asksWhetherSo(bench));
  CHECK(taughtBy(bench).opening.empty());
  REQUIRE(bench.ask(intents::LookAt{wait, intents::Verdict::Tacky, true}).empty());
  CHECK_FALSE(asksWhetherSo(bench));
  CHECK(taughtBy(bench).opening.size() == 1);
}

TEST_CASE("a look far from what was expected is asked about once, and believed when it is said again", "[windows]") {
  craft::Catalogue catalogue;
  const std::string always = R"("when": {"always": true})";
  addTechnique(catalogue, oneStepTechnique("coat", R"("piece.coated")", always, R"("waits": [{"id": "dry",
    "kind": "dry", "title": "coat dries", "makes": "piece.dry",
    "opens": {"early": "30 min", "likely": "60 min", "late": "120 min"}, "model": "none", "test": "Touch it.",
    "source": "common practice"}], )"));
  addTechnique(catalogue, oneStepTechnique("weigh", R"("piece.weighed")", always, R"("needs": ["piece.dry"], )"));
  Bench bench(demoJobText(), catalogue);
  REQUIRE(bench.finish("coat/act").empty());
  const std::string wait = "coat/act/dry";
  bench.advance(1);
  CHECK_FALSE(asksWhetherSo(bench));
  REQUIRE(bench.ask(intents::LookAt{wait, intents::Verdict::Dry}).empty());
  CHECK(bench.at().waitState(bench.state().waits.at(wait)).phase == waits::Phase::Over);
  CHECK(asksWhetherSo(bench));
  CHECK(taughtBy(bench).opening.empty());
  REQUIRE(bench.ask(intents::LookAt{wait, intents::Verdict::Dry, true}).empty());
  CHECK_FALSE(asksWhetherSo(bench));
  const auto taught = taughtBy(bench);
  REQUIRE(taught.opening.size() == 1);
  CHECK(taught.opening.begin()->second.front().upper == Approx(1.0 / 60));
  // Said again is no new look: the wait was found dry when it was.
  CHECK(bench.state().waits.at(wait).looks.size() == 1);
  // Taken back, it is doubted again.
  REQUIRE(bench.ask(intents::Undo{bench.lastIntent()}).empty());
  CHECK(asksWhetherSo(bench));
  CHECK(taughtBy(bench).opening.empty());
}

TEST_CASE("a look within reason is not asked about and teaches", "[windows]") {
  Bench bench(demoJobText(), sizeAndLay());
  REQUIRE(bench.finish("brush-size/act").empty());
  bench.advance(12);
  REQUIRE(bench.ask(intents::LookAt{"brush-size/act/tack", intents::Verdict::Tacky}).empty());
  CHECK_FALSE(asksWhetherSo(bench));
  CHECK(taughtBy(bench).opening.size() == 1);
}
