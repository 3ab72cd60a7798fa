#include "core/waits/clock.h"

#include <algorithm>
#include <limits>

namespace core::waits {
namespace {

using units::Duration;

constexpr std::int64_t kNanosecondsPerMillisecond = 1'000'000;
// Clocks are slewed and stamps are rounded: so much of running backwards means nothing.
constexpr std::int64_t kSlackMilliseconds = 5000;

std::int64_t upMilliseconds(const ClockReading& reading) {
  return reading.boottimeNanoseconds / kNanosecondsPerMillisecond;
}

// The known times of one boot, all in milliseconds.
struct Boot {
  std::string id;
  std::int64_t last = 0;    // boot-time of the last sign of life
  std::int64_t zero = 0;    // wall clock at its boot-time 0, by its best reading
  bool synced = false;      // whether that reading was steered
  bool believable = false;  // whether the clock had been set at all
};

class Boots {
 public:
  // Orders boots by their heartbeats. The boot of `start`, where it has none, is alone before that of `now`, because it
  // may be another device's.
  Boots(const ClockReading& start, const ClockReading& now, const ClockLog& log) {
    const bool known = std::any_of(log.heartbeats.begin(), log.heartbeats.end(),
                                   [&](const ClockReading& heartbeat) { return heartbeat.bootId == start.bootId; });
    if (!known) take(start);
    for (const ClockReading& heartbeat : log.heartbeats) {
      if (known || heartbeat.bootId == now.bootId) take(heartbeat);
    }
    take(start);
    take(now);
  }

  const std::vector<Boot>& all() const { return m_boots; }
  std::size_t indexOf(const std::string& id) const {
    const auto at = std::find_if(m_boots.begin(), m_boots.end(), [&](const Boot& boot) { return boot.id == id; });
    return static_cast<std::size_t>(at - m_boots.begin());
  }

 private:
  void take(const ClockReading& reading) {
    const std::size_t index = indexOf(reading.bootId);
    if (index == m_boots.size()) m_boots.push_back({reading.bootId, 0, 0, false, false});
    Boot& boot = m_boots[index];
    const std::int64_t up = upMilliseconds(reading);
    // The newest steered reading knows best; without one, the newest.
    const bool newer = up >= boot.last;
    const bool steered = reading.synced && isBelievable(reading.utcMilliseconds);
    if (steered ? (newer || !boot.synced) : (newer && !boot.synced)) {
      boot.zero = reading.utcMilliseconds - up;
      boot.synced = boot.synced || steered;
      boot.believable = isBelievable(reading.utcMilliseconds);
    }
    boot.last = std::max(boot.last, up);
  }

  std::vector<Boot> m_boots;
};

struct Off {
  std::int64_t time = 0;
  std::int64_t most = 0;
  Certainty certainty = Certainty::Certain;
};

std::optional<std::int64_t> byWall(const Boot& before, const Boot& after) {
  const std::int64_t off = after.zero - (before.zero + before.last);
  if (!before.believable || !after.believable) return std::nullopt;
  if (off < -kSlackMilliseconds || off > kLongestBelievedOff.inMilliseconds()) return std::nullopt;
  return std::max<std::int64_t>(0, off);
}

Off offBetween(const Boot& before, const Boot& after, const ClockReading& now, const ClockLog& log) {
  if (const auto told = log.toldOff.find(after.id); told != log.toldOff.end()) {
    return {told->second.inMilliseconds(), told->second.inMilliseconds(), Certainty::Told};
  }
  const auto wall = byWall(before, after);
  if (wall && before.synced && after.synced) return {*wall, *wall, Certainty::Certain};
  const std::int64_t most = wall.value_or(kLongestBelievedOff.inMilliseconds());
  const bool mayBeSteeredYet = after.id == now.bootId && !after.synced && before.synced && log.opened &&
                               log.opened->bootId == now.bootId &&
                               upMilliseconds(now) - upMilliseconds(*log.opened) < kSyncPatience.inMilliseconds();
  return {0, most, mayBeSteeredYet ? Certainty::Checking : Certainty::Unknown};
}

}  // namespace

Elapsed elapsedBetween(const ClockReading& start, const ClockReading& now, const ClockLog& log) {
  if (start.bootId == now.bootId) {
    const Duration time = Duration::milliseconds(
        std::max<std::int64_t>(0, (now.boottimeNanoseconds - start.boottimeNanoseconds) / kNanosecondsPerMillisecond));
    return {time, time, Certainty::Certain, ""};
  }
  const Boots boots(start, now, log);
  const std::size_t first = boots.indexOf(start.bootId);
  const std::size_t last = boots.indexOf(now.bootId);
  Elapsed elapsed;
  // An instant of an earlier boot is before the start.
  if (last < first) return elapsed;
  std::int64_t time = std::max<std::int64_t>(0, boots.all()[first].last - upMilliseconds(start));
  std::int64_t most = time;
  for (std::size_t i = first + 1; i <= last; ++i) {
    const Boot& boot = boots.all()[i];
    const Off off = offBetween(boots.all()[i - 1], boot, now, log);
    const std::int64_t up = std::max<std::int64_t>(0, i == last ? upMilliseconds(now) : boot.last);
    time += off.time + up;
    most += off.most + up;
    elapsed.certainty = std::max(elapsed.certainty, off.certainty);
    if (off.certainty == Certainty::Unknown) elapsed.askAbout = boot.id;
  }
  elapsed.time = Duration::milliseconds(time);
  elapsed.most = Duration::milliseconds(most);
  return elapsed;
}

std::optional<Duration> offByWallClock(const std::string& bootId, const ClockReading& now, const ClockLog& log) {
  if (log.heartbeats.empty()) return std::nullopt;
  const Boots boots(log.heartbeats.front(), now, log);
  const std::size_t index = boots.indexOf(bootId);
  if (index == 0 || index >= boots.all().size()) return std::nullopt;
  const auto off = byWall(boots.all()[index - 1], boots.all()[index]);
  if (!off) return std::nullopt;
  return Duration::milliseconds(*off);
}

}  // namespace core::waits
