#include "core/record/looks.h"

#include <algorithm>
#include <limits>
#include <optional>

#include "core/waits/course.h"

namespace core::record {
namespace {

using units::Duration;
using waits::Observation;
using waits::Verdict;

constexpr double kNever = std::numeric_limits<double>::infinity();
constexpr double kMinutesAMonth = 30.0 * 24 * 60;

// What the looks at one wait leave, in stated time (the room taken out): before and after the opening, and of the
// closing.
struct Bounds {
  Duration notYet;                  // the last look that found it not ready
  std::optional<Duration> ready;    // the first that found it ready since
  std::optional<Duration> stillOn;  // the last that found it ready
  std::optional<Duration> past;     // the first that found it past it
};

Bounds boundsOf(const std::vector<waits::Look>& looks, const waits::Course& course) {
  Bounds bounds;
  for (const waits::Look& look : looks) {
    const Duration at = course.stated(look.at);
    switch (look.verdict) {
      case Verdict::NotYet: bounds = {at, {}, {}, {}}; break;
      case Verdict::Tacky:
      case Verdict::Dry:
        if (!bounds.ready) bounds.ready = at;
        bounds.stillOn = at;
        bounds.past.reset();
        break;
      case Verdict::PastIt:
        if (!bounds.past) bounds.past = at;
        break;
    }
  }
  return bounds;
}

double ratio(Duration found, Duration stated) {
  return static_cast<double>(found.inMilliseconds()) / static_cast<double>(stated.inMilliseconds());
}

std::optional<Observation> openingOf(const Bounds& bounds, Duration stated, double age) {
  const auto by = bounds.ready ? bounds.ready : bounds.past;
  if (bounds.notYet == Duration() && !by) return std::nullopt;
  return Observation{ratio(bounds.notYet, stated), by ? ratio(*by, stated) : kNever, age};
}

std::optional<Observation> widthOf(const Bounds& bounds, Duration stated, double age) {
  const Duration least = bounds.ready ? *bounds.stillOn - *bounds.ready : Duration();
  if (least == Duration() && !bounds.past) return std::nullopt;
  return Observation{ratio(least, stated), bounds.past ? ratio(*bounds.past - bounds.notYet, stated) : kNever, age};
}

void observe(Observed& found, const JobState& state, const RunningWait& run, const waits::ClockLog& log,
             const waits::RoomTrack& rooms, const waits::ClockReading& now) {
  const waits::WaitTerms terms = termsOf(state, run, log);
  if (run.looks.empty() || terms.opens.likely <= Duration()) return;
  const waits::ClockReading& lastLook = run.looks.back().first;
  if (!waits::elapsedBetween(run.started, lastLook, log).known()) return;
  const waits::Course course(terms.model, terms.reference,
                             waits::roomsSince(run.started, lastLook, rooms, terms.planned, log));
  if (course.byTouch()) return;
  const Bounds bounds = boundsOf(terms.looks, course);
  const double age = waits::elapsedBetween(run.started, now, log).time.inMinutes() / kMinutesAMonth;
  const std::string kind = kindOf(run.id);
  if (const auto one = openingOf(bounds, terms.opens.likely, age)) found.opening[kind].push_back(*one);
  if (!terms.closes) return;
  const Duration width = waits::widthOf(terms.opens, *terms.closes).likely;
  if (width <= Duration()) return;
  if (const auto one = widthOf(bounds, width, age)) found.width[kind].push_back(*one);
}

}  // namespace

Observed observed(const JobState& state, const waits::ClockLog& log, const waits::RoomTrack& rooms,
                  const waits::ClockReading& now) {
  std::vector<const RunningWait*> runs;
  for (const RunningWait& run : state.earlierWaits) runs.push_back(&run);
  for (const auto& [id, run] : state.waits) {
    // While it runs, "not yet" already moves the wait itself; it teaches once it has come to something.
    if (!run.looks.empty() && run.looks.back().second != Verdict::NotYet) runs.push_back(&run);
  }
  std::stable_sort(runs.begin(), runs.end(), [](const RunningWait* a, const RunningWait* b) {
    return a->started.utcMilliseconds < b->started.utcMilliseconds;
  });
  Observed found;
  for (const RunningWait* run : runs) observe(found, state, *run, log, rooms, now);
  return found;
}

Learning learn(const std::vector<const Observed*>& jobs) {
  std::map<std::string, std::vector<Observation>> opening;
  std::map<std::string, std::vector<Observation>> width;
  const auto add = [](auto& all, const auto& some) {
    for (const auto& [kind, observations] : some) {
      all[kind].insert(all[kind].end(), observations.begin(), observations.end());
    }
  };
  for (const Observed* job : jobs) {
    add(opening, job->opening);
    add(width, job->width);
  }
  return {waits::Beliefs(opening), waits::Beliefs(width)};
}

}  // namespace core::record
