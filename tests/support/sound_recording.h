#pragma once
// A recording of what the test server's null sink plays, and a second client that clicks at known instants. All
// instants are nanoseconds of the boot-time clock.
#include <atomic>
#include <cstdint>
#include <mutex>
#include <optional>
#include <thread>
#include <vector>

#include "tests/support/child_process.h"

namespace tests {

std::int64_t boottimeNow();
void sleepUntil(std::int64_t boottime);

inline constexpr int kRecordingRate = 48'000;

class SoundRecording {
 public:
  SoundRecording();
  ~SoundRecording();

  bool waitForSamples(std::int64_t nanoseconds) const;
  // The samples are in -1..1, one channel.
  std::vector<float> samples() const;
  // Returns when a sample was recorded. The least delayed chunk within a second of it gives the alignment, so the delay
  // of recording itself is counted as if the sound had come later; and samples a server short of time has dropped
  // earlier do not make later sounds seem early.
  std::int64_t instantOf(std::size_t sample) const;
  std::size_t sampleAt(std::int64_t instant) const;
  // Returns the first sample from `from` on, and before `until`, that is not silence.
  std::optional<std::size_t> onset(std::int64_t from, std::int64_t until) const;

 private:
  struct Chunk {
    std::size_t end;     // number of samples once it had arrived
    std::int64_t start;  // the instant of sample 0 by this chunk
  };

  void listen();
  // Returns the instant of sample 0, estimated near a sample. Requires the lock.
  std::int64_t startNear(std::size_t sample) const;

  ChildProcess m_recorder;
  mutable std::mutex m_mutex;
  std::vector<float> m_samples;
  std::vector<Chunk> m_chunks;
  std::thread m_thread;
};

// Stays connected, so that a click takes the server's time alone and not that of starting a program.
class ClickClient {
 public:
  ClickClient();
  // Sends a click of 2 ms and the silence that pushes it out; returns when it did.
  std::int64_t click();

 private:
  ChildProcess m_player;
};

}  // namespace tests
