#pragma once
// Readings of the machine's clocks, and how much time lies between two of them.
//
// Within one boot the boot-time clock is the authority: it counts through sleep and nobody can set it. Across boots
// there is only the wall clock for the time the machine was off, and it is trusted only where a time server steered it
// on both sides. An unknown time is reported and the maker is asked, never guessed.
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
// A wall clock after this was set wrong or has rolled over. 2100-01-01T00:00Z.
inline constexpr std::int64_t kLatestBelievableUtc = 4'102'444'800'000;
constexpr bool isBelievable(std::int64_t utcMilliseconds) {
  return utcMilliseconds >= kEarliestBelievableUtc && utcMilliseconds <= kLatestBelievableUtc;
}
// The last wall-clock time that is stored unchanged: four digits of year. 9999-12-31T23:59:59.999Z.
inline constexpr std::int64_t kLatestWritableUtc = 253'402'300'799'999;
// No machine stays up for longer: ten years, in nanoseconds.
inline constexpr std::int64_t kLongestUptime = 315'576'000'000'000'000;
// Where a machine seems to have been off for longer than this, the clock is considered wrong.
inline constexpr units::Duration kLongestBelievedOff = units::Duration::minutes(30 * 24 * 60);
// After the program has started, the maker is asked only once a time server has been waited for this long.
inline constexpr units::Duration kSyncPatience = units::Duration::milliseconds(60'000);

struct ClockLog {
  // Heartbeats of this device in the order they were written. The newest of each boot has to be there, and those before
  // each jump of the wall clock.
  std::vector<ClockReading> heartbeats;
  // How long the machine was off before a boot (by its id), as the maker entered it.
  std::map<std::string, units::Duration> toldOff;
  // When this run of the program began to read the clocks.
  std::optional<ClockReading> opened;
};

enum class Certainty {
  Certain,   // one boot, or every off-time known from a steered clock
  Told,      // an off-time was entered by the maker
  Checking,  // the wall clock is not steered yet; it may be in a moment
  Unknown,   // nobody knows how long the machine was off: the maker has to be asked
};

struct Elapsed {
  units::Duration time;  // the time to compute with, never negative; where it is not known, the least possible
  // The greatest possible time: equal to `time` where that is known; the wall clock's answer where it gives a possible
  // one; 30 days off where it does not.
  units::Duration most;
  Certainty certainty = Certainty::Certain;
  std::string askAbout;  // Unknown: the boot before which the off-time is not known (the newest)

  bool known() const { return certainty == Certainty::Certain || certainty == Certainty::Told; }
};

// A wall clock found wrong is corrected by a later reading of the same boot.
Elapsed elapsedBetween(const ClockReading& start, const ClockReading& now, const ClockLog& log);

// Returns the time off before a boot by the wall clock; nothing where that is not possible.
std::optional<units::Duration> offByWallClock(const std::string& bootId, const ClockReading& now, const ClockLog& log);

}  // namespace core::waits
