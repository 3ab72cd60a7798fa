#pragma once
// Readings of the machine's clocks, and how much time lies between two of them.
//
// Within one boot the boot-time clock is the authority: it counts through sleep and nobody can set it. Across boots
// there is only the wall clock for the time the machine was off, and it is believed only where a time server steered
// it on both sides. What cannot be known is said and asked about, never guessed.
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/units/duration.h"

namespace core::waits {

struct ClockReading {
  std::int64_t utcMilliseconds = 0;  // since 1970-01-01T00:00Z
  std::string bootId;                // one for each boot of one device
  std::int64_t boottimeNanoseconds = 0;
  bool synced = false;  // whether the wall clock was known to be set by a time server

  friend bool operator==(const ClockReading&, const ClockReading&) = default;
};

// A wall clock before this has never been set: no machine ran this program then. 2025-01-01T00:00Z.
inline constexpr std::int64_t kEarliestBelievableUtc = 1'735'689'600'000;
// Nor after this: a clock that shows it was set wrong or has rolled over. 2100-01-01T00:00Z.
inline constexpr std::int64_t kLatestBelievableUtc = 4'102'444'800'000;
constexpr bool isBelievable(std::int64_t utcMilliseconds) {
  return utcMilliseconds >= kEarliestBelievableUtc && utcMilliseconds <= kLatestBelievableUtc;
}
// The last a wall clock may say that is kept as it was said: four digits of year. 9999-12-31T23:59:59.999Z.
inline constexpr std::int64_t kLatestWritableUtc = 253'402'300'799'999;
// No machine is up for longer: ten years, in nanoseconds.
inline constexpr std::int64_t kLongestUptime = 315'576'000'000'000'000;
// A machine off for longer than this is taken for a clock that is wrong.
inline constexpr units::Duration kLongestBelievedOff = units::Duration::minutes(30 * 24 * 60);
// How long after the program came up a time server is waited for before the maker is asked.
inline constexpr units::Duration kSyncPatience = units::Duration::milliseconds(60'000);

struct ClockLog {
  // Signs of life of this device in the order they were written. Of each boot the newest has to be there, and
  // whatever went before a jump of the wall clock.
  std::vector<ClockReading> heartbeats;
  // How long the machine was off before a boot (by its id), on the maker's word.
  std::map<std::string, units::Duration> toldOff;
  // When this run of the program began to read the clocks.
  std::optional<ClockReading> opened;
};

enum class Certainty {
  Certain,   // one boot, or every off-time known from a steered clock
  Told,      // an off-time rests on the maker's word
  Checking,  // the wall clock is not steered yet; it may be in a moment
  Unknown,   // nobody knows how long the machine was off: to be asked
};

struct Elapsed {
  units::Duration time;  // what is reckoned with, never negative; where not known the least it can be
  // The most it can be: equal to `time` where that is known; the wall clock's answer where it gives a possible one;
  // 30 days off where it does not.
  units::Duration most;
  Certainty certainty = Certainty::Certain;
  std::string askAbout;  // Unknown: the boot before which the off-time is not known (the newest)

  bool known() const { return certainty == Certainty::Certain || certainty == Certainty::Told; }
};

// A wall clock found wrong is corrected by what a later reading of the same boot says.
Elapsed elapsedBetween(const ClockReading& start, const ClockReading& now, const ClockLog& log);

// The off-time the wall clock gives for the time before a boot; nothing where it gives no possible one.
std::optional<units::Duration> offByWallClock(const std::string& bootId, const ClockReading& now, const ClockLog& log);

}  // namespace core::waits
