#include "app/viewmodels/bench/off_time_view_model.h"

#include <algorithm>
#include <array>

#include "app/convert/text.h"
#include "app/viewmodels/times.h"
#include "app/words/words.h"
#include "core/jobs/agenda.h"

namespace app::viewmodels {

using core::units::Duration;

namespace {

constexpr int kHour = 60;
constexpr int kDay = 24 * kHour;
// Minutes. Each step is about as much longer as a memory of it is less exact.
constexpr std::array kSteps = {0,         5,          10,         15,         20,         30,         45,
                               kHour,     90,         2 * kHour,  3 * kHour,  4 * kHour,  5 * kHour,  6 * kHour,
                               8 * kHour, 10 * kHour, 12 * kHour, 14 * kHour, 16 * kHour, 18 * kHour, 20 * kHour,
                               kDay,      36 * kHour, 2 * kDay,   3 * kDay,   4 * kDay,   5 * kDay,   7 * kDay,
                               10 * kDay, 14 * kDay,  21 * kDay,  30 * kDay};

}  // namespace

OffTimeViewModel::OffTimeViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : QObject(parent), m_workbench(workbench), m_clock(clock) {}

std::string OffTimeViewModel::bootAskedAbout() const {
  for (const workbench::JobEntry& entry : m_workbench.jobs()) {
    if (entry.rests || m_workbench.job(entry.id) == nullptr) continue;
    for (const auto& [run, state] : core::jobs::runningWaits(m_workbench.at(entry.id))) {
      const core::waits::Elapsed& elapsed = state.elapsed;
      if (elapsed.certainty == core::waits::Certainty::Unknown && !elapsed.askAbout.empty()) return elapsed.askAbout;
    }
  }
  return {};
}

void OffTimeViewModel::refresh() {
  const core::waits::ClockReading now = m_clock.now();
  const auto& log = m_workbench.shop().clockLog;
  std::string boot = bootAskedAbout();
  m_asked = !boot.empty();
  // A slip can be put right as long as the machine runs.
  if (boot.empty() && log.toldOff.count(now.bootId) != 0) boot = now.bootId;
  if (boot != m_boot) {
    m_boot = boot;
    m_putOff = false;
    m_refusal.clear();
    const auto told = log.toldOff.find(boot);
    m_answer = told == log.toldOff.end() ? Duration() : told->second;
  }
  m_byClock = m_boot.empty() ? std::nullopt : core::waits::offByWallClock(m_boot, now, log);
  m_lastSeen.clear();
  const auto first = std::find_if(log.heartbeats.begin(), log.heartbeats.end(),
                                  [this](const core::waits::ClockReading& beat) { return beat.bootId == m_boot; });
  if (offered() && first != log.heartbeats.begin() && !log.heartbeats.empty()) {
    const core::waits::ClockReading& last = *std::prev(first);
    m_lastSeen = clockTime(last.utcMilliseconds, now.utcMilliseconds, m_clock.zone());
  }
  emit changed();
}

QString OffTimeViewModel::answer() const {
  if (m_answer == Duration()) return tr("just now");
  return tr("about %1").arg(roughly(m_answer));
}

QString OffTimeViewModel::byClock() const { return m_byClock ? roughly(*m_byClock) : QString(); }

void OffTimeViewModel::answerWith(Duration off) {
  m_answer = off;
  m_refusal.clear();
  emit changed();
}

void OffTimeViewModel::more() {
  const auto next =
      std::find_if(kSteps.begin(), kSteps.end(), [this](int minutes) { return Duration::minutes(minutes) > m_answer; });
  if (next != kSteps.end()) answerWith(Duration::minutes(*next));
}

void OffTimeViewModel::less() {
  const auto next = std::find_if(kSteps.rbegin(), kSteps.rend(),
                                 [this](int minutes) { return Duration::minutes(minutes) < m_answer; });
  if (next != kSteps.rend()) answerWith(Duration::minutes(*next));
}

void OffTimeViewModel::anHour() { answerWith(Duration::minutes(kHour)); }

void OffTimeViewModel::takeClock() {
  if (m_byClock) answerWith(*m_byClock);
}

void OffTimeViewModel::nextAnswer() {
  const Duration hour = Duration::minutes(kHour);
  if (m_answer == hour && m_byClock) {
    takeClock();
  } else if (m_answer == Duration()) {
    anHour();
  } else {
    answerWith(Duration());
  }
}

bool OffTimeViewModel::tell() {
  if (m_boot.empty()) return false;
  const auto refused = m_workbench.submit(core::intents::OfShop{core::intents::TellOffTime{m_boot, m_answer}});
  m_refusal = refused.id.empty() ? QString() : words::text(refused, core::units::UnitSystem::Millimetres);
  refresh();
  return refused.id.empty();
}

void OffTimeViewModel::later() {
  m_putOff = true;
  emit changed();
}

}  // namespace app::viewmodels
