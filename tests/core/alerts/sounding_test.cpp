#include "core/alerts/sounding.h"

#include "tests/support/catch.h"

using core::alerts::AlertSchedule;
using core::alerts::Level;
using core::alerts::ScheduledAlert;
using core::alerts::Sounding;
using core::alerts::SpokenCue;
using core::alerts::Tone;
using core::intents::AlertClass;
using Voice = core::alerts::Sounding::Voice;

namespace {

constexpr std::int64_t kSecond = 1'000'000'000;
constexpr std::int64_t kStart = 1000 * kSecond;

// About as long as the bench's own.
constexpr std::array<std::int64_t, core::alerts::kTones> kLengths = {kSecond / 4, 6 * kSecond / 10, kSecond,
                                                                     34 * kSecond / 10};

Level levelOf(AlertClass kind) {
  if (kind == AlertClass::Closing) return Level::High;
  return kind == AlertClass::Open || kind == AlertClass::Over ? Level::Medium : Level::Low;
}

ScheduledAlert alert(std::string wait, AlertClass kind, double dueSeconds) {
  ScheduledAlert made;
  made.job = "job-1";
  made.say = core::base::Message("say." + wait);
  made.wait = std::move(wait);
  made.alert = kind;
  made.dueBoottimeNanoseconds = kStart + static_cast<std::int64_t>(dueSeconds * 1e9);
  made.level = levelOf(kind);
  made.shrinking = kind == AlertClass::Open;
  return made;
}

std::shared_ptr<const AlertSchedule> schedule(std::vector<ScheduledAlert> alerts, bool blade = false) {
  return std::make_shared<AlertSchedule>(AlertSchedule{std::move(alerts), {}, blade});
}

struct Heard {
  double at;  // seconds from the start
  Tone tone;
  double decibels;
};

// Lives through time as the alert thread does: asks at each wake and never in between.
class SoundingBench {
 public:
  Sounding sounding{kLengths};
  std::int64_t now = kStart;
  bool audible = true;
  Voice voice = Voice::Absent;
  double wordsLast = 2;  // seconds
  std::vector<Heard> heard;
  std::vector<std::pair<double, std::string>> spoken;
  int hushes = 0;
  int stops = 0;

  void turn() {
    if (voice == Voice::Speaking && now >= m_silentAt) voice = Voice::Idle;
    const auto turn = sounding.turn(now, {audible, voice});
    hushes += turn.hush;
    stops += turn.stopSpeaking;
    CHECK_FALSE((turn.call && turn.say));
    if (turn.stopSpeaking) voice = Voice::Idle;
    if (turn.call) CHECK(voice != Voice::Speaking);
    if (turn.say) {
      spoken.emplace_back(double(now - kStart) / 1e9, turn.say->id);
      voice = Voice::Speaking;
      m_silentAt = now + static_cast<std::int64_t>(wordsLast * 1e9);
    }
    if (turn.call) heard.push_back({double(now - kStart) / 1e9, turn.call->tone, turn.call->decibels});
    m_wake = voice == Voice::Speaking ? std::min(turn.wake, m_silentAt) : turn.wake;
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
  std::int64_t m_silentAt = 0;
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
    CHECK(heard[i].at - heard[i - 1].at >= double(kLengths[static_cast<std::size_t>(heard[i - 1].tone)]) / 1e9);
  }
}

}  // namespace

TEST_CASE("a medium alert sounds when due, three times at 15 s, then every minute") {
  SoundingBench bench;
  bench.publish(schedule({alert("paint", AlertClass::Over, 2)}));
  CHECK(bench.heard.empty());
  CHECK(bench.sounding.due().alerts.empty());
  bench.runUntil(200);
  CHECK(times(bench.heard, Tone::Medium) == std::vector<double>{2, 17, 32, 92, 152});
  CHECK(bench.heard.size() == 5);
  CHECK(bench.sounding.due().alerts.size() == 1);
}

TEST_CASE("a closing window sounds every five seconds") {
  SoundingBench bench;
  bench.publish(schedule({alert("size", AlertClass::Closing, 1)}));
  bench.runUntil(21.5);
  CHECK(times(bench.heard, Tone::High) == std::vector<double>{1, 6, 11, 16, 21});
}

TEST_CASE("the first two bursts are drawn back by 12 and 6 dB") {
  SoundingBench bench;
  bench.publish(schedule({alert("size", AlertClass::Closing, 0)}));
  bench.runUntil(16);
  REQUIRE(bench.heard.size() == 4);
  CHECK(bench.heard[0].decibels == -12);
  CHECK(bench.heard[1].decibels == -6);
  CHECK(bench.heard[2].decibels == 0);
  CHECK(bench.heard[3].decibels == 0);
}

TEST_CASE("an alert that leaves the schedule stops in mid-burst and never comes again") {
  SoundingBench bench;
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
  SoundingBench bench;
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
  SoundingBench bench;
  bench.publish(schedule({alert("size", AlertClass::Open, 0)}));
  bench.runUntil(40);
  bench.publish(schedule({alert("size", AlertClass::Open, 100)}));
  CHECK(bench.sounding.due().alerts.empty());
  bench.runUntil(101);
  CHECK(times(bench.heard, Tone::Medium) == std::vector<double>{0, 15, 30, 100});
  CHECK(bench.heard.back().decibels == -12);
}

TEST_CASE("an alert already late when the program starts sounds at once") {
  SoundingBench bench;
  bench.publish(schedule({alert("size", AlertClass::Over, -3600)}));
  REQUIRE(bench.heard.size() == 1);
  CHECK(bench.heard[0].at == 0);
}

TEST_CASE("high comes before medium and nothing ever overlaps") {
  SoundingBench bench;
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
  SoundingBench bench;
  bench.publish(schedule({alert("a", AlertClass::Open, 1), alert("b", AlertClass::Closing, 1.4)}));
  bench.runUntil(6);
  REQUIRE(bench.heard.size() >= 3);
  CHECK(bench.heard[0].tone == Tone::Medium);
  CHECK(bench.heard[1].tone == Tone::High);
  CHECK(bench.heard[1].at == Approx(1.4));
  CHECK(bench.heard[2].tone == Tone::Medium);
  checkNeverTwoAtOnce(bench.heard);
}

TEST_CASE("what falls due within fifteen seconds is listed at once and shares the next burst") {
  SoundingBench bench;
  bench.publish(schedule({alert("a", AlertClass::Open, 1), alert("b", AlertClass::Over, 12)}));
  bench.runUntil(13);
  CHECK(bench.sounding.due().alerts.size() == 2);
  CHECK(bench.heard.size() == 1);
  bench.runUntil(17);
  CHECK(times(bench.heard, Tone::Medium) == std::vector<double>{1, 16});
}

TEST_CASE("what falls due after the first was heard has a sound of its own") {
  SoundingBench bench;
  bench.publish(schedule({alert("a", AlertClass::Open, 1), alert("b", AlertClass::Over, 8)}));
  bench.runUntil(5);
  bench.publish(schedule({alert("b", AlertClass::Over, 8)}));
  bench.runUntil(9);
  CHECK(times(bench.heard, Tone::Medium) == std::vector<double>{1, 8});
}

TEST_CASE("with a blade in the hand there is one soft tone, a softer one after a minute, and nothing listed") {
  SoundingBench bench;
  bench.publish(schedule({alert("size", AlertClass::Closing, 3)}, true));
  bench.runUntil(400);
  REQUIRE(bench.heard.size() == 2);
  CHECK(bench.heard[0].tone == Tone::Soft);
  CHECK(bench.heard[0].at == 3);
  CHECK(bench.heard[1].tone == Tone::Soft);
  CHECK(bench.heard[1].at == 63);
  CHECK(bench.heard[1].decibels < bench.heard[0].decibels);
  CHECK(bench.sounding.due().alerts.empty());
}

TEST_CASE("each alert that falls due under the blade has its own soft tone") {
  SoundingBench bench;
  bench.publish(schedule({alert("a", AlertClass::Closing, 3), alert("b", AlertClass::Open, 3)}, true));
  bench.runUntil(20);
  CHECK(times(bench.heard, Tone::Soft).size() == 2);
  CHECK(bench.heard.size() == 2);
  checkNeverTwoAtOnce(bench.heard);
}

TEST_CASE("putting the blade down brings the full alert at once") {
  SoundingBench bench;
  bench.publish(schedule({alert("size", AlertClass::Open, 3)}, true));
  bench.runUntil(20);
  bench.publish(schedule({alert("size", AlertClass::Open, 3)}, false));
  CHECK(bench.sounding.due().alerts.size() == 1);
  REQUIRE(bench.heard.size() == 2);
  CHECK(bench.heard[1].tone == Tone::Medium);
  CHECK(bench.heard[1].at == 20);
}

TEST_CASE("the pedal releases what is due and holds back what falls due later") {
  SoundingBench bench;
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
  CHECK(times(bench.heard, Tone::Soft) == std::vector<double>{3, 30});
}

TEST_CASE("taking up a blade silences and hides what was sounding, and tells nothing new") {
  SoundingBench bench;
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
  SoundingBench bench;
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
  SoundingBench bench;
  bench.publish(schedule({alert("size", AlertClass::Open, 2)}));
  bench.runUntil(2.2);
  bench.audible = false;
  bench.runUntil(8);
  bench.audible = true;
  bench.turn();
  CHECK(times(bench.heard, Tone::Medium) == std::vector<double>{2, 8});
}

TEST_CASE("a low alert is told once and then only listed") {
  SoundingBench bench;
  bench.publish(schedule({alert("size", AlertClass::Look, 2)}));
  bench.runUntil(600);
  REQUIRE(bench.heard.size() == 1);
  CHECK(bench.heard[0].tone == Tone::Low);
  CHECK(bench.sounding.due().alerts.size() == 1);
}

TEST_CASE("a missed window has one soft tone") {
  SoundingBench bench;
  bench.publish(schedule({alert("size", AlertClass::Missed, 2)}));
  bench.runUntil(600);
  REQUIRE(bench.heard.size() == 1);
  CHECK(bench.heard[0].tone == Tone::Soft);
}

TEST_CASE("after six alerts in an hour low ones are listed without a sound; others still sound") {
  SoundingBench bench;
  std::vector<ScheduledAlert> alerts;
  for (int i = 0; i < 8; ++i) alerts.push_back(alert("low" + std::to_string(i), AlertClass::Look, 60.0 * i + 1));
  alerts.push_back(alert("late", AlertClass::Over, 700));
  alerts.push_back(alert("next hour", AlertClass::Look, 3700));
  bench.publish(schedule(alerts));
  bench.runUntil(699);
  CHECK(bench.heard.size() == Sounding::kMostAnHour);
  CHECK(bench.sounding.due().alerts.size() == 8);
  bench.runUntil(705);
  CHECK(bench.heard.back().tone == Tone::Medium);
  bench.runUntil(3702);
  CHECK(times(bench.heard, Tone::Low).back() == 3700);
}

TEST_CASE("an open window unheard for a minute is called as one that closes") {
  SoundingBench bench;
  bench.publish(schedule({alert("size", AlertClass::Open, 0), alert("paint", AlertClass::Over, 0)}));
  bench.runUntil(71);
  CHECK(times(bench.heard, Tone::High) == std::vector<double>{60, 65, 70});
}

TEST_CASE("unheard for twenty seconds an alert is spoken, and every minute from then on") {
  SoundingBench bench;
  bench.voice = Voice::Idle;
  bench.publish(schedule({alert("paint", AlertClass::Over, 1)}));
  bench.runUntil(150);
  REQUIRE(bench.spoken.size() == 3);
  CHECK(bench.spoken[0].second == "say.paint");
  CHECK(bench.spoken[0].first >= 21);
  CHECK(bench.spoken[0].first < 23);
  CHECK(bench.spoken[1].first - bench.spoken[0].first == Approx(60).margin(2));
}

TEST_CASE("without a voice nothing is spoken and the tones are the same") {
  SoundingBench bench;
  bench.publish(schedule({alert("paint", AlertClass::Over, 1)}));
  bench.runUntil(100);
  CHECK(bench.spoken.empty());
  CHECK(times(bench.heard, Tone::Medium) == std::vector<double>{1, 16, 31, 91});
}

TEST_CASE("a window that closes stops the words about another, and its tone comes at once") {
  SoundingBench bench;
  bench.voice = Voice::Idle;
  bench.wordsLast = 6;
  bench.publish(schedule({alert("paint", AlertClass::Over, 1), alert("size", AlertClass::Closing, 24)}));
  bench.runUntil(25);
  CHECK(bench.stops == 1);
  CHECK(bench.heard.back().tone == Tone::High);
  CHECK(bench.heard.back().at == 24);
}

TEST_CASE("heard while it is spoken, the words stop") {
  SoundingBench bench;
  bench.voice = Voice::Idle;
  bench.wordsLast = 6;
  bench.publish(schedule({alert("paint", AlertClass::Over, 1)}));
  bench.runUntil(23);
  REQUIRE(bench.spoken.size() == 1);
  bench.publish(schedule({}));
  CHECK(bench.stops == 1);
}

TEST_CASE("under the blade one word, after a minute, and no other") {
  SoundingBench bench;
  bench.voice = Voice::Idle;
  bench.publish(schedule({alert("size", AlertClass::Closing, 3)}, true));
  bench.runUntil(400);
  REQUIRE(bench.spoken.size() == 1);
  CHECK(bench.spoken[0].second == "say.waiting");
  CHECK(bench.spoken[0].first == Approx(63).margin(1));
  CHECK(bench.heard.size() == 1);
}

TEST_CASE("what is left of an open time is spoken once, at its moment or not at all") {
  SoundingBench bench;
  bench.voice = Voice::Idle;
  AlertSchedule open;
  open.cues.push_back({"job-1", "open", kStart + 10 * kSecond, core::base::Message("say.half-left")});
  open.cues.push_back({"job-1", "open", kStart - 60 * kSecond, core::base::Message("say.two-minutes-left")});
  bench.publish(std::make_shared<AlertSchedule>(open));
  bench.runUntil(60);
  REQUIRE(bench.spoken.size() == 1);
  CHECK(bench.spoken[0] == std::pair<double, std::string>(10, "say.half-left"));
  CHECK(bench.heard.empty());
}
