#pragma once
// The work that a piece still needs, in words: "by hand 3 h 20 min · with the waits 1 d 4 h, round the clock".
#include <QString>

#include "core/workflow/agenda.h"

namespace app::viewmodels {

QString aheadText(const core::workflow::Agenda& agenda);

}  // namespace app::viewmodels
