#pragma once
// The work that a piece still needs, in words: "by hand 3 h 20 min · with the waits 1 d 4 h, round the clock".
#include <QString>
#include <cstdint>
#include <string>

#include "core/workflow/agenda.h"

namespace app::viewmodels {

QString aheadText(const core::workflow::Agenda& agenda);

// The same by the clock: what is left by hand and when the piece is ready, and what of it lies in the day that is now.
struct Ahead {
  QString ready;  // "by hand 3 h 20 min, ready about Fri 18:00"
  QString today;  // "today 4 acts, 50 min by hand, without a break"; "" where the day holds nothing
};
Ahead aheadOf(const core::workflow::Agenda& agenda, std::int64_t nowUtcMilliseconds, const std::string& zone);

}  // namespace app::viewmodels
