// Random lives of a machine against an oracle that knows the true time: suspend, kill, reboot, a wall clock that is
// set, steered, reset to 1970, a zone that changes. An alert comes at least once until it is heard and never after,
// within a second inside one boot; nothing is lost; what nobody can know is declared.
//   clock_torture SCHEDULES SEED
// Prints what was lived through; ends with 1 at the first schedule that fails, with its number to be run alone
// (clock_torture 1 SEED+number).
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <optional>
#include <random>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "core/alerts/alert_schedule.h"
#include "core/alerts/sounding.h"
#include "tests/support/memory_event_store.h"

namespace {

using namespace core;
using alerts::Sounding;
using core::intents::AlertClass;

constexpr std::int64_t kSecond = 1000;  // all times in milliseconds unless they say otherwise
constexpr std::int64_t kMinute = 60 * kSecond;
constexpr std::int64_t kHour = 60 * kMinute;
constexpr std::int64_t kNano = 1'000'000;
constexpr std::int64_t kHeartbeat = 30 * kSecond;
constexpr std::int64_t kJump = 2 * kSecond;
constexpr std::int64_t kBootedFor = 10 * kSecond;  // the program reads its clocks so long after a boot
constexpr std::int64_t kLongestTone = 4 * kSecond;
constexpr std::int64_t kLongestPause = 65 * kSecond;  // between two calls of what is not heard
constexpr std::int64_t kTrueStart = 1'764'000'000'000;
constexpr std::array<std::int64_t, alerts::kTones> kLengths = {250 * kNano, 600 * kNano, 1000 * kNano, 3400 * kNano};

units::Span span(double early, double likely, double late) {
  return {units::Duration::milliseconds(static_cast<std::int64_t>(early * kMinute)),
          units::Duration::milliseconds(static_cast<std::int64_t>(likely * kMinute)),
          units::Duration::milliseconds(static_cast<std::int64_t>(late * kMinute))};
}

// A job of two steps: the first sets something to dry, the second needs it.
std::shared_ptr<const jobs::JobPlan> planOf(const units::Span& opens, const std::optional<units::Span>& closes) {
  auto plan = std::make_shared<jobs::JobPlan>();
  plan->id = "job-1";
  workflow::WorkflowStep lay;
  lay.id = "size/lay@band";
  workflow::WorkflowWait wait;
  wait.id = "size/lay@band/tack";
  wait.makes = "tacky";
  wait.opens = opens;
  wait.closes = closes;
  lay.waits.push_back(wait);
  workflow::WorkflowStep leaf;
  leaf.id = "leaf/lay@band";
  leaf.needs.push_back("tacky");
  leaf.work = span(2, 3, 5);
  plan->workflow.steps = {lay, leaf};
  plan->workflow.index();
  return plan;
}

struct Failure {
  std::string what;
};

// The machine, the program on it, and the one who knows the true time.
class Life {
 public:
  explicit Life(std::uint64_t seed) : m_random(seed) {
    const double opens = between(5, 90);
    const double late = opens * between(1.2, 3);
    m_window = chance(0.5);
    std::optional<units::Span> closes;
    if (m_window) closes = span(late * 1.5, late * 2, late * 3);
    m_plan = planOf(span(opens * 0.6, opens, late), closes);
    m_state.plan = m_plan;
    m_state.steps.resize(2);
    m_synced = chance(0.7);
    if (!m_synced) m_offset = static_cast<std::int64_t>(between(-2, 2) * double(kHour));
    open();
    jobs::RunningWait run;
    run.id = "size/lay@band/tack";
    run.step = &m_plan->workflow.steps[0];
    run.wait = &m_plan->workflow.steps[0].waits[0];
    run.started = now();
    m_startedTrue = m_true;
    m_startedBoot = m_boot;
    m_state.steps[0].status = jobs::StepStatus::Done;
    m_run = &m_state.waits.emplace(run.id, run).first->second;
    for (const auto& alert : alerts::alertsOf(jobs::JobAt(m_state, m_shop, now())).alerts) {
      m_stages.push_back(
          {alert.alert, alert.dueBoottimeNanoseconds / kNano - run.started.boottimeNanoseconds / kNano, alert.level});
    }
    if (m_stages.empty()) throw Failure{"a wait without a call"};
    std::sort(m_stages.begin(), m_stages.end(), [](const Stage& a, const Stage& b) { return a.at < b.at; });
    m_lookAt = jobs::JobAt(m_state, m_shop, now()).waitState(*m_run).lookAt.inMilliseconds();
    republish();
  }

  void live() {
    const int acts = static_cast<int>(between(3, 14));
    for (int i = 0; i < acts; ++i) act();
    // To the end of it all, awake.
    for (int i = 0; i < 3; ++i) awake(2 * kMinute);
    suspend(40 * kHour);
    awake(2 * kMinute);
  }

  struct Counts {
    long calls = 0, heard = 0, suspends = 0, kills = 0, reboots = 0, jumps = 0, unknown = 0, told = 0, checks = 0;
    std::int64_t latest = 0;
  };
  static Counts counts;

 private:
  struct Stage {
    AlertClass alert;
    std::int64_t at;  // since the start
    alerts::Level level;
  };
  struct Boot {
    std::string id;
    std::int64_t began;  // true time
    std::int64_t ended = 0;
    bool steered = false;  // a reading of a steered clock was kept
  };

  double between(double least, double most) { return std::uniform_real_distribution<double>(least, most)(m_random); }
  bool chance(double share) { return between(0, 1) < share; }
  std::int64_t log(std::int64_t least, std::int64_t most) {
    return static_cast<std::int64_t>(std::exp(between(std::log(double(least)), std::log(double(most)))));
  }

  waits::ClockReading now() const {
    return {m_true + m_offset, m_boot.id, (m_true - m_boot.began + kBootedFor) * kNano, m_synced};
  }

  // ---- the oracle: what can be known, and what is due by the true time
  bool offTimesKnown() const {
    for (std::size_t i = 0; i < m_boots.size(); ++i) {
      const Boot& after = i + 1 < m_boots.size() ? m_boots[i + 1] : m_boot;
      if (m_shop.clockLog.toldOff.count(after.id) != 0) continue;
      const bool steered = m_boots[i].steered && (after.steered || (i + 1 == m_boots.size() && m_synced));
      if (!steered || after.began - m_boots[i].ended > 29 * 24 * kHour) return false;
    }
    return true;
  }
  std::int64_t tolerance() const {
    if (m_boots.empty()) return kSecond;
    return kSecond + std::int64_t(m_shop.clockLog.toldOff.size()) * (kHeartbeat + kSecond);
  }
  // The stage that should be calling; nothing where it is heard already, or too near to say.
  std::optional<Stage> calling(bool& nearly) const {
    std::optional<Stage> current;
    for (const Stage& stage : m_stages) {
      if (std::llabs(m_true - m_startedTrue - stage.at) <= tolerance()) nearly = true;
      if (m_true - m_startedTrue >= stage.at) current = stage;
    }
    if (current && m_run->heard.contains(current->alert)) return std::nullopt;
    return current;
  }
  void judge() {
    const auto elapsed = jobs::JobAt(m_state, m_shop, now()).waitState(*m_run).elapsed;
    ++counts.checks;
    if (elapsed.time < units::Duration() || elapsed.most < elapsed.time) fail("a negative time");
    const auto& due = m_sounding->due().alerts;
    for (const auto& alert : due) {
      if (m_run->heard.contains(alert.alert)) fail("due after it was heard");
    }
    const bool known = offTimesKnown();
    if (elapsed.known() != known) fail(known ? "a known time declared unknown" : "an unknown time not declared");
    if (!known) {
      ++counts.unknown;
      const bool look = !due.empty() && due.front().alert == AlertClass::Look;
      if (due.size() > 1 || (!due.empty() && (!look || due.front().certain))) fail("an uncertain call not said so");
      if (elapsed.time.inMilliseconds() > m_lookAt + kSecond && !look && !m_run->heard.contains(AlertClass::Look))
        fail("a call was lost while the time is not known");
      return;
    }
    const std::int64_t off = elapsed.time.inMilliseconds() - (m_true - m_startedTrue);
    if (std::llabs(off) > tolerance()) fail("elapsed is off by " + std::to_string(off) + " ms");
    bool nearly = false;
    const auto stage = calling(nearly);
    if (nearly) return;
    if (stage ? due.size() != 1 || due.front().alert != stage->alert : !due.empty()) fail("the wrong call is due");
  }
  // What is due and unheard goes on calling as long as the machine is awake.
  void judgeCalling() const {
    for (const auto& alert : m_sounding->due().alerts) {
      const std::int64_t able = std::max(fellDue(alert), m_ableSince);
      if (alert.level == alerts::Level::Low || m_true - able <= kLongestTone) continue;
      if (m_lastCall < 0 || m_true - std::max(m_lastCall, able) > kLongestPause) fail("a call was lost");
    }
  }
  std::int64_t fellDue(const alerts::ScheduledAlert& alert) const {
    return alert.dueBoottimeNanoseconds / kNano + m_boot.began - kBootedFor;
  }

  // ---- the program
  void open() {
    m_sounding = std::make_unique<Sounding>(kLengths);
    m_lastCall = -1;
    m_ableSince = m_true;
    m_shop.clockLog.opened = now();
    heartbeat();
  }
  void heartbeat() {
    const auto reading = now();
    const bool jumped = m_lastBeat && m_lastBeat->bootId == reading.bootId &&
                        std::llabs((reading.utcMilliseconds - m_lastBeat->utcMilliseconds) -
                                   (reading.boottimeNanoseconds - m_lastBeat->boottimeNanoseconds) / kNano) > kJump;
    static_cast<void>(m_store.logClock("bench-1", jumped ? "jump" : "heartbeat", reading));
    m_shop.clockLog.heartbeats = m_store.clockLog("bench-1").value().heartbeats;
    m_lastBeat = reading;
    m_nextBeat = m_true + kHeartbeat;
    m_boot.steered = m_boot.steered || m_synced;
    republish();
  }
  void republish() {
    if (m_run == nullptr) return;
    m_sounding->publish(std::make_shared<alerts::AlertSchedule>(alerts::alertsOf(jobs::JobAt(m_state, m_shop, now()))));
  }
  std::int64_t turn() {
    const auto turn = m_sounding->turn(now().boottimeNanoseconds, {true, Sounding::Voice::Absent});
    if (turn.call) {
      ++counts.calls;
      const std::int64_t before = std::exchange(m_lastCall, m_true);
      if (m_sounding->due().alerts.empty()) fail("a sound with nothing due");
      for (const auto& alert : m_sounding->due().alerts) {
        if (m_run->heard.contains(alert.alert)) fail("sounded after it was heard");
        // One sound at a time: behind another it waits for its end.
        const std::int64_t late = m_true - std::max(fellDue(alert), m_ableSince);
        const bool first = m_called.insert(alert.alert).second && m_boots.empty();
        if (!first || m_true - before <= kLongestTone) continue;
        counts.latest = std::max(counts.latest, late);
        if (late > kSecond) fail("called " + std::to_string(late) + " ms late");
      }
    }
    return turn.wake;
  }
  // Hears the first of what is due.
  void hear() {
    if (m_sounding->due().alerts.empty()) return;
    ++counts.heard;
    m_run->heard.insert(m_sounding->due().alerts.front().alert);
    republish();
    turn();
  }

  // ---- what can befall a machine
  void awake(std::int64_t length) {
    const std::int64_t end = m_true + length;
    m_ableSince = m_true;
    republish();
    std::int64_t wake = turn();
    judge();
    while (true) {
      const std::int64_t byWake = wake == Sounding::kNever ? end : (wake - 1) / kNano + 1 + m_boot.began - kBootedFor;
      const std::int64_t next = std::min({end, m_nextBeat, std::max(byWake, m_true + 1)});
      m_true = next;
      if (next == m_nextBeat) {
        heartbeat();
        wake = turn();
        judge();
        judgeCalling();
        if (chance(0.1)) {
          hear();
          wake = turn();
          judge();
        }
      } else {
        wake = turn();
      }
      if (next == end) return;
    }
  }
  void suspend(std::int64_t length) {
    ++counts.suspends;
    if (chance(0.8)) heartbeat();  // the system told of it
    m_true += length;
    m_ableSince = m_true;
    if (chance(0.1)) sync();
    heartbeat();  // on waking
    turn();
    awake(log(kSecond, kMinute));
  }
  void kill(std::int64_t down) {
    ++counts.kills;
    m_true += down;
    open();
    awake(log(kSecond, kMinute));
  }
  void reboot(std::int64_t off) {
    ++counts.reboots;
    m_boot.ended = m_true;
    m_boots.push_back(m_boot);
    m_true += off + kBootedFor;
    m_boot = {"boot-" + std::to_string(m_boots.size() + 1), m_true, 0, false};
    m_synced = false;
    if (chance(0.2)) m_offset = -m_true + static_cast<std::int64_t>(between(0, double(kHour)));  // a dead clock battery
    if (chance(0.5)) sync();
    m_true += 2 * kMinute;  // a program that starts with the machine has waited for the time server by now
    open();
    m_true += 61 * kSecond;
    heartbeat();
    turn();
    if (!offTimesKnown() && chance(0.3)) tell();
    awake(log(kSecond, kMinute));
  }
  void tell() {
    ++counts.told;
    for (std::size_t i = 0; i < m_boots.size(); ++i) {
      const Boot& after = i + 1 < m_boots.size() ? m_boots[i + 1] : m_boot;
      const std::int64_t off = after.began - kBootedFor - m_boots[i].ended;
      // A month is the most that can be told.
      if (off <= 30 * 24 * kHour) m_shop.clockLog.toldOff[after.id] = units::Duration::milliseconds(off);
    }
    republish();
    turn();
  }
  void jump(std::int64_t by) {
    ++counts.jumps;
    m_offset += by;
    m_synced = false;
    heartbeat();
    turn();
    judge();
  }
  void sync() {
    m_offset = 0;
    m_synced = true;
  }
  void act() {
    const double what = between(0, 1);
    if (what < 0.3)
      awake(log(kSecond, 10 * kMinute));
    else if (what < 0.45)
      suspend(log(kSecond, 6 * kHour));
    else if (what < 0.55)
      kill(log(kSecond / 2, kHour));
    else if (what < 0.7)
      reboot(chance(0.02) ? 40 * 24 * kHour : log(5 * kSecond, 20 * kHour));
    else if (what < 0.8)
      jump((chance(0.5) ? 1 : -1) * log(kSecond, 400 * 24 * kHour));
    else if (what < 0.87) {
      sync();
      heartbeat();
      turn();
      judge();
    } else if (what < 0.9) {
      heartbeat();
      turn();
      judge();
    }  // the zone changed: only what is shown
    else
      hear();
  }

  [[noreturn]] void fail(const std::string& what) const {
    throw Failure{what + " at " + std::to_string((m_true - m_startedTrue) / kSecond) + " s, boot " + m_boot.id};
  }

  std::mt19937_64 m_random;
  std::int64_t m_true = kTrueStart;
  std::int64_t m_offset = 0;  // of the wall clock from the true time
  bool m_synced = true;
  Boot m_boot{"boot-1", kTrueStart - kHour, 0, false};
  std::vector<Boot> m_boots;  // before the present one
  bool m_window = false;
  std::shared_ptr<const jobs::JobPlan> m_plan;
  jobs::JobState m_state;
  shop::Shop m_shop;
  tests::MemoryEventStore m_store;
  jobs::RunningWait* m_run = nullptr;
  std::int64_t m_startedTrue = kTrueStart;
  Boot m_startedBoot;
  std::vector<Stage> m_stages;
  std::int64_t m_lookAt = 0;
  std::unique_ptr<Sounding> m_sounding;
  std::optional<waits::ClockReading> m_lastBeat;
  std::int64_t m_nextBeat = 0;
  std::int64_t m_lastCall = -1;
  std::int64_t m_ableSince = kTrueStart;
  std::set<AlertClass> m_called;
};

Life::Counts Life::counts;

}  // namespace

int main(int count, char** arguments) {
  const long schedules = count > 1 ? std::atol(arguments[1]) : 0;
  const std::uint64_t seed = count > 2 ? std::strtoull(arguments[2], nullptr, 10) : 1;
  if (schedules <= 0) {
    std::fprintf(stderr, "clock_torture SCHEDULES SEED\n");
    return 2;
  }
  for (long i = 0; i < schedules; ++i) {
    try {
      Life(seed + static_cast<std::uint64_t>(i)).live();
    } catch (const Failure& failure) {
      std::fprintf(stderr, "schedule with seed %llu: %s\n", static_cast<unsigned long long>(seed + std::uint64_t(i)),
                   failure.what.c_str());
      return 1;
    }
  }
  const auto& c = Life::counts;
  std::printf(
      "%ld schedules: %ld suspends, %ld kills, %ld reboots, %ld jumps, %ld told; %ld checks (%ld of a time not known), "
      "%ld calls, %ld heard; a call came at most %lld ms after its alert was due and the machine awake\n",
      schedules, c.suspends, c.kills, c.reboots, c.jumps, c.told, c.checks, c.unknown, c.calls, c.heard,
      static_cast<long long>(c.latest));
  return 0;
}
