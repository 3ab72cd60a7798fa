#include "app/viewmodels/look_view_model.h"

#include "app/convert/text.h"
#include "core/record/touch_tests.h"

namespace app::viewmodels {

void LookViewModel::show(const core::record::JobAt* job) {
  m_wait.clear();
  m_answers = {};
  const auto tests = job == nullptr ? std::vector<core::record::TouchTest>() : core::record::touchTests(*job);
  if (!tests.empty()) {
    const core::record::RunningWait& run = job->state().waits.at(tests.front().wait);
    m_wait = run.id;
    m_title = waitName(run);
    m_test = convert::toQt(run.wait->test);
    m_answers = answersTo(*run.wait);
  }
  emit changed();
}

void LookViewModel::answer(core::intents::Verdict verdict) {
  if (present()) m_ask(core::intents::LookAt{m_wait, verdict});
}

void LookViewModel::notYet() {
  if (!m_answers.notYet.isEmpty()) answer(core::intents::Verdict::NotYet);
}
void LookViewModel::ready() { answer(m_answers.verdict); }
void LookViewModel::pastIt() {
  if (!m_answers.pastIt.isEmpty()) answer(core::intents::Verdict::PastIt);
}

}  // namespace app::viewmodels
