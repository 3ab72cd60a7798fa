#include "core/jobs/looks.h"

#include <algorithm>
#include <limits>
#include <optional>
#include <tuple>

#include "core/waits/course.h"
#include "core/workflow/agenda.h"

namespace core::jobs {

// This file uses the types of the record throughout.
using namespace record;
namespace {

using units::Duration;
using waits::ClockReading;
using waits::Observation;
using waits::Verdict;

constexpr double kNever = std::numeric_limits<double>::infinity();
constexpr double kMinutesAMonth = 30.0 * 24 * 60;

// The bounds that the looks at one wait set on its opening and its closing, in stated time (the room taken out).
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

std::optional<Lesson> openingOf(const Bounds& bounds, Duration stated, const ClockReading& started) {
  const auto by = bounds.ready ? bounds.ready : bounds.past;
  if (bounds.notYet == Duration() && !by) return std::nullopt;
  return Lesson{started, ratio(bounds.notYet, stated), by ? ratio(*by, stated) : kNever};
}

std::optional<Lesson> widthOf(const Bounds& bounds, Duration stated, const ClockReading& started) {
  const Duration least = bounds.ready ? *bounds.stillOn - *bounds.ready : Duration();
  if (least == Duration() && !bounds.past) return std::nullopt;
  return Lesson{started, ratio(least, stated), bounds.past ? ratio(*bounds.past - bounds.notYet, stated) : kNever};
}

// The lessons of one wait, and the stated spans they refer to.
struct Said {
  std::optional<Lesson> opening;
  std::optional<Lesson> width;
  units::Span opens;
  units::Span stays;
};

std::optional<Said> saidBy(const JobState& state, const RunningWait& run, const waits::ClockLog& log,
                           const waits::RoomTrack& rooms) {
  const waits::WaitTerms terms = termsOf(state, run, log);
  if (run.looks.empty() || terms.opens.likely <= Duration()) return std::nullopt;
  const waits::ClockReading& lastLook = run.looks.back().first;
  if (!waits::elapsedBetween(run.started, lastLook, log).known()) return std::nullopt;
  const waits::Course course(terms.model, terms.reference,
                             waits::roomsSince(run.started, lastLook, rooms, terms.planned, log));
  if (course.byTouch()) return std::nullopt;
  const Bounds bounds = boundsOf(terms.looks, course);
  Said said;
  said.opens = terms.opens;
  said.opening = openingOf(bounds, terms.opens.likely, run.started);
  if (!terms.closes) return said;
  said.stays = waits::widthOf(terms.opens, *terms.closes);
  if (said.stays.likely > Duration()) said.width = widthOf(bounds, said.stays.likely, run.started);
  return said;
}

bool isFar(const std::optional<Lesson>& lesson, const units::Span& stated) {
  return lesson && waits::farOutside(lesson->lower, lesson->upper, stated);
}

void observe(Observed& found, const JobState& state, const RunningWait& run, const waits::ClockLog& log,
             const waits::RoomTrack& rooms) {
  const auto said = saidBy(state, run, log, rooms);
  if (!said) return;
  const waits::Kind kind = workflow::kindOf(*run.wait);
  const auto teach = [&](const std::optional<Lesson>& lesson, const units::Span& stated, auto& lessons) {
    if (lesson && (run.sure || !isFar(lesson, stated))) lessons[kind].push_back(*lesson);
  };
  teach(said->opening, said->opens, found.opening);
  teach(said->width, said->stays, found.width);
}

// A total order of all that counts, so that what is left out does not depend on how they came.
bool newer(const Lesson* a, const Lesson* b) {
  if (a->started.utcMilliseconds != b->started.utcMilliseconds) {
    return a->started.utcMilliseconds > b->started.utcMilliseconds;
  }
  return std::tie(a->started.bootId, a->started.boottimeNanoseconds, a->lower, a->upper) <
         std::tie(b->started.bootId, b->started.boottimeNanoseconds, b->lower, b->upper);
}

}  // namespace

bool farOutside(const JobState& state, const RunningWait& run, const waits::ClockLog& log,
                const waits::RoomTrack& rooms) {
  const auto said = saidBy(state, run, log, rooms);
  return said && (isFar(said->opening, said->opens) || isFar(said->width, said->stays));
}

Observed observed(const JobState& state, const waits::ClockLog& log, const waits::RoomTrack& rooms) {
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
  for (const RunningWait* run : runs) observe(found, state, *run, log, rooms);
  return found;
}

waits::Learning learn(const std::vector<const Observed*>& jobs, const waits::ClockLog& log, const ClockReading& now) {
  using Lessons = std::map<waits::Kind, std::vector<Lesson>>;
  const auto observations = [&](Lessons Observed::*part) {
    std::map<waits::Kind, std::vector<const Lesson*>> byKind;
    for (const Observed* job : jobs) {
      for (const auto& [kind, lessons] : job->*part) {
        for (const Lesson& lesson : lessons) byKind[kind].push_back(&lesson);
      }
    }
    std::map<waits::Kind, std::vector<Observation>> all;
    for (auto& [kind, lessons] : byKind) {
      const auto kept = std::min(lessons.size(), kMostLessons);
      std::partial_sort(lessons.begin(), lessons.begin() + static_cast<std::ptrdiff_t>(kept), lessons.end(), newer);
      lessons.resize(kept);
      for (const Lesson* lesson : lessons) {
        const double age = waits::elapsedBetween(lesson->started, now, log).time.inMinutes() / kMinutesAMonth;
        all[kind].push_back({lesson->lower, lesson->upper, age});
      }
    }
    return waits::Beliefs(all);
  };
  return {observations(&Observed::opening), observations(&Observed::width)};
}

}  // namespace core::jobs
