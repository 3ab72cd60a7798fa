#pragma once
// Plays one burst at a time out of samples made beforehand. The alert thread chooses the burst, the sound thread
// fetches the samples; between bursts there is silence. Nothing here allocates after the constructor.
#include <array>
#include <cstddef>
#include <cstdint>
#include <mutex>
#include <vector>

#include "app/sound/tones.h"

namespace app::sound {

class Player {
 public:
  explicit Player(int sampleRate);

  int sampleRate() const { return m_sampleRate; }
  // Begins with the next samples fetched. A burst that is sounding fades out first, within 20 ms; nothing ever
  // overlaps.
  void play(Tone tone, double decibels);
  // Fades out what is sounding and forgets what was to follow.
  void hush();
  // Forgets everything without a fade: for the case that nothing fetches the samples.
  void drop();
  // Returns whether samples of a burst remain to be fetched.
  bool playing() const;

  // Writes `frames` frames of `channels` equal channels.
  void take(std::int16_t* out, std::size_t frames, int channels);

 private:
  struct Burst {
    const std::vector<float>* samples = nullptr;
    std::size_t position = 0;
    float gain = 1;
    bool ended() const { return !samples || position >= samples->size(); }
  };
  float next();

  const int m_sampleRate;
  const std::size_t m_fadeFrames;
  std::array<std::vector<float>, 4> m_tones;  // by Tone

  mutable std::mutex m_mutex;
  Burst m_now;
  Burst m_then;
  std::size_t m_fadeLeft = 0;
  bool m_fading = false;
};

}  // namespace app::sound
