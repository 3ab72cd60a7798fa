#pragma once
// What happened, as it is kept for ever. State is the fold of events and nothing else.
//
// Events are ordered by (hlc, device, device sequence), so that taking in the same events twice, or two devices'
// events in either order, gives the same state. Several benches may write to one shop: nothing here assumes one.
#include <compare>
#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/json.h"
#include "core/waits/clock.h"

namespace core::record {

// Hybrid logical clock: wall milliseconds, never running backwards, and a counter within one millisecond.
struct Hlc {
  std::int64_t milliseconds = 0;
  std::int64_t counter = 0;
  friend auto operator<=>(const Hlc&, const Hlc&) = default;
};

// The most of either part that is believed, and that sorts as text like it sorts as a number.
inline constexpr std::int64_t kMostMilliseconds = waits::kLatestBelievableUtc;
inline constexpr std::int64_t kMostCounts = 999'999;
// Whether an event with it stands where it says; see `arrange`. {0, 0} is what an unreadable text gives.
bool isBelievable(const Hlc& hlc);

// The next reading after `last`, given the wall clock. A wall clock nobody can believe is left out of it: then, as
// where the clock went back, only the count goes on. Where a million acts leave a millisecond no count the next one is
// taken; at the very end of what is believed it stands still, and the device's own count tells its acts apart.
Hlc tick(const Hlc& last, std::int64_t wallMilliseconds);
// Sorts as text like it sorts as a number: "0001764063195123-000004".
std::string text(const Hlc& hlc);
// Returns {0, 0} where the text is not one.
Hlc parseHlc(std::string_view text);

struct Event {
  std::string eventId;   // UUIDv7
  std::string deviceId;  // UUID of the device that wrote it
  std::int64_t deviceSequence = 0;
  Hlc hlc;
  std::string intentId;  // UUIDv7; all events of one act share it
  std::string stream;    // "job/<id>", "bench/<id>" or "design/<id>"
  std::string type;      // of one of the structs of happening.h, or one that a newer program knows
  int version = 1;
  std::int64_t occurredUtc = 0;  // when it happened, ms; a maker may say "ten minutes ago"
  std::int64_t recordedUtc = 0;  // when it was written, ms
  std::string zone;              // IANA zone shown at the time, for the record
  std::string bootId;
  std::int64_t boottimeNanoseconds = 0;  // of `occurred`; counts only on its own device
  bool synced = false;
  base::Value payload;

  // When it happened, cut to what can be reckoned with whatever the record says.
  waits::ClockReading clock() const;
};

// The most a device can count to: an act a millisecond for thirty years.
inline constexpr std::int64_t kMostSequence = 1'000'000'000'000;
// The last number a device goes on from. What its record holds above it the device did not count itself.
inline constexpr std::int64_t kLastOwnSequence = kMostSequence - 1'000'000'000;

// By what events say of themselves.
bool before(const Event& a, const Event& b);

// The text of that name in a payload; "" where there is none or it is no text.
std::string textOf(const base::Value& payload, std::string_view key);
// The whole number of that name; nothing where there is none.
std::optional<std::int64_t> integerOf(const base::Value& payload, std::string_view key);
// Puts events in fold order and drops those that are there twice. One whose clock cannot be believed comes right after
// what its device wrote before it, by the device's count, and is given that clock here; one whose number cannot be
// believed either comes first.
void arrange(std::vector<Event>& events);
// Intents whose events count for nothing: those that a live undo names. Requires fold order.
std::set<std::string> voidedIntents(const std::vector<Event>& events);

// What `decide` gives: an event without its stamps. The workbench adds ids, sequence and clocks. Made by draftOf
// (happening.h).
struct EventDraft {
  enum class Stream { Job, Bench, Design };
  Stream stream = Stream::Job;
  std::string type;
  int version = 1;
  base::Value payload;
};

// All columns as one JSON object with sorted, stable keys: for export and for tests.
base::Value eventJson(const Event& event);

}  // namespace core::record
