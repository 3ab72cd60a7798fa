#include "app/sound/player.h"

#include <cmath>

namespace app::sound {

Player::Player(int sampleRate)
    : m_sampleRate(sampleRate),
      m_fadeFrames(static_cast<std::size_t>(sampleRate / 50)),
      m_tones{synthesise(Tone::Soft, sampleRate), synthesise(Tone::Low, sampleRate),
              synthesise(Tone::Medium, sampleRate), synthesise(Tone::High, sampleRate)} {}

void Player::play(Tone tone, double decibels) {
  const std::lock_guard lock(m_mutex);
  Burst burst{&m_tones[static_cast<std::size_t>(tone)], 0, static_cast<float>(gain(decibels))};
  if (m_now.ended()) {
    m_now = burst;
    m_fading = false;
    return;
  }
  m_then = burst;
  if (!m_fading) m_fadeLeft = m_fadeFrames;
  m_fading = true;
}

void Player::hush() {
  const std::lock_guard lock(m_mutex);
  m_then = {};
  if (m_now.ended()) return;
  if (!m_fading) m_fadeLeft = m_fadeFrames;
  m_fading = true;
}

void Player::drop() {
  const std::lock_guard lock(m_mutex);
  m_now = {};
  m_then = {};
  m_fading = false;
}

bool Player::playing() const {
  const std::lock_guard lock(m_mutex);
  return !m_now.ended() || !m_then.ended();
}

float Player::next() {
  if (m_now.ended() || (m_fading && m_fadeLeft == 0)) {
    m_now = m_then;
    m_then = {};
    m_fading = false;
    if (m_now.ended()) return 0;
  }
  float sample = (*m_now.samples)[m_now.position++] * m_now.gain;
  if (m_fading) sample *= static_cast<float>(m_fadeLeft--) / static_cast<float>(m_fadeFrames);
  return sample;
}

void Player::take(std::int16_t* out, std::size_t frames, int channels) {
  const std::lock_guard lock(m_mutex);
  for (std::size_t i = 0; i < frames; ++i) {
    const auto sample = static_cast<std::int16_t>(std::lround(next() * 32767.0F));
    for (int channel = 0; channel < channels; ++channel) *out++ = sample;
  }
}

}  // namespace app::sound
