#pragma once
// Which sound is due at which instant: the rules of repeating, of one sound at a time and of the blade, with no
// thread, timer or device in them. All instants are nanoseconds of the boot-time clock.
#include <cstdint>
#include <limits>
#include <memory>
#include <optional>
#include <string>
#include <tuple>
#include <vector>

#include "app/alerts/tones.h"
#include "core/record/alert_schedule.h"

namespace app::alerts {

class Sounding {
 public:
  static constexpr std::int64_t kNever = std::numeric_limits<std::int64_t>::max();

  struct Call {
    Tone tone = Tone::Medium;
    double decibels = 0;  // relative to the tone's own level
    friend bool operator==(const Call&, const Call&) = default;
  };
  struct Turn {
    bool hush = false;           // what is sounding now has lost its reason
    std::optional<Call> call;    // to begin at once
    std::int64_t wake = kNever;  // when to ask again if nothing changes before
  };

  void publish(std::shared_ptr<const core::record::AlertSchedule> schedule);
  // What is due at `now` is no longer held back although the blade may still be in the hand.
  void releaseHeld(std::int64_t now);
  // To be asked after each change and at `wake`. While not `audible` nothing is called; all that is due is called
  // again once it is.
  Turn turn(std::int64_t now, bool audible);
  // Due, unheard and not held back at the last turn, in the order of the schedule.
  const core::record::AlertSchedule& due() const { return m_due; }

 private:
  using Key = std::tuple<std::string, std::string, core::intents::AlertClass>;
  struct Entry {
    Key key;
    bool high = false;
    bool released = false;  // by the pedal, for the blade now in the hand
    int bursts = 0;
    std::int64_t next = 0;  // when it is to be called again
    int lows = 0;
    std::int64_t nextLow = 0;
  };

  bool held(const Entry& entry) const { return m_schedule->bladeInHand && !entry.released; }
  void follow(std::int64_t now);
  bool lostReason() const;
  std::optional<Call> callFull(std::int64_t now, bool high);
  std::optional<Call> callLow(std::int64_t now);
  void begin(std::int64_t now, Tone tone, std::vector<Key> served);
  void takeBack(std::int64_t now);
  std::int64_t nextWake(std::int64_t now, bool audible) const;
  Entry* find(const Key& key);
  const Entry* find(const Key& key) const;

  std::shared_ptr<const core::record::AlertSchedule> m_schedule = std::make_shared<core::record::AlertSchedule>();
  std::vector<Entry> m_entries;  // what is due, in the order of the schedule
  core::record::AlertSchedule m_due;
  bool m_audible = false;
  // The sound that was begun last and whom it served.
  Tone m_tone = Tone::Low;
  std::vector<Key> m_served;
  std::int64_t m_quietAt = std::numeric_limits<std::int64_t>::min();  // when the next may begin
};

}  // namespace app::alerts
