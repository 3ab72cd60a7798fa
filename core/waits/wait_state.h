#pragma once
// What a running wait is at an instant, as a pure function of everything it depends on. There is no timer
// object anywhere that could disagree with the record.
#include <optional>
#include <vector>

#include "core/units/span.h"
#include "core/waits/clock.h"

namespace core::waits {

enum class Phase {
  Waiting,  // not yet likely
  Open,     // likely true; with a closing: the tack window or the open time runs
  Closing,  // so near the closing that the gated act must begin now
  Closed,   // the closing has likely passed: missed, unless the touch test says otherwise
  Over,     // true for good: found so by touch, or past the late end of the span, with no closing
};

enum class Verdict { NotYet, Tacky, PastIt, Dry };

// Where the numbers come from.
enum class Basis { Label, Model, Learned };

struct Look {
  units::Duration at;  // since the wait began
  Verdict verdict = Verdict::NotYet;
};

// What was stated when the wait began, and what has been found by touch since.
struct WaitTerms {
  units::Span opens;
  std::optional<units::Span> closes;  // counted from the start as well
  units::Duration actionTime;         // likely working time of the act the window gates
  std::vector<Look> looks;            // in the order they were made
  Basis basis = Basis::Label;
};

struct WaitState {
  Phase phase = Phase::Waiting;
  Elapsed elapsed;
  units::Span opens;  // since the start, after what the looks taught
  std::optional<units::Span> closes;
  // When the closing alert is due, since the start: early enough that the act can still be begun and done
  // before one window in ten has closed, but not before the opening.
  std::optional<units::Duration> closingAt;
  Basis basis = Basis::Label;

  // Whether the fact the wait makes is true.
  bool holds() const { return phase == Phase::Open || phase == Phase::Closing || phase == Phase::Over; }
};

WaitState waitState(const WaitTerms& terms, const ClockReading& started, const ClockLog& log, const ClockReading& now);

}  // namespace core::waits
