#pragma once
// Finds how long what is made ready beforehand may be left: a paste or a size is made as late as its soaking and its
// keeping allow, never so late that the piece would wait for it.
#include <vector>

#include "core/workflow/agenda.h"

namespace core::workflow {

// For each step of the workflow the minutes from now before which it need not be started; 0 for all but preparations
// with a shelf life. Reckoned from the waits ahead and the work before each use, without the time in which the hands
// are on something else, so that it comes rather too early.
std::vector<double> heldBack(const Agenda& agenda);

}  // namespace core::workflow
