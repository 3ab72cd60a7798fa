#pragma once
// What holds for every event of one type, stated beside the type itself: see events.h.
#include <string_view>
#include <type_traits>

namespace core::record {

// The streams an event may stand in. In any other it counts as one this program does not know.
enum Streams : unsigned { kOfJob = 1, kOfBench = 2, kOfDesign = 4 };

// Whether it is an act of the maker's, which can be taken back. Being heard is none, nor is having begun.
enum class Undo { Possible, None };

// What it says something about that a later event may say otherwise; the later one corrects it.
enum class Corrects { Nothing, Note, Photograph, Figure, Board, Batches };

// Groups of events in the record as people read it.
enum class TimelineKind {
  TakenIn,
  Begun,
  Done,
  Repeated,   // said to be done once more, which does nothing
  Elsewhere,  // made ready by a bench that has not worked this job: told, and nothing here
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
  Unknown,  // of a newer program: kept, not understood
};

struct Traits {
  unsigned streams = 0;
  Undo undo = Undo::None;
  // It moves the work of a job: the fold (core/jobs/fold.cpp) has a function for it.
  bool work = false;
  // What was done later may rest on it: core/jobs/dependents.cpp says what does.
  bool restedOn = false;
  Corrects corrects = Corrects::Nothing;
  TimelineKind kind = TimelineKind::Unknown;
  // The message that tells it, with the payload's texts and numbers as arguments under their own names. Empty where it
  // stands in no job's record.
  std::string_view told = {};
};

// The types of one header, at its end; happening.h puts them together.
template <typename... Types>
struct EventTypes {};

// Whether a type is one of such a list.
template <typename One, typename List>
inline constexpr bool isOneOf = false;
template <typename One, typename... Types>
inline constexpr bool isOneOf<One, EventTypes<Types...>> = (std::is_same_v<One, Types> || ...);

}  // namespace core::record
