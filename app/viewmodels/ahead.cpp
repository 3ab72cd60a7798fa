#include "app/viewmodels/ahead.h"

#include <QCoreApplication>
#include <cmath>

#include "app/words/words.h"
#include "core/workflow/rehearse.h"

namespace app::viewmodels {

QString aheadText(const core::workflow::Agenda& agenda) {
  const auto said = [](double minutes) {
    return words::duration(core::units::Duration::milliseconds(std::llround(minutes * 60'000)));
  };
  const core::workflow::Rehearsal rehearsal = core::workflow::rehearse(agenda);
  return QCoreApplication::translate("ahead", "hands %1 · %2 in all, nights not counted")
      .arg(said(rehearsal.hands), said(std::floor(rehearsal.minutes)));
}

}  // namespace app::viewmodels
