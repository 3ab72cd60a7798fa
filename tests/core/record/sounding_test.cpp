#include "app/alerts/sounding.h"

#include "tests/support/catch.h"

using app::alerts::Sounding;
using app::alerts::Tone;
using core::intents::AlertClass;
using core::record::AlertSchedule;
using core::record::ScheduledAlert;

namespace {

constexpr std::int64_t kSecond = 1'000'000'000;
constexpr std::int64_t kStart = 1000 * kSecond;

ScheduledAlert alert(std::string wait, AlertClass kind, double dueSeconds) {
  return {"job-1", std::move(wait), kind, kStart + static_cast<std::int64_t>(dueSeconds * 1e9), true};
}

std::shared_ptr<const AlertSchedule> schedule(std::vector<ScheduledAlert> alerts, bool blade = false) {
  return std::make_shared<AlertSchedule>(AlertSchedule{std::move(alerts), blade});
}

struct Heard {
  double at;  // seconds from the start
  Tone tone;
  double decibels;
};

// Lives through time as the alert thread does: asks at each wake and never in between.
class Bench {
 public:
  Sounding sounding;
  std::int64_t now = kStart;
  bool audible = true;
  std::vector<Heard> heard;
  int hushes = 0;

  void turn() {
    const auto turn = sounding.turn(now, audible);
    hushes += turn.hush;
    if (turn.call) heard.push_back({double(now - kStart) / 1e9, turn.call->tone, turn.call->decibels});
    m_wake = turn.wake;
  }
  void publish(std::shared_ptr<const AlertSchedule> next) {
    sounding.publish(std::move(next));
    turn();
  }
  void release() {
    sounding.releaseHeld(now);
    turn();
  }
  void runUntil(double seconds) {
    const std::int64_t until = kStart + static_cast<std::int64_t>(seconds * 1e9);
    turn();
    while (m_wake <= until) {
      REQUIRE(m_wake > now);  // else the thread would spin
      now = m_wake;
      turn();
    }
    now = until;
    turn();
  }

 private:
  std::int64_t m_wake = Sounding::kNever;
};

std::vector<double> times(const std::vector<Heard>& heard, Tone tone) {
  std::vector<double> out;
  for (const Heard& one : heard) {
    if (one.tone == tone) out.push_back(one.at);
  }
  return out;
}

void checkNeverTwoAtOnce(const std::vector<Heard>& heard) {
  for (std::size_t i = 1; i < heard.size(); ++i) {
    if (heard[i].tone == Tone::High && heard[i - 1].tone != Tone::High) continue;  // may cut the other short
    CHECK(heard[i].at - heard[i - 1].at >= app::alerts::lengthSeconds(heard[i - 1].tone));
  }
}

}  // namespace

TEST_CASE("a medium alert sounds when due, three times at 15 s, then every minute") {
  Bench bench;
  bench.publish(schedule({alert("size", AlertClass::Open, 2)}));
  CHECK(bench.heard.empty());
  CHECK(bench.sounding.due().alerts.empty());
  bench.runUntil(200);
  CHECK(times(bench.heard, Tone::Medium) == std::vector<double>{2, 17, 32, 92, 152});
  CHECK(bench.heard.size() == 5);
  CHECK(bench.sounding.due().alerts.size() == 1);
}

TEST_CASE("a closing window sounds every five seconds") {
  Bench bench;
  bench.publish(schedule({alert("size", AlertClass::Closing, 1)}));
  bench.runUntil(21.5);
  CHECK(times(bench.heard, Tone::High) == std::vector<double>{1, 6, 11, 16, 21});
}

TEST_CASE("the first two bursts are drawn back by 12 and 6 dB") {
  Bench bench;
  bench.publish(schedule({alert("size", AlertClass::Closing, 0)}));
  bench.runUntil(16);
  REQUIRE(bench.heard.size() == 4);
  CHECK(bench.heard[0].decibels == -12);
  CHECK(bench.heard[1].decibels == -6);
  CHECK(bench.heard[2].decibels == 0);
  CHECK(bench.heard[3].decibels == 0);
}

TEST_CASE("an alert that leaves the schedule stops in mid-burst and never comes again") {
  Bench bench;
  bench.publish(schedule({alert("size", AlertClass::Closing, 0)}));
  bench.runUntil(1);
  REQUIRE(bench.heard.size() == 1);
  CHECK(bench.hushes == 0);
  bench.publish(schedule({}));
  CHECK(bench.hushes == 1);
  CHECK(bench.sounding.due().alerts.empty());
  bench.runUntil(300);
  CHECK(bench.heard.size() == 1);
}

TEST_CASE("publishing the same schedule again repeats nothing") {
  Bench bench;
  const auto same = schedule({alert("size", AlertClass::Open, 0)});
  bench.publish(same);
  for (int i = 1; i < 10; ++i) {
    bench.runUntil(i);
    bench.publish(same);
  }
  CHECK(bench.heard.size() == 1);
  CHECK(bench.hushes == 0);
}

TEST_CASE("an alert whose time is moved ahead falls silent and sounds anew at the new time") {
  Bench bench;
  bench.publish(schedule({alert("size", AlertClass::Open, 0)}));
  bench.runUntil(40);
  bench.publish(schedule({alert("size", AlertClass::Open, 100)}));
  CHECK(bench.sounding.due().alerts.empty());
  bench.runUntil(101);
  CHECK(times(bench.heard, Tone::Medium) == std::vector<double>{0, 15, 30, 100});
  CHECK(bench.heard.back().decibels == -12);
}

TEST_CASE("an alert already late when the program starts sounds at once") {
  Bench bench;
  bench.publish(schedule({alert("size", AlertClass::Over, -3600)}));
  REQUIRE(bench.heard.size() == 1);
  CHECK(bench.heard[0].at == 0);
}

TEST_CASE("high comes before medium and nothing ever overlaps") {
  Bench bench;
  bench.publish(schedule({alert("a", AlertClass::Open, 1), alert("b", AlertClass::Closing, 1)}));
  bench.runUntil(60);
  REQUIRE(bench.heard.size() >= 2);
  CHECK(bench.heard[0].tone == Tone::High);
  CHECK(bench.heard[0].at == 1);
  CHECK(bench.heard[1].tone == Tone::Medium);
  CHECK(bench.heard[1].at < 5);  // the closing window does not drown it
  checkNeverTwoAtOnce(bench.heard);
}

TEST_CASE("a closing window cuts a medium burst short, which is given again") {
  Bench bench;
  bench.publish(schedule({alert("a", AlertClass::Open, 1), alert("b", AlertClass::Closing, 1.4)}));
  bench.runUntil(6);
  REQUIRE(bench.heard.size() >= 3);
  CHECK(bench.heard[0].tone == Tone::Medium);
  CHECK(bench.heard[1].tone == Tone::High);
  CHECK(bench.heard[1].at == Approx(1.4));
  CHECK(bench.heard[2].tone == Tone::Medium);
  checkNeverTwoAtOnce(bench.heard);
}

TEST_CASE("alerts of one class share a burst and each is still given after it fell due") {
  Bench bench;
  bench.publish(schedule({alert("a", AlertClass::Open, 1), alert("b", AlertClass::Over, 1.5)}));
  bench.runUntil(14);
  CHECK(bench.sounding.due().alerts.size() == 2);
  REQUIRE(bench.heard.size() == 2);
  CHECK(bench.heard[1].at - 1.5 < 1.0);
  checkNeverTwoAtOnce(bench.heard);
}

TEST_CASE("with a blade in the hand there is one low tone, a soft one after a minute, and nothing listed") {
  Bench bench;
  bench.publish(schedule({alert("size", AlertClass::Closing, 3)}, true));
  bench.runUntil(400);
  REQUIRE(bench.heard.size() == 2);
  CHECK(bench.heard[0].tone == Tone::Low);
  CHECK(bench.heard[0].at == 3);
  CHECK(bench.heard[1].tone == Tone::Low);
  CHECK(bench.heard[1].at == 63);
  CHECK(bench.heard[1].decibels < bench.heard[0].decibels);
  CHECK(bench.sounding.due().alerts.empty());
}

TEST_CASE("each alert that falls due under the blade has its own low tone") {
  Bench bench;
  bench.publish(schedule({alert("a", AlertClass::Closing, 3), alert("b", AlertClass::Open, 3)}, true));
  bench.runUntil(20);
  CHECK(times(bench.heard, Tone::Low).size() == 2);
  CHECK(bench.heard.size() == 2);
  checkNeverTwoAtOnce(bench.heard);
}

TEST_CASE("putting the blade down brings the full alert at once") {
  Bench bench;
  bench.publish(schedule({alert("size", AlertClass::Open, 3)}, true));
  bench.runUntil(20);
  bench.publish(schedule({alert("size", AlertClass::Open, 3)}, false));
  CHECK(bench.sounding.due().alerts.size() == 1);
  REQUIRE(bench.heard.size() == 2);
  CHECK(bench.heard[1].tone == Tone::Medium);
  CHECK(bench.heard[1].at == 20);
}

TEST_CASE("the pedal releases what is due and holds back what falls due later") {
  Bench bench;
  const auto both = schedule({alert("a", AlertClass::Open, 3), alert("b", AlertClass::Over, 30)}, true);
  bench.publish(both);
  bench.runUntil(20);
  bench.release();
  CHECK(bench.sounding.due().alerts.size() == 1);
  CHECK(bench.heard.back().tone == Tone::Medium);
  bench.publish(both);  // any other commit
  CHECK(bench.sounding.due().alerts.size() == 1);
  bench.runUntil(34);
  CHECK(bench.sounding.due().alerts.size() == 1);
  CHECK(times(bench.heard, Tone::Low) == std::vector<double>{3, 30});
}

TEST_CASE("taking up a blade silences and hides what was sounding, and tells nothing new") {
  Bench bench;
  const std::vector<ScheduledAlert> alerts{alert("a", AlertClass::Closing, 0)};
  bench.publish(schedule(alerts));
  bench.runUntil(1);
  bench.publish(schedule(alerts, true));
  CHECK(bench.hushes == 1);
  CHECK(bench.sounding.due().alerts.empty());
  bench.runUntil(100);
  CHECK(bench.heard.size() == 1);
  bench.publish(schedule(alerts));
  CHECK(bench.heard.size() == 2);
  CHECK(bench.sounding.due().alerts.size() == 1);
}

TEST_CASE("without a loudspeaker the list still comes, and the sound as soon as there is one") {
  Bench bench;
  bench.audible = false;
  bench.publish(schedule({alert("size", AlertClass::Open, 2)}));
  bench.runUntil(50);
  CHECK(bench.heard.empty());
  CHECK(bench.sounding.due().alerts.size() == 1);
  bench.audible = true;
  bench.turn();
  REQUIRE(bench.heard.size() == 1);
  CHECK(bench.heard[0].decibels == -12);
}

TEST_CASE("a burst during which the loudspeaker went is given again when it is back") {
  Bench bench;
  bench.publish(schedule({alert("size", AlertClass::Open, 2)}));
  bench.runUntil(2.2);
  bench.audible = false;
  bench.runUntil(8);
  bench.audible = true;
  bench.turn();
  CHECK(times(bench.heard, Tone::Medium) == std::vector<double>{2, 8});
}
