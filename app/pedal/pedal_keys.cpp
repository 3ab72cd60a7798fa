#include "app/pedal/pedal_keys.h"

namespace app::pedal {

void PedalKeys::alertAppeared(std::int64_t now) {
  m_alertSince = now;
  m_swallowed = false;
}

void PedalKeys::alertWent() { m_alertSince.reset(); }

void PedalKeys::pressed(Pedal pedal, std::int64_t now) {
  Key& pressedKey = key(pedal);
  if (pressedKey.downSince) return;
  const bool bounced = pressedKey.lastRelease && now - *pressedKey.lastRelease < kBounce;
  const bool locked = pressedKey.lastAct && now - *pressedKey.lastAct < kLockOut;
  pressedKey.downSince = now;
  pressedKey.spent = bounced || locked;
  const bool guarded = m_alertSince && now - *m_alertSince < kAlertGuard;
  if (guarded && !m_swallowed && !pressedKey.spent) {
    m_swallowed = true;
    pressedKey.spent = true;
  }
}

std::optional<PedalAct> PedalKeys::released(Pedal pedal, std::int64_t now) {
  Key& releasedKey = key(pedal);
  if (!releasedKey.downSince) return std::nullopt;
  const bool spent = releasedKey.spent;
  const bool isLong = now - *releasedKey.downSince >= kLongPress;
  releasedKey.downSince.reset();
  releasedKey.lastRelease = now;
  if (spent) return std::nullopt;
  releasedKey.lastAct = now;
  if (isLong) return PedalAct::Heard;
  switch (pedal) {
    case Pedal::Forward: return PedalAct::Forward;
    case Pedal::Back: return PedalAct::Back;
    case Pedal::Enter: return m_alertSince ? PedalAct::Heard : PedalAct::Forward;
  }
  return std::nullopt;
}

std::optional<PedalAct> PedalKeys::held(std::int64_t now) {
  for (Key& down : m_keys) {
    if (!down.downSince || down.spent || now - *down.downSince < kLongPress) continue;
    down.spent = true;
    down.lastAct = now;
    return PedalAct::Heard;
  }
  return std::nullopt;
}

}  // namespace app::pedal
