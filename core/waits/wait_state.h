#pragma once
// Computes the state of a running wait at an instant, as a pure function of everything it depends on. There is no timer
// object anywhere that could disagree with the record.
#include <optional>
#include <vector>

#include "core/base/message.h"
#include "core/units/span.h"
#include "core/waits/clock.h"
#include "core/waits/drying.h"
#include "core/waits/learning.h"
#include "core/waits/room_track.h"

namespace core::waits {

enum class Phase {
  Waiting,  // not yet likely
  Open,     // likely true; with a closing: the tack window or the open time runs
  Closing,  // so near the closing that the gated act must begin now
  Closed,   // the closing has likely passed (four in five): missed, unless the touch test shows otherwise
  Over,     // true for good: found so by touch, or past the late end of the span, with no closing
};

enum class Verdict { NotYet, Tacky, PastIt, Dry };

// The source of the times; each includes the one before.
enum class Basis {
  Label,    // as the technique or the label states them
  Model,    // computed for the room
  Learned,  // from what this maker found by touch
};

struct Look {
  units::Duration at;  // since the wait began
  Verdict verdict = Verdict::NotYet;
};

// The times stated when the wait began, and the looks since.
struct WaitTerms {
  units::Span opens;                  // in the reference room
  std::optional<units::Span> closes;  // counted from the start as well; each quantile later than that of `opens`
  units::Duration actionTime;         // likely working time of the act the window gates
  DryingModel model = DryingModel::None;
  units::Room reference;
  std::optional<units::Room> planned;  // the room until one is entered
  std::vector<Look> looks;             // in the order they were made
};

// The factors learned from this maker's own times with a material.
struct Learned {
  Belief opening;  // factor on `opens`
  Belief width;    // factor on the time from opening to closing
};

// The factors learned from the looks of all jobs, opening and width apart. Rebuilt whenever a look is added or taken
// back.
struct Learning {
  Beliefs opening{{}};
  Beliefs width{{}};

  Learned of(const Kind& kind) const { return {opening.of(kind), width.of(kind)}; }
};

struct WaitState {
  Phase phase = Phase::Waiting;
  Elapsed elapsed;
  units::Span opens;  // since the start, corrected for the room, the maker's own times and the looks
  std::optional<units::Span> closes;

  // Since the start: when a look is worth while (one in five is ready), and when it should be so (four in five).
  units::Duration lookAt;
  units::Duration shouldBeAt;
  // When the act has to begin, so that it is done before one window in ten has closed; never before the opening.
  std::optional<units::Duration> closingAt;
  // When the window has likely closed: four in five have.
  std::optional<units::Duration> missedAt;

  bool foundByTouch = false;             // tacky or dry, and not found past it since
  std::optional<base::Message> byTouch;  // why nothing is predicted; the phase then changes by touch alone
  Basis basis = Basis::Label;
  std::vector<base::Message> why;  // one or two short reasons, in order

  // Returns whether the fact the wait makes is true.
  bool holds() const { return phase == Phase::Open || phase == Phase::Closing || phase == Phase::Over; }
};

WaitState waitState(const WaitTerms& terms, const Learned& learned, const ClockReading& started, const RoomTrack& rooms,
                    const ClockLog& log, const ClockReading& now);

// Returns the width from opening to closing, quantile by quantile: the careful reading of two stated spans is that a
// window which opens late also closes late.
units::Span widthOf(const units::Span& opens, const units::Span& closes);

}  // namespace core::waits
