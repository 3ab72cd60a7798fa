#pragma once
// Steps that must start while a window is open, on one pair of hands.
#include <vector>

namespace core::workflow {

// All in minutes on one clock.
struct Due {
  double from = 0;    // the earliest moment at which the hands can turn to it
  double closes = 0;  // the latest at which the step itself starts
  double before = 0;  // work that has to go before it once the hands have turned to it
  double work = 0;    // of the step itself
  int after = 0;      // how many of the others come before it
};

// Returns how many of the steps start too late when the hands are free from `at` on, in the best of three orders: what
// the hands can turn to at once, the one that must be over first; by when each must be over, waiting for it; by when
// each can begin. One that is too late takes no time. Where the hands can turn to all at once no order does better;
// otherwise there may be one that does.
int lateOf(std::vector<Due> dues, double at);

}  // namespace core::workflow
