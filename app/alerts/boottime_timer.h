#pragma once
// Fires once at an instant of the boot-time clock, which runs on while the machine sleeps. It cannot wake the machine.
// Lives in a thread with an event loop.
#include <QObject>
#include <cstdint>
#include <memory>

namespace app::alerts {

class BoottimeTimer : public QObject {
  Q_OBJECT

 public:
  explicit BoottimeTimer(QObject* parent = nullptr);
  ~BoottimeTimer() override;

  // Replaces what was set before. An interval in the past or of 0 fires from the event loop at once.
  void setInterval(std::int64_t nanoseconds);
  void stop();

 signals:
  void fired();

 private:
  struct Private;
  std::unique_ptr<Private> d;
};

}  // namespace app::alerts
