#include "core/waits/wait_state.h"

#include <algorithm>

namespace core::waits {
namespace {

using units::Duration;
using units::Span;

// "Not yet" at a moment means the opening lies after it: how long after is a fifth of the stated spread, at
// least a minute, so that the next prompt is neither at once nor lost.
Span notYetAt(const Span& opens, Duration at) {
  const Duration spread = opens.late - opens.early;
  const Duration again = std::max(Duration::minutes(1), Duration::milliseconds(spread.inMilliseconds() / 5));
  Span later = opens;
  later.early = std::max(later.early, at);
  later.likely = std::max(later.likely, at + again);
  later.late = std::max(later.late, later.likely + again);
  return later;
}

}  // namespace

WaitState waitState(const WaitTerms& terms, const ClockReading& started, const ClockLog& log, const ClockReading& now) {
  WaitState state;
  state.elapsed = elapsedBetween(started, now, log);
  state.opens = terms.opens;
  state.closes = terms.closes;
  state.basis = terms.basis;
  const Duration time = state.elapsed.time;

  bool foundTrue = false;
  bool foundPast = false;
  for (const Look& look : terms.looks) {
    switch (look.verdict) {
      case Verdict::NotYet:
        state.opens = notYetAt(state.opens, look.at);
        foundTrue = foundPast = false;
        break;
      case Verdict::Tacky:
      case Verdict::Dry:
        state.opens = {std::min(state.opens.early, look.at), std::min(state.opens.likely, look.at),
                       std::min(state.opens.late, look.at)};
        foundTrue = true;
        foundPast = false;
        break;
      case Verdict::PastIt:
        foundPast = true;
        foundTrue = false;
        break;
    }
  }

  if (!state.closes) {
    const bool over = foundTrue || time >= state.opens.late;
    state.phase = over ? Phase::Over : time >= state.opens.likely ? Phase::Open : Phase::Waiting;
    return state;
  }
  // An opening found late moves the closing with it: a window cannot close before it opened.
  Span& closes = *state.closes;
  closes.early = std::max(closes.early, state.opens.early);
  closes.likely = std::max(closes.likely, state.opens.likely);
  closes.late = std::max(closes.late, state.opens.late);
  state.closingAt = std::max(state.opens.likely, closes.early - terms.actionTime);
  if (foundPast) {
    state.phase = Phase::Closed;
  } else if (time < state.opens.likely) {
    state.phase = Phase::Waiting;
  } else if (time >= closes.likely && !(foundTrue && terms.looks.back().at >= closes.likely)) {
    state.phase = Phase::Closed;
  } else {
    state.phase = time >= *state.closingAt ? Phase::Closing : Phase::Open;
  }
  return state;
}

}  // namespace core::waits
