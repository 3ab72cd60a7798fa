#include "app/viewmodels/bench/alert_view_model.h"

#include <algorithm>

#include "app/convert/text.h"
#include "app/viewmodels/names.h"
#include "app/viewmodels/standing.h"
#include "app/viewmodels/times.h"
#include "app/viewmodels/told_wait.h"
#include "app/words/words.h"

namespace app::viewmodels {

using convert::toQt;
using core::units::Duration;

AlertViewModel::AlertViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : QObject(parent), m_workbench(workbench), m_clock(clock) {}

void AlertViewModel::refresh() {
  m_up = false;
  m_others.clear();
  const auto schedule = m_workbench.schedule();
  if (schedule) {
    if (!schedule->bladeInHand) m_released = false;
    const std::int64_t now = m_clock.now().boottimeNanoseconds;
    const core::alerts::ScheduledAlert* chosen = nullptr;
    std::vector<const core::alerts::ScheduledAlert*> due;
    for (const core::alerts::ScheduledAlert& alert : schedule->alerts) {
      if (alert.dueBoottimeNanoseconds > now || m_workbench.job(alert.job) == nullptr) continue;
      // Worth knowing, not worth covering the step: the shelf shows it.
      if (!alert.takesScreen()) continue;
      due.push_back(&alert);
      if (chosen == nullptr || (alert.high() && !chosen->high())) chosen = &alert;
    }
    if (chosen != nullptr && (!schedule->bladeInHand || m_released)) {
      m_alert = *chosen;
      m_up = true;
      for (const core::alerts::ScheduledAlert* other : due) {
        if (other != chosen) m_others << nameOf(*other);
      }
    }
  }
  if (m_up) {
    show(m_workbench.at(m_alert.job));
  } else {
    m_identity.clear();
  }
  emit changed();
}

QString AlertViewModel::nameOf(const core::alerts::ScheduledAlert& alert) const {
  const core::jobs::JobAt job = m_workbench.at(alert.job);
  const QString title = pieceName(job.state().plan->design.job.title);
  const auto found = job.state().waits.find(alert.wait);
  if (found == job.state().waits.end()) return title;
  return title + QStringLiteral(" · ") + waitName(found->second);
}

void AlertViewModel::releaseHeld() {
  m_released = true;
  refresh();
}

void AlertViewModel::show(const core::jobs::JobAt& job) {
  const auto found = job.state().waits.find(m_alert.wait);
  if (found == job.state().waits.end()) {
    m_up = false;
    return;
  }
  const core::jobs::RunningWait& run = found->second;
  const auto& workflow = job.state().plan->workflow;
  m_identity = toQt(m_alert.job + '|' + m_alert.wait + '|' + std::string(core::intents::name(m_alert.alert)));
  m_piece = pieceName(job.state().plan->design.job.title);
  m_shortPiece = shortNames(m_workbench.jobs())[m_alert.job];
  m_whats = {waitName(run), toQt(run.wait->title)};
  m_whats.removeDuplicates();
  if (m_drawnJob != m_alert.job) m_drawn = {};
  m_drawnJob = m_alert.job;
  m_wet = wetPiece(m_drawn, job.state(), run);
  m_state = words::waitUntil(run.wait->kind);
  m_now = clockTime(job.now().utcMilliseconds, job.now().utcMilliseconds, m_clock.zone());
  m_shortly = core::alerts::mayBePutOff(job, m_alert, Duration::minutes(core::alerts::kSnoozeMinutes[0]));
  m_later = core::alerts::mayBePutOff(job, m_alert, Duration::minutes(core::alerts::kSnoozeMinutes[1]));
  m_test = toQt(run.wait->test);
  m_answers = answersTo(*run.wait);
  m_canLook = job.matters(run);
  const auto gated = job.gatedStep(run);
  const bool missed = m_alert.alert == core::intents::AlertClass::Missed;
  if (missed) {
    m_act = tr("Likely closed");
    m_test = toQt(run.wait->missedSay);
  } else if (m_alert.high() && gated) {
    // The drawing and the line above name the thing where the wait is for the same one.
    const auto& step = workflow.steps[*gated];
    m_act = step.thingName == run.step->thingName ? toQt(step.title) : actName(step);
  } else {
    m_act = tr("Test now");
  }
  const ToldWait told = toldWait(job, run, m_clock.zone());
  m_times = m_alert.certain ? QString() : tr("May be due: the tablet was off, and nobody knows how long.");
  m_test = told.isClosed ? told.sentence : missed ? m_test : told.question;
  m_mayClose = told.mayClose;
  m_gone = told.gone;
  showBar(told.told);
}

// Over the minutes until the window is likely gone; without a window there is no bar.
void AlertViewModel::showBar(const core::waits::Told& told) {
  m_bar.clear();
  m_barMinutes = m_closeMinutes = 0;
  if (m_gone.isEmpty()) return;
  m_barMinutes = (told.closes->late - told.passed).inMinutes();
  m_closeMinutes = std::max(0.0, (told.closes->early - told.passed).inMinutes());
  for (const QPointF& point : outlinePoints(told, m_barMinutes / 60)) m_bar << QPointF(point.x() * 60, point.y());
}

void AlertViewModel::hear() {
  if (!m_up) return;
  m_workbench.submit(core::intents::OfJob{m_alert.job, core::intents::Hear{m_alert.wait, m_alert.alert}});
  refresh();
}

void AlertViewModel::answer(core::intents::Verdict verdict) {
  if (!m_up || !m_canLook) return;
  m_workbench.submit(core::intents::OfJob{m_alert.job, core::intents::LookAt{m_alert.wait, verdict}});
  refresh();
}

void AlertViewModel::putOff(int minutes) {
  if (!m_up) return;
  m_workbench.submit(core::intents::OfJob{m_alert.job, core::intents::Snooze{m_alert.wait, m_alert.alert, minutes}});
  refresh();
}

void AlertViewModel::notYet() {
  if (!m_answers.notYet.isEmpty()) answer(core::intents::Verdict::NotYet);
}

void AlertViewModel::ready() {
  const std::string job = m_alert.job;
  answer(m_answers.verdict);
  emit goTo(job);
  emit answered();
}

void AlertViewModel::pastIt() {
  const std::string job = m_alert.job;
  if (m_answers.pastIt.isEmpty()) return;
  answer(core::intents::Verdict::PastIt);
  emit goTo(job);
  emit answered();
}

}  // namespace app::viewmodels
