#pragma once
// Decides which sound and which words are due at which instant: the rules of repeating, of one sound at a time, of
// merging, raising, holding back and leaving out, with no thread, timer or device in them. All instants are nanoseconds
// of the boot-time clock.
#include <array>
#include <cstdint>
#include <deque>
#include <limits>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <tuple>
#include <vector>

#include "core/alerts/alert_schedule.h"

namespace core::alerts {

enum class Tone {
  Soft,    // one quiet pulse: something waits until the blade is down; a window was missed
  Low,     // two pulses, once: worth knowing
  Medium,  // three pulses: something is open or over
  High,    // three and two pulses, twice, quicker and a third higher: a window that closes
};
inline constexpr std::size_t kTones = 4;

class Sounding {
 public:
  static constexpr std::int64_t kNever = std::numeric_limits<std::int64_t>::max();
  // Low calls are left out once this many alerts have sounded within an hour; their line on the bench stays.
  static constexpr std::size_t kMostAnHour = 6;

  // `lengths`: how long each tone lasts, indexed by Tone.
  explicit Sounding(const std::array<std::int64_t, kTones>& lengths);

  struct Call {
    Tone tone = Tone::Medium;
    double decibels = 0;  // relative to the tone's own level
    friend bool operator==(const Call&, const Call&) = default;
  };
  enum class Voice { Absent, Idle, Speaking };
  // The outputs that can be heard at the moment.
  struct Means {
    bool sound = false;
    Voice voice = Voice::Absent;
  };
  struct Turn {
    bool hush = false;                 // the sound that is playing has lost its reason
    bool stopSpeaking = false;         // the words being spoken have lost their reason, or must give way
    std::optional<Call> call;          // to begin at once
    std::optional<base::Message> say;  // to be spoken at once; never together with a call
    std::int64_t wake = kNever;        // when to call turn() again if nothing changes before
  };

  void publish(std::shared_ptr<const AlertSchedule> schedule);
  // Alerts due at `now` are no longer held back although the blade may still be in the hand.
  void releaseHeld(std::int64_t now);
  // Has to be called after each change, when a voice has ended and at `wake`. While there is no sound nothing is
  // called; all that is due is called again once there is.
  Turn turn(std::int64_t now, Means means);
  // Returns the alerts that were due, unheard and not held back at the last turn, in the order of the schedule.
  const AlertSchedule& due() const { return m_due; }

 private:
  using Key = std::tuple<std::string, std::string, intents::AlertClass>;
  struct Entry {
    Key key;
    Level level = Level::Medium;
    bool shrinking = false;
    base::Message say;
    bool released = false;  // by the pedal, for the blade now in the hand
    int bursts = 0;
    std::int64_t first = 0;  // when it was called first
    std::int64_t next = 0;   // when it is to be called again
    std::int64_t speak = kNever;
    int softs = 0;
    std::int64_t nextSoft = 0;
  };

  bool held(const Entry& entry) const { return m_schedule->bladeInHand && !entry.released; }
  void follow(std::int64_t now);
  void join(Entry& entry, std::int64_t now) const;
  void raise(std::int64_t now);
  bool lostReason() const;
  bool spokenLostReason() const;
  void sound(Turn& turn, std::int64_t now);
  std::optional<Call> callAgain(std::int64_t now, Level level);
  std::optional<Call> callOnce(std::int64_t now);
  std::optional<Call> callSoft(std::int64_t now, Voice voice);
  std::optional<base::Message> speak(std::int64_t now);
  std::optional<base::Message> speakCue(std::int64_t now);
  bool withinBudget(std::int64_t now);
  void begin(std::int64_t now, Tone tone, std::vector<Key> served);
  void takeBack(std::int64_t now);
  std::int64_t nextWake(std::int64_t now, Means means) const;
  Entry* find(const Key& key);
  const Entry* find(const Key& key) const;

  const std::array<std::int64_t, kTones> m_lengths;
  std::shared_ptr<const AlertSchedule> m_schedule = std::make_shared<AlertSchedule>();
  std::vector<Entry> m_entries;  // the due alerts, in the order of the schedule
  AlertSchedule m_due;
  bool m_sound = false;
  std::deque<std::int64_t> m_firstCalls;  // of the last hour
  std::set<std::tuple<std::string, std::string, std::int64_t>> m_cuesGiven;
  // The sound that was begun last and the alert it served.
  Tone m_tone = Tone::Soft;
  std::vector<Key> m_served;
  std::int64_t m_quietAt = std::numeric_limits<std::int64_t>::min();  // when the next may begin
  // The alert that the words spoken last are about; nothing for a cue.
  std::optional<Key> m_spokenOf;
};

}  // namespace core::alerts
