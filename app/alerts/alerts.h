#pragma once
// Sounds the alerts of the schedule, from a thread of its own through a player process of its own: a frozen interface
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
  // To be called when the pedal was pressed or a blade step was done: alerts that were held back sound now.
  void releaseHeld();

  // Sounds the tone of an alert once, so that the maker can check it; an alert that is due has priority.
  void tryOut();

  // Starting lasts 3 s at most. Muted occurs on systems that report it.
  enum class Sound { Starting, Ready, NoDevice, Stalled, Muted };
  Q_ENUM(Sound)
  // Thread-safe.
  Sound sound() const;
  // Returns how long ago the whole way to the sound server last proved that it works, by a clock that stops while the
  // machine sleeps; before the first proof, since this was made. Thread-safe. A proof arrives every 8 s, and every
  // second while something is due: after three times as long the alerts cannot be counted on.
  std::chrono::milliseconds sinceBeat() const;

 signals:
  // Emitted in the interface thread when the alerts that are due and not yet heard changed. The full screen shows
  // these.
  void dueChanged(std::shared_ptr<const core::alerts::AlertSchedule> due);
  // Reports whether alerts can be heard; the bench shows NoDevice, Stalled and Muted as long as they last.
  void soundChanged(app::alerts::Alerts::Sound sound);
  // A proof has arrived: see sinceBeat.
  void beat();

 private:
  struct Private;
  std::unique_ptr<Private> d;
};

}  // namespace app::alerts
