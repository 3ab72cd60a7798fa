#pragma once
// The properties that all events of one type share, stated beside the type itself: see events.h.
#include <string_view>
#include <type_traits>

namespace core::record {

// The streams an event may be in. In any other it counts as one this program does not know.
enum Streams : unsigned { kOfJob = 1, kOfBench = 2, kOfDesign = 4 };

// Whether it is an act of the maker's that can be taken back. Hearing an alert and beginning a step cannot.
enum class Undo { Possible, None };

// The subject a later event may correct.
enum class Corrects { Nothing, Note, Photograph, Figure, Board, Batches };

// Groups of events in the record as people read it.
enum class TimelineKind {
  TakenIn,
  Begun,
  Done,
  Repeated,   // reported done once more, which changes nothing
  Elsewhere,  // made ready by a bench that has not worked this job: shown, without effect here
  Accepted,   // such a preparation taken into use
  Looked,
  Heard,  // an alert was answered, or put off
  Fault,
  Mended,
  Measured,
  Chosen,
  Cut,
  Noted,
  Photographed,
  Batches,
  Moved,    // off the bench, or back
  Renewed,  // its techniques were taken anew
  TakenBack,
  Unknown,  // of a newer program: stored, not understood
};

struct Traits {
  unsigned streams = 0;
  Undo undo = Undo::None;
  // It moves the work of a job: the fold (core/jobs/fold.cpp) has a function for it.
  bool work = false;
  // Later acts may depend on it: core/jobs/dependents.cpp finds which do.
  bool restedOn = false;
  Corrects corrects = Corrects::Nothing;
  TimelineKind kind = TimelineKind::Unknown;
  // The id of the message shown for it, with the payload's texts and numbers as arguments under their own names. Empty
  // where it is in no job's record.
  std::string_view told = {};
};

// The types of one header, listed at its end; happening.h combines the lists.
template <typename... Types>
struct EventTypes {};

// True where a type is in such a list.
template <typename One, typename List>
inline constexpr bool isOneOf = false;
template <typename One, typename... Types>
inline constexpr bool isOneOf<One, EventTypes<Types...>> = (std::is_same_v<One, Types> || ...);

}  // namespace core::record
