#include "tests/support/sound_recording.h"

#include <time.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tests {
namespace {

constexpr std::int64_t kNanoseconds = 1'000'000'000;
// Above the rounding of silence, below the first millisecond of the quietest tone.
constexpr float kQuiet = 3.0F / 32768.0F;

}  // namespace

std::int64_t boottimeNow() {
  timespec now{};
  clock_gettime(CLOCK_BOOTTIME, &now);
  return now.tv_sec * kNanoseconds + now.tv_nsec;
}

void sleepUntil(std::int64_t boottime) {
  const timespec until{static_cast<time_t>(boottime / kNanoseconds), static_cast<long>(boottime % kNanoseconds)};
  while (clock_nanosleep(CLOCK_BOOTTIME, TIMER_ABSTIME, &until, nullptr) != 0) {
  }
}

SoundRecording::SoundRecording()
    : m_recorder({"parec", "--device=bench.monitor", "--raw", "--format=s16le", "--rate=48000", "--channels=1",
                  "--latency-msec=10"},
                 ChildProcess::Pipe::FromChild),
      m_thread([this] { listen(); }) {}

SoundRecording::~SoundRecording() {
  m_recorder.end();
  m_thread.join();
}

void SoundRecording::listen() {
  std::vector<std::int16_t> chunk(4096);
  std::size_t left = 0;  // an odd byte of the chunk before
  auto* bytes = reinterpret_cast<char*>(chunk.data());
  while (true) {
    const ssize_t count = read(m_recorder.pipe(), bytes + left, chunk.size() * 2 - left);
    if (count <= 0) return;
    const std::int64_t now = boottimeNow();
    const std::size_t total = left + static_cast<std::size_t>(count);
    const std::lock_guard lock(m_mutex);
    for (std::size_t i = 0; i < total / 2; ++i) m_samples.push_back(static_cast<float>(chunk[i]) / 32768.0F);
    left = total % 2;
    if (left) bytes[0] = bytes[total - 1];
    const auto length = static_cast<std::int64_t>(m_samples.size()) * kNanoseconds / kRecordingRate;
    m_chunks.push_back({m_samples.size(), now - length});
  }
}

bool SoundRecording::waitForSamples(std::int64_t nanoseconds) const {
  const std::int64_t until = boottimeNow() + nanoseconds;
  while (boottimeNow() < until) {
    {
      const std::lock_guard lock(m_mutex);
      if (!m_samples.empty()) return true;
    }
    sleepUntil(boottimeNow() + kNanoseconds / 50);
  }
  return false;
}

std::vector<float> SoundRecording::samples() const {
  const std::lock_guard lock(m_mutex);
  return m_samples;
}

std::int64_t SoundRecording::instantOf(std::size_t sample) const {
  const std::lock_guard lock(m_mutex);
  return startNear(sample) + static_cast<std::int64_t>(sample) * kNanoseconds / kRecordingRate;
}

std::size_t SoundRecording::sampleAt(std::int64_t instant) const {
  const std::lock_guard lock(m_mutex);
  // The alignment depends on the sample: from the newest backwards, twice settles it.
  std::size_t sample = m_samples.size();
  for (int i = 0; i < 3; ++i) {
    const std::int64_t since = std::max<std::int64_t>(instant - startNear(sample), 0);
    sample = std::min(static_cast<std::size_t>(since / 1000 * kRecordingRate / 1'000'000), m_samples.size());
  }
  return sample;
}

std::int64_t SoundRecording::startNear(std::size_t sample) const {
  constexpr std::size_t kNear = kRecordingRate;
  std::int64_t start = INT64_MAX;
  for (const Chunk& chunk : m_chunks) {
    if (chunk.end + kNear >= sample && chunk.end <= sample + kNear) start = std::min(start, chunk.start);
  }
  return start == INT64_MAX ? boottimeNow() : start;
}

std::optional<std::size_t> SoundRecording::onset(std::int64_t from, std::int64_t until) const {
  const std::size_t first = sampleAt(from);
  const std::size_t last = sampleAt(until);
  const std::lock_guard lock(m_mutex);
  for (std::size_t i = first; i < last; ++i) {
    if (std::abs(m_samples[i]) > kQuiet) return i;
  }
  return std::nullopt;
}

ClickClient::ClickClient()
    : m_player({"pacat", "--playback", "--device=bench", "--raw", "--format=s16le", "--rate=48000", "--channels=1",
                "--latency-msec=10"},
               ChildProcess::Pipe::ToChild) {}

std::int64_t ClickClient::click() {
  std::vector<std::int16_t> wave(kRecordingRate / 20, 0);
  for (std::size_t i = 0; i < kRecordingRate / 500; ++i) {
    wave[i] = static_cast<std::int16_t>(
        std::lround(16000 * std::cos(2 * std::numbers::pi * 8000 * static_cast<double>(i) / kRecordingRate)));
  }
  const std::int64_t now = boottimeNow();
  if (write(m_player.pipe(), wave.data(), wave.size() * 2) < 0) return 0;
  return now;
}

}  // namespace tests
