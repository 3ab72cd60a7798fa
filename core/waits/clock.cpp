#include "core/waits/clock.h"

#include <algorithm>

namespace core::waits {
namespace {

constexpr std::int64_t kNanosecondsPerMillisecond = 1'000'000;
constexpr std::int64_t kLongestBelievedMilliseconds = 30LL * 24 * 3600 * 1000;

}  // namespace

Elapsed elapsedBetween(const ClockReading& start, const ClockReading& now, const ClockLog& log) {
  if (start.bootId == now.bootId) {
    const std::int64_t awake = (now.boottimeNanoseconds - start.boottimeNanoseconds) / kNanosecondsPerMillisecond;
    return {units::Duration::milliseconds(std::max<std::int64_t>(0, awake)), true};
  }
  // The last heartbeat before now, of any boot, bounds the wall clock from below; the last one of the starting
  // boot bounds the time that boot was seen running.
  std::int64_t latestUtc = start.utcMilliseconds;
  std::int64_t seenInFirstBoot = 0;
  for (const ClockReading& heartbeat : log.heartbeats) {
    if (heartbeat.bootId == now.bootId) continue;
    latestUtc = std::max(latestUtc, heartbeat.utcMilliseconds);
    if (heartbeat.bootId == start.bootId) {
      seenInFirstBoot = std::max(seenInFirstBoot, heartbeat.boottimeNanoseconds - start.boottimeNanoseconds);
    }
  }
  const std::int64_t byWall = now.utcMilliseconds - start.utcMilliseconds;
  const std::int64_t least =
      (seenInFirstBoot + std::max<std::int64_t>(0, now.boottimeNanoseconds)) / kNanosecondsPerMillisecond;
  const bool believable = now.utcMilliseconds >= latestUtc && byWall <= kLongestBelievedMilliseconds;
  if (!believable) return {units::Duration::milliseconds(least), false};
  return {units::Duration::milliseconds(std::max(byWall, std::int64_t{0})), true};
}

}  // namespace core::waits
