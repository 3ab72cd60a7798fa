#include "core/waits/wait_state.h"

#include <algorithm>

#include "core/waits/course.h"
#include "core/waits/why.h"

namespace core::waits {
namespace {

using units::Duration;
using units::Span;

constexpr double kLook = 0.2;
constexpr double kShouldBe = 0.8;
constexpr double kLikelyClosed = 0.8;
constexpr Duration kLeastAgain = Duration::minutes(1);

// "Not yet" at a moment means the opening lies after it: the quantiles of what is left of the span. Beyond its end,
// a fifth of its spread at a time, so that the next prompt is neither at once nor lost.
Span notYetAt(const Span& opens, Duration at) {
  const double passed = units::share(opens, at);
  const auto left = [&](double p) { return units::quantile(opens, std::clamp(passed + p * (1 - passed), 0.02, 0.98)); };
  const Duration again = std::max(kLeastAgain, Duration::milliseconds((opens.late - opens.early).inMilliseconds() / 5));
  Span later;
  later.early = std::max(left(0.1), at);
  later.likely = std::max(left(0.5), at + again);
  later.late = std::max(left(0.9), later.likely + again);
  return later;
}

Span operator+(const Span& a, const Span& b) { return {a.early + b.early, a.likely + b.likely, a.late + b.late}; }
Span operator+(Duration at, const Span& b) { return {at + b.early, at + b.likely, at + b.late}; }

// The opening as far as the looks determine it, and the last finding.
struct Found {
  bool ready = false;
  bool past = false;
  Duration readyAt;
};

Found apply(const std::vector<Look>& looks, Span& opens) {
  Found found;
  for (const Look& look : looks) {
    switch (look.verdict) {
      case Verdict::NotYet:
        opens = notYetAt(opens, look.at);
        found = {};
        break;
      case Verdict::Tacky:
      case Verdict::Dry:
        opens = {std::min(opens.early, look.at), std::min(opens.likely, look.at), std::min(opens.late, look.at)};
        found = {true, false, look.at};
        break;
      case Verdict::PastIt: found = {false, true, {}}; break;
    }
  }
  return found;
}

// The width is learned apart from the opening. Once the opening is found by touch the closing is counted again from
// that moment, in the room of now.
Span closing(const WaitTerms& terms, const Learned& learnt, const Course& course, const Span& opensStated,
             const Span& opens, const Found& found) {
  const Span width = learned(widthOf(terms.opens, *terms.closes), learnt.width);
  if (found.ready) return found.readyAt + course.after(found.readyAt).here(width);
  Span closes;
  if (!terms.looks.empty()) {
    closes = opens + course.after(opens.likely).here(width);
  } else {
    const bool asStated = opensStated == terms.opens && width == widthOf(terms.opens, *terms.closes);
    closes = course.here(asStated ? *terms.closes : opensStated + width);
  }
  // The model's bracket may widen the two apart: no quantile closes before it opened.
  return {std::max(closes.early, opens.early), std::max(closes.likely, opens.likely),
          std::max(closes.late, opens.late)};
}

Phase phaseOfWindow(const WaitState& state, const Found& found, Duration time) {
  if (found.past) return Phase::Closed;
  if (!found.ready && (state.byTouch || time < state.opens.likely)) return Phase::Waiting;
  if (time >= *state.missedAt) return Phase::Closed;
  return time >= *state.closingAt ? Phase::Closing : Phase::Open;
}

}  // namespace

Span widthOf(const Span& opens, const Span& closes) {
  Duration widths[] = {closes.early - opens.early, closes.likely - opens.likely, closes.late - opens.late};
  std::sort(std::begin(widths), std::end(widths));
  return {widths[0], widths[1], widths[2]};
}

WaitState waitState(const WaitTerms& terms, const Learned& learnt, const ClockReading& started, const RoomTrack& rooms,
                    const ClockLog& log, const ClockReading& now) {
  WaitState state;
  state.elapsed = elapsedBetween(started, now, log);
  const std::vector<RoomFrom> seen = roomsSince(started, now, rooms, terms.planned, log);
  const Course course(terms.model, terms.reference, seen);
  state.byTouch = course.byTouch();
  // A wait that opens at once is no drying and is not learned.
  const bool learns = terms.opens.likely > Duration();
  const Span opensStated = learns ? learned(terms.opens, learnt.opening) : terms.opens;
  state.opens = course.here(opensStated);
  const Found found = apply(terms.looks, state.opens);
  state.foundByTouch = found.ready;
  state.lookAt = units::quantile(state.opens, kLook);
  state.shouldBeAt = units::quantile(state.opens, kShouldBe);
  explain(state, terms, learnt, course, seen.back().room);

  const Duration time = state.elapsed.time;
  if (!terms.closes) {
    const bool over = found.ready || (!state.byTouch && time >= state.opens.late);
    const bool open = !state.byTouch && time >= state.opens.likely;
    state.phase = over ? Phase::Over : open ? Phase::Open : Phase::Waiting;
    return state;
  }
  state.closes = closing(terms, learnt, course, opensStated, state.opens, found);
  const Duration opened = found.ready ? found.readyAt : state.opens.likely;
  state.closingAt = std::max(opened, state.closes->early - terms.actionTime);
  state.missedAt = units::quantile(*state.closes, kLikelyClosed);
  state.phase = phaseOfWindow(state, found, time);
  return state;
}

}  // namespace core::waits
