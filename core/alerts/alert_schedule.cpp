#include "core/alerts/alert_schedule.h"

#include <algorithm>
#include <tuple>

#include "core/base/text.h"
#include "core/jobs/wait_groups.h"

namespace core::alerts {

// This file uses the types of the record throughout.
using namespace record;
namespace {

using base::Message;
using intents::AlertClass;
using units::Duration;

constexpr std::int64_t kNanosecondsPerMillisecond = 1'000'000;
// The call to wash and lay out comes so long before a tack window.
constexpr Duration kLayOut = Duration::minutes(10);
// A wait that begins so shortly before that call needs none.
constexpr Duration kLayOutAfter = Duration::minutes(2);
// Where a look and "should be open" would be closer together than this, one call between them replaces both.
constexpr Duration kShortWindow = Duration::minutes(3);
// Two spoken cues of one open time are at least so far apart.
constexpr Duration kBetweenCues = Duration::milliseconds(15'000);

std::string pieceOf(const jobs::JobAt& job) {
  const std::string& title = job.state().plan->design.job.title;
  return title.substr(0, title.find(','));
}

Message said(AlertClass alert, const waits::WaitState& state) {
  if (!state.elapsed.known()) return Message("say.may-be-due");
  switch (alert) {
    case AlertClass::Soon: return Message("say.soon");
    case AlertClass::Look: return Message("say.look");
    case AlertClass::Open: return Message("say.open");
    case AlertClass::Over: return Message("say.over");
    case AlertClass::Closing: return Message("say.closing");
    case AlertClass::Missed: return Message("say.missed");
  }
  return {};
}

// The alerts of one running wait.
class Calls {
 public:
  // `together`: how many waits it speaks for.
  Calls(const jobs::JobAt& job, const jobs::RunningWait& run, std::size_t together)
      : m_job(job), m_run(run), m_together(together), m_state(job.waitState(run)) {
    const auto& workflow = job.state().plan->workflow;
    if (const auto gated = job.gatedStep(run)) m_gated = &workflow.steps[*gated];
    if (!m_state.elapsed.known()) {
      // Nobody knows whether it is too early or too late: one call to look, as soon as it may be ready.
      if (!m_state.foundByTouch) call(AlertClass::Look, m_state.lookAt, Level::Medium);
    } else if (m_run.wait->closes) {
      ofWindow();
    } else {
      ofWait();
    }
  }

  AlertSchedule take() { return std::move(m_calls); }

 private:
  void ofWait() {
    if (m_state.foundByTouch) return;
    if (m_state.byTouch) {
      // Nothing is predicted: a look is asked for, and asked again after each that finds it not ready.
      call(AlertClass::Look, m_state.opens.likely, Level::Medium);
    } else {
      call(AlertClass::Over, m_state.shouldBeAt, Level::Medium);
    }
  }

  void ofWindow() {
    // A window that is open from the start needs no alert for its opening.
    const bool opensLater = m_run.wait->opens.likely > Duration();
    const bool found = m_state.foundByTouch;
    const bool closed = m_state.phase == waits::Phase::Closed;
    std::vector<Stage> stages;
    if (opensLater && !found && !closed) openings(stages);
    // Whoever just brushed the paste is at it: half the open time goes by before a call.
    const Duration closing =
        opensLater ? *m_state.closingAt
                   : std::max(*m_state.closingAt, Duration::milliseconds(m_state.closes->early.inMilliseconds() / 2));
    if (!closed && !(m_state.byTouch && !found)) stages.push_back({AlertClass::Closing, closing, Level::High});
    // Found past it by touch is known already.
    const bool pastByTouch = !m_run.looks.empty() && m_run.looks.back().second == waits::Verdict::PastIt;
    if (!pastByTouch && !(m_state.byTouch && !found)) {
      stages.push_back({AlertClass::Missed, *m_state.missedAt, Level::Low});
    }
    // A stage that a later one has overtaken is no longer called.
    const Duration time = m_state.elapsed.most;
    for (std::size_t i = 0; i < stages.size(); ++i) {
      if (i + 1 < stages.size() && stages[i + 1].at <= time) continue;
      call(stages[i].alert, stages[i].at, stages[i].level);
    }
    if (!opensLater && !closed) cues();
  }

  struct Stage {
    AlertClass alert;
    Duration at;
    Level level;
  };

  void openings(std::vector<Stage>& stages) {
    if (m_state.byTouch) {
      stages.push_back({AlertClass::Look, m_state.opens.likely, Level::Medium});
      return;
    }
    const Duration closing = *m_state.closingAt;
    const bool isShort = m_state.shouldBeAt - m_state.lookAt < kShortWindow;
    const Duration first = isShort ? m_state.opens.likely : m_state.lookAt;
    // Once looked at, hands and tools are ready.
    if (m_run.looks.empty() && first >= kLayOut + kLayOutAfter)
      stages.push_back({AlertClass::Soon, first - kLayOut, Level::Low});
    if (!isShort) stages.push_back({AlertClass::Look, m_state.lookAt, Level::Low});
    const Duration open = isShort ? m_state.opens.likely : m_state.shouldBeAt;
    // A window so narrow that it may be closing before it is surely open is called when it is likely open.
    stages.push_back(
        {AlertClass::Open, open < closing ? open : std::min(m_state.opens.likely, closing), Level::Medium});
  }

  void cues() {
    const Duration end = m_state.closes->early;
    struct {
      Duration left;
      const char* id;
    } const spoken[] = {{Duration::milliseconds(end.inMilliseconds() / 2), "say.half-left"},
                        {Duration::minutes(2), "say.two-minutes-left"},
                        {Duration::minutes(1), "say.one-minute-left"}};
    Duration last;
    for (const auto& cue : spoken) {
      const Duration at = end - cue.left;
      // From the closing call on the tone speaks.
      if (at < last + kBetweenCues || at >= *m_state.closingAt) continue;
      last = at;
      m_calls.cues.push_back({m_job.state().plan->id, m_run.id, instantOf(at), worded(Message(cue.id))});
    }
  }

  void call(AlertClass alert, Duration at, Level level) {
    if (m_run.heard.contains(alert)) return;
    ScheduledAlert made;
    made.job = m_job.state().plan->id;
    made.wait = m_run.id;
    made.alert = alert;
    made.dueBoottimeNanoseconds = instantOf(at);
    made.certain = m_state.elapsed.known();
    made.level = level;
    made.shrinking = alert == AlertClass::Open;
    made.say = worded(said(alert, m_state));
    if (const auto put = m_run.snoozed.find(alert); put != m_run.snoozed.end()) {
      const Duration gone = waits::elapsedBetween(put->second.at, m_job.now(), m_job.shop().clockLog).time;
      const std::int64_t again =
          m_job.now().boottimeNanoseconds + (put->second.length - gone).inMilliseconds() * kNanosecondsPerMillisecond;
      made.dueBoottimeNanoseconds = std::max(made.dueBoottimeNanoseconds, again);
    }
    m_calls.alerts.push_back(std::move(made));
  }

  // Where the off-time is not known, the greatest possible one is used, so that every alert that may be due is called.
  std::int64_t instantOf(Duration at) const {
    const waits::ClockReading& now = m_job.now();
    if (m_run.started.bootId == now.bootId) {
      return m_run.started.boottimeNanoseconds + at.inMilliseconds() * kNanosecondsPerMillisecond;
    }
    return now.boottimeNanoseconds + (at - m_state.elapsed.most).inMilliseconds() * kNanosecondsPerMillisecond;
  }

  Message worded(Message message) const {
    // Given to another message each time: moved into itself it would be emptied.
    Message told = std::move(message)
                       .with("piece", pieceOf(m_job))
                       .with("wait", spokenWait())
                       .with("answer", m_run.wait->answers.found);
    if (m_gated == nullptr) return told;
    std::vector<std::string> out = m_gated->tools;
    for (const auto& material : m_gated->materials) out.push_back(material.what);
    return std::move(told).with("act", m_gated->title).with("tools", base::join(out, ", "));
  }

  // Names the board, strip or field as well, where the step is for one of several.
  std::string spokenWait() const {
    const std::string& thing = m_run.step->thingName;
    return thing.empty() || m_together > 1 ? m_run.wait->title : thing + ", " + m_run.wait->title;
  }

  const jobs::JobAt& m_job;
  const jobs::RunningWait& m_run;
  const std::size_t m_together;
  const waits::WaitState m_state;
  const workflow::WorkflowStep* m_gated = nullptr;
  AlertSchedule m_calls;
};

bool bladeInHand(const jobs::JobAt& job) {
  const auto step = job.inHand();
  return step && job.state().plan->workflow.steps[*step].hands == craft::Hands::Blade;
}

void append(AlertSchedule& all, const AlertSchedule& some) {
  all.alerts.insert(all.alerts.end(), some.alerts.begin(), some.alerts.end());
  all.cues.insert(all.cues.end(), some.cues.begin(), some.cues.end());
  all.bladeInHand = all.bladeInHand || some.bladeInHand;
}

}  // namespace

AlertSchedule alertsOf(const jobs::JobAt& job) {
  AlertSchedule schedule;
  // An alert with no act attached may not sound; waits begun together call once.
  for (const jobs::WaitGroup& group : jobs::waitGroups(job)) {
    append(schedule, Calls(job, *group.back(), group.size()).take());
  }
  schedule.bladeInHand = bladeInHand(job);
  return schedule;
}

AlertSchedule merge(const std::vector<AlertSchedule>& jobs) {
  AlertSchedule schedule;
  for (const AlertSchedule& job : jobs) append(schedule, job);
  std::sort(schedule.alerts.begin(), schedule.alerts.end(), [](const ScheduledAlert& a, const ScheduledAlert& b) {
    return std::tie(a.dueBoottimeNanoseconds, a.job, a.wait, a.alert) <
           std::tie(b.dueBoottimeNanoseconds, b.job, b.wait, b.alert);
  });
  std::sort(schedule.cues.begin(), schedule.cues.end(), [](const SpokenCue& a, const SpokenCue& b) {
    return std::tie(a.dueBoottimeNanoseconds, a.job, a.wait) < std::tie(b.dueBoottimeNanoseconds, b.job, b.wait);
  });
  return schedule;
}

bool mayBePutOff(const jobs::JobAt& job, const ScheduledAlert& alert, Duration length) {
  if (alert.high() || alert.alert == AlertClass::Missed) return false;
  const auto run = job.state().waits.find(alert.wait);
  if (run == job.state().waits.end()) return false;
  const waits::WaitState state = job.waitState(run->second);
  return !state.closingAt || state.elapsed.most + length <= *state.closingAt;
}

}  // namespace core::alerts
