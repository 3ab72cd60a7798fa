#pragma once
// An event is something that happened, stored for ever. State is the fold of events and nothing else.
//
// Events are ordered by (hlc, device, device sequence), so that reading the same events twice, or two devices' events
// in either order, gives the same state. Several benches may write to one shop: nothing here assumes one.
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

// The greatest believable value of either part. Up to it, text sorts like numbers.
inline constexpr std::int64_t kMostMilliseconds = waits::kLatestBelievableUtc;
inline constexpr std::int64_t kMostCounts = 999'999;
// Returns whether an event with this clock keeps it; see `arrange`. {0, 0} is the clock of an unreadable text.
bool isBelievable(const Hlc& hlc);

// Returns whether a text can be the id of an event, an act or a device: 1 to 100 printable ASCII characters, no spaces.
bool isPlainId(std::string_view text);

// Returns the next reading after `last`, given the wall clock. A wall clock that is not believable is ignored: then, as
// where the clock went back, only the count increases. After a million acts in one millisecond the next millisecond is
// used; at the greatest believable clock the reading no longer changes, and the device's own count orders its acts.
Hlc tick(const Hlc& last, std::int64_t wallMilliseconds);
// The text sorts like the number: "0001764063195123-000004".
std::string text(const Hlc& hlc);
// Returns {0, 0} where the text is not a clock.
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

  // Returns when it happened, limited to the range that can be computed with, whatever the record contains.
  waits::ClockReading clock() const;
};

// The most a device can count to: an act a millisecond for thirty years.
inline constexpr std::int64_t kMostSequence = 1'000'000'000'000;
// The last number a device continues from. Higher numbers in its record were not counted by the device itself.
inline constexpr std::int64_t kLastOwnSequence = kMostSequence - 1'000'000'000;

// Compares the clocks as the events state them.
bool before(const Event& a, const Event& b);

// Returns the text of that name in a payload; "" where there is none or it is no text.
std::string textOf(const base::Value& payload, std::string_view key);
// Returns the whole number of that name; nothing where there is none.
std::optional<std::int64_t> integerOf(const base::Value& payload, std::string_view key);
// Puts events in fold order and drops duplicates. An event whose clock is not believable follows what its device wrote
// before it, by the device's count, and is given that clock here; one whose number is not believable either is first.
void arrange(std::vector<Event>& events);
// Returns the intents whose events do not count: those that a live undo names. Requires fold order.
std::set<std::string> voidedIntents(const std::vector<Event>& events);

// The result of `decide`: an event without its stamps. The workbench adds ids, sequence and clocks. Drafts are made by
// draftOf (happening.h).
struct EventDraft {
  enum class Stream { Job, Bench, Design };
  Stream stream = Stream::Job;
  std::string type;
  int version = 1;
  base::Value payload;
};

// Writes all columns as one JSON object with sorted, stable keys, for export and for tests.
base::Value eventJson(const Event& event);

}  // namespace core::record
