#include "app/viewmodels/ahead.h"

#include <QCoreApplication>
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

}  // namespace app::viewmodels
