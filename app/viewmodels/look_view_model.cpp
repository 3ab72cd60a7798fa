#include "app/viewmodels/look_view_model.h"

#include "app/convert/text.h"
#include "app/viewmodels/names.h"
#include "core/record/offers.h"

namespace app::viewmodels {

using core::record::RunningWait;
using core::units::Duration;

void LookViewModel::show(const core::record::JobAt* job) {
  m_wait.clear();
  const RunningWait* best = nullptr;
  Duration soonest;
  if (job != nullptr) {
    for (const auto& offer : core::record::offers(*job)) {
      const auto* look = std::get_if<core::intents::LookAt>(&offer.intent);
      if (look == nullptr || look->sure || look->wait == m_wait) continue;
      const RunningWait& run = job->state().waits.at(look->wait);
      const auto state = job->waitState(run);
      const Duration left = (state.closes ? state.closes->likely : state.opens.likely) - state.elapsed.time;
      const bool windowNow = state.closes && state.holds();
      const bool bestIsWindow = best != nullptr && best->wait->closes && job->waitState(*best).holds();
      if (best == nullptr || (windowNow && !bestIsWindow) || (windowNow == bestIsWindow && left < soonest)) {
        best = &run;
        soonest = left;
        m_wait = look->wait;
      }
    }
  }
  if (best != nullptr) {
    m_title = waitName(*best);
    m_test = convert::toQt(best->wait->test);
    m_window = best->wait->closes.has_value();
  }
  emit changed();
}

void LookViewModel::answer(core::intents::Verdict verdict) {
  if (present()) m_ask(core::intents::LookAt{m_wait, verdict});
}

void LookViewModel::notYet() { answer(core::intents::Verdict::NotYet); }
void LookViewModel::ready() { answer(m_window ? core::intents::Verdict::Tacky : core::intents::Verdict::Dry); }
void LookViewModel::pastIt() {
  if (m_window) answer(core::intents::Verdict::PastIt);
}

}  // namespace app::viewmodels
