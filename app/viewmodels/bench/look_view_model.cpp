#include "app/viewmodels/bench/look_view_model.h"

#include <algorithm>

#include "app/convert/text.h"
#include "app/viewmodels/times.h"
#include "app/viewmodels/told_wait.h"
#include "app/words/words.h"
#include "core/jobs/touch_tests.h"

namespace app::viewmodels {

void LookViewModel::show(const core::jobs::JobAt* job, const std::string& zone, const std::string& wait) {
  m_wait.clear();
  m_answers = {};
  m_doubt.reset();
  m_test.clear();
  m_told.clear();
  m_window = false;
  m_wet = {};
  m_state.clear();
  m_piece = job == nullptr ? QString() : pieceName(job->state().plan->design.job.title);
  if (job != nullptr && showDoubt(*job, zone)) {
    emit changed();
    return;
  }
  const auto tests = job == nullptr ? std::vector<core::jobs::TouchTest>() : core::jobs::touchTests(*job);
  if (!tests.empty()) {
    const auto asked =
        std::find_if(tests.begin(), tests.end(), [&](const core::jobs::TouchTest& test) { return test.wait == wait; });
    const core::jobs::RunningWait& run = job->state().waits.at((asked == tests.end() ? tests.front() : *asked).wait);
    m_wait = run.id;
    m_title = waitName(run);
    m_test = convert::toQt(run.wait->test);
    m_answers = answersTo(*run.wait);
    const ToldWait told = toldWait(*job, run, zone);
    m_told = told.sentence;
    m_window = told.isWindow;
    draw(*job, run);
  }
  emit changed();
}

void LookViewModel::draw(const core::jobs::JobAt& job, const core::jobs::RunningWait& run) {
  m_wet = wetPiece(m_drawn, job.state(), run);
  m_state = words::waitUntil(run.wait->kind);
}

bool LookViewModel::showDoubt(const core::jobs::JobAt& job, const std::string& zone) {
  for (const core::intents::LookAt& look : core::jobs::doubtedLooks(job)) {
    const core::jobs::RunningWait& run = job.state().waits.at(look.wait);
    const std::pair asked(run.startedBy + run.id, run.looks.size());
    if (m_left.contains(asked)) continue;
    m_lookedAt = asked;
    m_doubt = look;
    m_looked.clear();
    for (const core::jobs::LogLine& line : job.state().log) {
      if (line.is<core::record::Looked>() && line.about == look.wait && !line.voided) m_looked = line.intentId;
    }
    m_wait = run.id;
    m_title = waitName(run);
    draw(job, run);
    const core::waits::ClockReading& looked = run.looks.back().first;
    const auto passed = core::waits::elapsedBetween(run.started, looked, job.shop().clockLog).time;
    const core::units::Span expected = job.expectedOpening(run);
    const auto said = [&](core::units::Duration at) {
      return clockTime(looked.utcMilliseconds + (at - passed).inMilliseconds(), job.now().utcMilliseconds, zone);
    };
    m_test = tr("\"%1\" at %2; it was expected from %3 to %4. Was it so?")
                 .arg(convert::toQt(core::jobs::answerOf(*run.wait, look.verdict)), said(passed), said(expected.early),
                      said(expected.late));
    return true;
  }
  return false;
}

void LookViewModel::confirm() {
  if (m_doubt) m_ask(*m_doubt);
}

void LookViewModel::deny() {
  if (m_doubt && !m_looked.empty()) m_ask(core::intents::Undo{m_looked});
}

void LookViewModel::leave() {
  if (!m_doubt) return;
  m_left.insert(m_lookedAt);
  m_doubt.reset();
  m_wait.clear();
  emit changed();
}

void LookViewModel::answer(core::intents::Verdict verdict) {
  if (present() && !m_doubt) m_ask(core::intents::LookAt{m_wait, verdict});
}

void LookViewModel::notYet() {
  if (!m_answers.notYet.isEmpty()) answer(core::intents::Verdict::NotYet);
}
void LookViewModel::ready() { answer(m_answers.verdict); }
void LookViewModel::pastIt() {
  if (!m_answers.pastIt.isEmpty()) answer(core::intents::Verdict::PastIt);
}

}  // namespace app::viewmodels
