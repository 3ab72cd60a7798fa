#pragma once
// What is still to do of a piece, in words: "hands 3 h 20 min · 1 d 4 h in all, nights not counted".
#include <QString>

#include "core/workflow/agenda.h"

namespace app::viewmodels {

QString aheadText(const core::workflow::Agenda& agenda);

}  // namespace app::viewmodels
