#pragma once
// Sound servers that a test starts, stops, hangs and kills itself, and how an alert then sounds. Run in an empty place
// for a sound server (tests/support/with_sound.sh --empty). Instants are nanoseconds of the boot-time clock.
#include <sys/types.h>

#include <cstdlib>
#include <deque>
#include <memory>
#include <optional>
#include <string>

#include "app/alerts/alerts.h"
#include "tests/support/alerts.h"
#include "tests/support/sound_recording.h"

namespace tests {

inline constexpr std::int64_t kSecond = 1'000'000'000;

int shell(const std::string& command);

class SoundServer {
 public:
  // Returns once it answers.
  SoundServer();
  ~SoundServer();
  void send(int signal);
  std::int64_t answeredAt() const { return m_answeredAt; }

 private:
  std::deque<ChildProcess> m_parts;
  std::int64_t m_answeredAt = 0;
};

// Adds a null sink named "bench" as the default output; returns false where that fails.
bool plugIn();
bool pullOut();

// Waits for so long and runs the event loop meanwhile.
void spin(std::int64_t nanoseconds);
// Returns whether the alerts' sound gets into this state within so many seconds; prints when it did.
bool becomes(const app::alerts::Alerts& alerts, app::alerts::Alerts::Sound sound, double seconds);

std::shared_ptr<const core::alerts::AlertSchedule> dueNow(core::intents::AlertClass kind);
// Publishes an alert that is due now and takes it back; returns whether it was heard within a second.
bool heard(app::alerts::Alerts& alerts);
// Returns the seconds from `from` until something sounds, and waits at most `seconds` for it.
std::optional<double> soundsAfter(const SoundRecording& recording, std::int64_t from, double seconds);

// Returns the player process of a process; 0 where there is none.
pid_t playerOf(pid_t process);
bool isAlive(pid_t process);
// Returns how often the threads of a process have gone to sleep voluntarily; only of the thread of this name where one
// is given.
long wakeUps(pid_t process, const std::string& thread = {});

}  // namespace tests
