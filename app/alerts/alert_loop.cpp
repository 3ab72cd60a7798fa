#include "app/alerts/alert_loop.h"

#include <utility>

namespace app::alerts {
namespace {

// Catches whatever the timer does not tell of: a clock that was moved, a sound thread that hangs.
constexpr int kTickMilliseconds = 500;
constexpr qint64 kHangMilliseconds = 2500;

using core::record::Sounding;

sound::Tone playable(core::record::Tone tone) {
  switch (tone) {
    case core::record::Tone::Soft: return sound::Tone::Soft;
    case core::record::Tone::Low: return sound::Tone::Low;
    case core::record::Tone::Medium: return sound::Tone::Medium;
    case core::record::Tone::High: return sound::Tone::High;
  }
  return sound::Tone::Medium;
}

std::array<std::int64_t, core::record::kTones> toneLengths() {
  std::array<std::int64_t, core::record::kTones> lengths{};
  for (std::size_t i = 0; i < lengths.size(); ++i) {
    lengths[i] = sound::lengthNanoseconds(playable(static_cast<core::record::Tone>(i)));
  }
  return lengths;
}

}  // namespace

AlertLoop::AlertLoop(std::function<std::int64_t()> boottimeNow, sound::Player& player, const SoundOut& out)
    : m_boottimeNow(std::move(boottimeNow)),
      m_player(player),
      m_out(out),
      m_sounding(toneLengths()),
      m_timer(this),
      m_tick(this) {
  connect(&m_timer, &BoottimeTimer::fired, this, &AlertLoop::turn);
  connect(&m_tick, &QTimer::timeout, this, &AlertLoop::tick);
}

void AlertLoop::start() {
  m_sinceBeat.start();
  m_tick.start(kTickMilliseconds);
  turn();
}

void AlertLoop::publish(std::shared_ptr<const core::record::AlertSchedule> schedule) {
  m_sounding.publish(std::move(schedule));
  turn();
}

void AlertLoop::releaseHeld() {
  m_sounding.releaseHeld(m_boottimeNow());
  turn();
}

void AlertLoop::takeSound(Alerts::Sound sound) {
  m_outSound = sound;
  m_sinceBeat.restart();
  judgeSound();
}

void AlertLoop::tick() {
  if (const unsigned beats = m_out.beats(); beats != m_beats) {
    m_beats = beats;
    m_sinceBeat.restart();
  }
  judgeSound();
  turn();
}

void AlertLoop::judgeSound() {
  const bool hangs = m_sinceBeat.elapsed() > kHangMilliseconds;
  const Alerts::Sound sound = hangs ? Alerts::Sound::Stalled : m_outSound;
  if (sound == m_sound) return;
  m_sound = sound;
  emit soundChanged(sound);
  turn();
}

void AlertLoop::turn() {
  const std::int64_t now = m_boottimeNow();
  const bool audible = m_sound == Alerts::Sound::Ready;
  const Sounding::Turn turn = m_sounding.turn(now, {audible, Sounding::Voice::Absent});
  if (turn.hush && !turn.call) {
    if (audible) {
      m_player.hush();
    } else {
      m_player.drop();
    }
  }
  if (turn.call) m_player.play(playable(turn.call->tone), turn.call->decibels);
  if (turn.wake == Sounding::kNever) {
    m_timer.stop();
  } else {
    m_timer.setInterval(turn.wake - m_boottimeNow());
  }
  if (m_sounding.due().alerts == m_due->alerts) return;
  m_due = std::make_shared<core::record::AlertSchedule>(m_sounding.due());
  emit dueChanged(m_due);
}

}  // namespace app::alerts
