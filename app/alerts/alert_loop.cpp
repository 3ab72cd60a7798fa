#include "app/alerts/alert_loop.h"

#include <utility>

#include "app/words/words.h"

namespace app::alerts {
namespace {

// Each tick asks the player for a sign of life and catches what the timer does not tell of: a clock that was moved.
// While a sound is wanted or soon will be, a player or a server that hangs is to be found out sooner.
constexpr int kTickMilliseconds = 8000;
constexpr int kNearTickMilliseconds = 1000;
// Long enough for a fresh player to come up, should this one turn out to be dead.
constexpr std::int64_t kPrepareAhead = 4'000'000'000;
// What the player is told is heard 26 to 66 ms later, behind the silence that is queued already (tests/bench,
// alert_latency). So much before its time a tone is therefore sent: it is heard from 6 ms before it to 34 ms after.
constexpr std::int64_t kOnTheWay = 32'000'000;
constexpr int kOnTheWayMilliseconds = kOnTheWay / 1'000'000;

using core::alerts::Sounding;

sound::Tone playable(core::alerts::Tone tone) {
  switch (tone) {
    case core::alerts::Tone::Soft: return sound::Tone::Soft;
    case core::alerts::Tone::Low: return sound::Tone::Low;
    case core::alerts::Tone::Medium: return sound::Tone::Medium;
    case core::alerts::Tone::High: return sound::Tone::High;
  }
  return sound::Tone::Medium;
}

std::array<std::int64_t, core::alerts::kTones> toneLengths() {
  std::array<std::int64_t, core::alerts::kTones> lengths{};
  for (std::size_t i = 0; i < lengths.size(); ++i) {
    lengths[i] = sound::lengthNanoseconds(playable(static_cast<core::alerts::Tone>(i)));
  }
  return lengths;
}

}  // namespace

AlertLoop::AlertLoop(std::function<std::int64_t()> boottimeNow, const QString& player)
    : m_boottimeNow(std::move(boottimeNow)), m_player(player), m_sounding(toneLengths()), m_timer(this), m_tick(this) {
  // They move to the alert thread with this.
  m_player.setParent(this);
  connect(&m_timer, &BoottimeTimer::fired, this, &AlertLoop::turn);
  connect(&m_tick, &QTimer::timeout, this, [this] {
    m_player.ping();
    turn();
  });
  connect(&m_player, &SoundProcess::soundChanged, this, &AlertLoop::takeSound);
  connect(&m_player, &SoundProcess::voiceChanged, this, &AlertLoop::turn);
  connect(&m_player, &SoundProcess::beat, this, &AlertLoop::beat);
}

void AlertLoop::start() {
  m_tick.start(kTickMilliseconds);
  m_player.start();
  turn();
}

void AlertLoop::publish(std::shared_ptr<const core::alerts::AlertSchedule> schedule) {
  m_sounding.publish(std::move(schedule));
  turn();
}

void AlertLoop::releaseHeld() {
  m_sounding.releaseHeld(heardAt());
  turn();
}

std::int64_t AlertLoop::heardAt() const { return m_boottimeNow() + kOnTheWay; }

void AlertLoop::tryOut() {
  if (m_due->alerts.empty()) m_player.play(sound::Tone::Medium, 0);
}

void AlertLoop::takeSound(Alerts::Sound sound) {
  m_sound = sound;
  emit soundChanged(sound);
  turn();
}

void AlertLoop::setTimers(std::int64_t wake) {
  const std::int64_t left = wake == Sounding::kNever ? wake : wake - heardAt();
  const bool isNear = left <= kPrepareAhead;
  if (wake == Sounding::kNever) {
    m_timer.stop();
  } else if (isNear) {
    m_timer.setInterval(left);
  } else {
    m_timer.setInterval(left - kPrepareAhead);
  }
  if (isNear) m_player.prepare();
  const int tick = isNear || !m_due->alerts.empty() ? kNearTickMilliseconds : kTickMilliseconds;
  if (tick == m_tick.interval()) return;
  m_tick.start(tick);
  if (tick == kNearTickMilliseconds) m_player.ping();
}

void AlertLoop::turn() {
  const std::int64_t now = heardAt();
  const bool audible = m_sound == Alerts::Sound::Ready;
  const Sounding::Turn turn = m_sounding.turn(now, {audible, m_player.voice()});
  if (turn.hush && !turn.call) {
    if (audible) {
      m_player.hush();
    } else {
      m_player.drop();
    }
  }
  // Words first: they end before the tone begins.
  if (turn.stopSpeaking) m_player.quiet();
  if (turn.call) m_player.play(playable(turn.call->tone), turn.call->decibels);
  if (turn.say) m_player.say(words::text(*turn.say, core::units::UnitSystem::Millimetres));
  const bool dueChanges = m_sounding.due().alerts != m_due->alerts;
  if (dueChanges) m_due = std::make_shared<core::alerts::AlertSchedule>(m_sounding.due());
  setTimers(turn.wake);
  if (!dueChanges) return;
  // For the eyes it is due at its time and not before.
  QTimer::singleShot(kOnTheWayMilliseconds, Qt::PreciseTimer, this, [this, due = m_due] { emit dueChanged(due); });
}

}  // namespace app::alerts
