#include "core/waits/telling.h"

#include <algorithm>

namespace core::waits {
namespace {

using units::Duration;

// What is left below this is no minute that could be told.
constexpr Duration kLeastTold = Duration::minutes(1);
constexpr double kEarly = 0.2;
constexpr double kHalf = 0.5;
constexpr double kLate = 0.8;

bool isOpenFromStart(const WaitTerms& terms) { return terms.closes && terms.opens.late == Duration(); }

Telling ofWindow(const Told& told, const WaitTerms& terms, const WaitState& state) {
  if (state.phase == Phase::Closed) return Telling::LikelyClosed;
  if (told.found || told.passed >= told.closes->early) {
    const Duration left = told.closes->early - told.passed;
    if (left < kLeastTold) return Telling::MayClose;
    if (left < kLastMinutes) return Telling::LastMinutes;
    return isOpenFromStart(terms) ? Telling::PasteOpen : Telling::TackOpen;
  }
  if (told.passed >= told.early) return Telling::TackNow;
  return told.lookedAt ? Telling::TestAgain : Telling::TackAhead;
}

Telling ofDrying(const Told& told) {
  if (told.found) return Telling::Ready;
  if (told.passed >= told.early) return Telling::TestNow;
  if (told.lookedAt) return Telling::TestAgain;
  const bool wide = told.late.inMilliseconds() > kWide * told.early.inMilliseconds();
  return wide ? Telling::WideTest : Telling::FirstTest;
}

// Straight between two ends; where they are one, the later height.
double between(Duration at, Duration from, double low, Duration to, double high) {
  if (at >= to) return high;
  const double share = (at - from).inMinutes() / (to - from).inMinutes();
  return low + share * (high - low);
}

double risen(const Told& told, Duration at) {
  if (told.found) return 1;
  if (at < told.half) return between(at, told.early, kEarly, told.half, kHalf);
  return between(at, told.half, kHalf, told.late, kLate);
}

double standing(const Told& told, Duration at) {
  if (!told.closes || at <= told.closes->early) return 1;
  if (at < told.closes->half) return between(at, told.closes->early, 1, told.closes->half, 1 - kHalf);
  return between(at, told.closes->half, 1 - kHalf, told.closes->late, 1 - kLate);
}

// Where one rises through the other between two times on which both are straight.
std::optional<Duration> crossing(const Told& told, Duration from, Duration to) {
  const double before = risen(told, from) - standing(told, from);
  // At its end: what jumps there belongs to the next stretch.
  const Duration last = to - Duration::milliseconds(1);
  if (last <= from) return std::nullopt;
  const double after = risen(told, last) - standing(told, last);
  if (before * after >= 0) return std::nullopt;
  const double share = before / (before - after);
  return from +
         Duration::milliseconds(static_cast<std::int64_t>(share * static_cast<double>((last - from).inMilliseconds())));
}

}  // namespace

std::string_view name(Telling telling) {
  switch (telling) {
    case Telling::FirstTest: return "first-test";
    case Telling::WideTest: return "wide-test";
    case Telling::TestNow: return "test-now";
    case Telling::TestAgain: return "test-again";
    case Telling::Ready: return "ready";
    case Telling::TackAhead: return "tack-ahead";
    case Telling::TackNow: return "tack-now";
    case Telling::TackOpen: return "tack-open";
    case Telling::PasteOpen: return "paste-open";
    case Telling::LastMinutes: return "last-minutes";
    case Telling::MayClose: return "may-close";
    case Telling::LikelyClosed: return "likely-closed";
    case Telling::PastIt: return "past-it";
    case Telling::About: return "about";
    case Telling::ByTouch: return "by-touch";
  }
  return "";
}

Told tell(const WaitTerms& terms, const WaitState& state) {
  Told told;
  // As the calls do: where it is not known how long the machine was off, the most that it can have been.
  told.passed = state.elapsed.known() ? state.elapsed.time : state.elapsed.most;
  told.early = state.lookAt;
  told.half = state.opens.likely;
  told.late = state.shouldBeAt;
  if (state.closes) told.closes = {state.closes->early, state.closes->likely, *state.missedAt};
  if (!terms.looks.empty()) told.lookedAt = terms.looks.back().at;
  told.found = state.foundByTouch || (isOpenFromStart(terms) && terms.looks.empty());
  if (!terms.looks.empty() && terms.looks.back().verdict == Verdict::PastIt) {
    told.telling = Telling::PastIt;
  } else if (state.byTouch && !told.found) {
    told.telling = Telling::ByTouch;
  } else if (!state.elapsed.known() && !told.found && told.passed < told.early) {
    told.telling = Telling::About;
  } else {
    told.telling = told.closes ? ofWindow(told, terms, state) : ofDrying(told);
  }
  return told;
}

std::vector<OutlinePoint> outlineOf(const Told& told, Duration until) {
  const bool gone = told.telling == Telling::PastIt || told.telling == Telling::LikelyClosed;
  if (gone || told.telling == Telling::ByTouch) return {};
  const Duration horizon = told.passed + until;
  const Duration start = told.found ? told.passed : std::max(told.passed, told.early);
  const Duration end = told.closes ? std::min(horizon, told.closes->late) : horizon;
  if (start >= end) return {};
  std::vector<Duration> times{start, end};
  const auto add = [&](Duration at) {
    if (at > start && at < end) times.push_back(at);
  };
  for (const Duration at : {told.half, told.late}) add(at);
  if (told.closes) {
    for (const Duration at : {told.closes->early, told.closes->half}) add(at);
  }
  std::sort(times.begin(), times.end());
  times.erase(std::unique(times.begin(), times.end()), times.end());
  std::vector<OutlinePoint> points;
  const auto point = [&](Duration at, double height) { points.push_back({at - told.passed, height}); };
  if (start > told.passed) point(start, 0);
  for (std::size_t i = 0; i < times.size(); ++i) {
    point(times[i], std::min(risen(told, times[i]), standing(told, times[i])));
    if (i + 1 == times.size()) break;
    if (const auto at = crossing(told, times[i], times[i + 1]))
      point(*at, std::min(risen(told, *at), standing(told, *at)));
  }
  if (end < horizon) point(end, 0);
  return points;
}

}  // namespace core::waits
