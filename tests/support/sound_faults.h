#pragma once
// Sound servers that a test starts, stops, hangs and kills itself, and what an alert is then heard to do. Run in an
// empty place for a sound server (tests/support/with_sound.sh --empty). Instants are nanoseconds of the boot-time
// clock.
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

// A null sink named "bench" as the default output; false where it does not come about.
bool plugIn();
bool pullOut();

// Runs the event loop meanwhile.
void spin(std::int64_t nanoseconds);
// Whether the alerts' sound is in this state within so many seconds; prints when it was.
bool becomes(const app::alerts::Alerts& alerts, app::alerts::Alerts::Sound sound, double seconds);

std::shared_ptr<const core::alerts::AlertSchedule> dueNow(core::intents::AlertClass kind);
// Publishes an alert that is due now and takes it back: whether it was heard within a second.
bool heard(app::alerts::Alerts& alerts);
// Seconds from `from` until something sounds, before `seconds` have passed; waits for them.
std::optional<double> soundsAfter(const SoundRecording& recording, std::int64_t from, double seconds);

// The player process of a process; 0 where there is none.
pid_t playerOf(pid_t process);
bool isAlive(pid_t process);
// How often the threads of a process have gone to sleep of their own will; of the thread of this name alone where one
// is given.
long wakeUps(pid_t process, const std::string& thread = {});

}  // namespace tests
