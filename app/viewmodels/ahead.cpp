#include "app/viewmodels/ahead.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "app/viewmodels/times.h"
#include "core/workflow/rehearse.h"

namespace app::viewmodels {

QString aheadText(const core::workflow::Agenda& agenda) {
  const auto said = [](double minutes) {
    return roughly(core::units::Duration::milliseconds(std::llround(minutes * 60'000)));
  };
  const core::workflow::Rehearsal rehearsal = core::workflow::rehearse(agenda);
  return QCoreApplication::translate("ahead", "by hand %1 · with the waits %2, round the clock")
      .arg(said(rehearsal.hands), said(rehearsal.minutes));
}

Ahead aheadOf(const core::workflow::Agenda& agenda, std::int64_t nowUtcMilliseconds, const std::string& zone) {
  using core::units::Duration;
  constexpr double kMinute = 60'000;
  const core::workflow::Rehearsal rehearsal = core::workflow::rehearse(agenda);
  const auto instant = [&](double minutes) { return nowUtcMilliseconds + std::llround(minutes * kMinute); };
  const auto said = [](double minutes) { return roughly(Duration::milliseconds(std::llround(minutes * kMinute))); };
  Ahead ahead;
  const std::int64_t ready = rounded(instant(rehearsal.minutes), nowUtcMilliseconds, Expected::Opening);
  ahead.ready = QCoreApplication::translate("ahead", "by hand %1, ready about %2")
                    .arg(said(rehearsal.hands), clockTime(ready, nowUtcMilliseconds, zone));
  int acts = 0;
  double hands = 0;
  for (const core::workflow::ActWorked& act : rehearsal.acts) {
    if (isOtherDay(instant(act.at), nowUtcMilliseconds, zone)) continue;
    ++acts;
    for (const std::size_t step : act.steps) {
      const auto left = std::find_if(agenda.steps().begin(), agenda.steps().end(),
                                     [&](const core::workflow::AgendaStep& one) { return one.step == step; });
      if (left != agenda.steps().end()) hands += left->work.likely.inMinutes();
    }
  }
  if (acts == 1) {
    ahead.today = QCoreApplication::translate("ahead", "today one act, %1 by hand, without a break").arg(said(hands));
  } else if (acts > 1) {
    ahead.today =
        QCoreApplication::translate("ahead", "today %1 acts, %2 by hand, without a break").arg(acts).arg(said(hands));
  }
  return ahead;
}

}  // namespace app::viewmodels
