#pragma once
// Sounds what the schedule says, from a thread of its own through a player process of its own: a frozen interface
// cannot silence it, and no sound server can hold or end the program. It decides nothing; answers go back as intents
// through the workbench.
#include <QObject>
#include <QString>
#include <chrono>
#include <functional>
#include <memory>

#include "core/alerts/alert_schedule.h"

namespace app::alerts {

class Alerts : public QObject {
  Q_OBJECT

 public:
  // `boottimeNow` gives the boot-time clock in nanoseconds; called from the alert thread.
  explicit Alerts(std::function<std::int64_t()> boottimeNow, QObject* parent = nullptr);
  ~Alerts() override;

  // Replaces what is to be sounded. Thread-safe; takes effect at once: an alert no longer in the schedule stops.
  void publish(std::shared_ptr<const core::alerts::AlertSchedule> schedule);
  // The pedal was pressed or a blade step was done: let what was held back come now.
  void releaseHeld();

  // Sounds the tone of an alert once, to hear whether it can be heard; an alert that is due goes before it.
  void tryOut();

  // Starting lasts 3 s at most. Muted is for systems that tell of it.
  enum class Sound { Starting, Ready, NoDevice, Stalled, Muted };
  Q_ENUM(Sound)
  // Thread-safe.
  Sound sound() const;
  // How long ago the whole way to the sound server last proved that it lives, by a clock that stands still while the
  // machine sleeps; until the first proof, since this was made. Thread-safe. Proofs come every 8 s, every second while
  // something is due: after three times as long the alerts cannot be counted on.
  std::chrono::milliseconds sinceBeat() const;

 signals:
  // In the interface thread: what is due now and not yet heard changed. The full screen shows these.
  void dueChanged(std::shared_ptr<const core::alerts::AlertSchedule> due);
  // Whether alerts can be heard; NoDevice, Stalled and Muted are said on the bench as long as they last.
  void soundChanged(app::alerts::Alerts::Sound sound);
  // A proof has come: see sinceBeat.
  void beat();

 private:
  struct Private;
  std::unique_ptr<Private> d;
};

}  // namespace app::alerts
