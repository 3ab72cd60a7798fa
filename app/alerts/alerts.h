#pragma once
// Sounds what the schedule says, from a thread of its own with one long-lived sink: a frozen interface cannot
// silence it. It decides nothing; answers go back as intents through the workbench.
#include <QObject>
#include <QString>
#include <functional>
#include <memory>

#include "core/record/alert_schedule.h"

namespace app::alerts {

class Alerts : public QObject {
  Q_OBJECT

 public:
  // `boottimeNow` gives the boot-time clock in nanoseconds; called from the alert thread.
  explicit Alerts(std::function<std::int64_t()> boottimeNow, QObject* parent = nullptr);
  ~Alerts() override;

  // Replaces what is to be sounded. Thread-safe; takes effect at once: an alert no longer in the schedule stops.
  void publish(std::shared_ptr<const core::record::AlertSchedule> schedule);
  // The pedal was pressed or a blade step was done: let what was held back come now.
  void releaseHeld();

  // Muted is for systems that tell of it; the multimedia library here does not.
  enum class Sound { Starting, Ready, NoDevice, Stalled, Muted };
  Q_ENUM(Sound)
  // Thread-safe.
  Sound sound() const;

 signals:
  // In the interface thread: what is due now and not yet heard changed. The full screen shows these.
  void dueChanged(std::shared_ptr<const core::record::AlertSchedule> due);
  // Whether alerts can be heard; NoDevice, Stalled and Muted are said on the bench as long as they last.
  void soundChanged(app::alerts::Alerts::Sound sound);

 private:
  struct Private;
  std::unique_ptr<Private> d;
};

}  // namespace app::alerts
