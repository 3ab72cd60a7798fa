#pragma once
// The meaning of a foot: presses and releases of two pedals become Forward, Back and Heard. Pure; times in milliseconds
// of any steady clock.
//
// A pedal acts when it is let go, so that holding it (Heard) never does something else first. Contacts bounce: a press
// sooner than kBounce after a release of the same pedal continues the same press, and an act locks its pedal for
// kLockOut. The first short press within kAlertGuard of an alert's appearance was aimed at the screen before it and is
// swallowed.
#include <array>
#include <cstdint>
#include <optional>

namespace app::pedal {

enum class Pedal { Forward, Back, Enter };
enum class PedalAct { Forward, Back, Heard };

inline constexpr std::int64_t kBounce = 50;
inline constexpr std::int64_t kLockOut = 250;
inline constexpr std::int64_t kLongPress = 700;
inline constexpr std::int64_t kAlertGuard = 700;

class PedalKeys {
 public:
  void alertAppeared(std::int64_t now);
  void alertWent();

  void pressed(Pedal pedal, std::int64_t now);
  std::optional<PedalAct> released(Pedal pedal, std::int64_t now);
  // A pedal held for kLongPress means Heard while it is still down: call this as often as convenient.
  std::optional<PedalAct> held(std::int64_t now);

 private:
  struct Key {
    std::optional<std::int64_t> downSince;
    std::optional<std::int64_t> lastRelease;
    std::optional<std::int64_t> lastAct;
    bool spent = false;  // held long enough already, or swallowed: its release means nothing
  };
  Key& key(Pedal pedal) { return m_keys[static_cast<std::size_t>(pedal)]; }

  std::array<Key, 3> m_keys;
  std::optional<std::int64_t> m_alertSince;
  bool m_swallowed = false;
};

}  // namespace app::pedal
