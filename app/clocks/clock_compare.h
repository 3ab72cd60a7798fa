#pragma once
// Notices that the wall clock was set where the system does not report it: it no longer keeps step with the boot-time
// clock.
#include <QObject>
#include <QTimer>
#include <chrono>
#include <functional>

namespace app::clocks {

class ClockCompare : public QObject {
  Q_OBJECT

 public:
  struct Times {
    std::chrono::nanoseconds wall;
    std::chrono::nanoseconds machine;  // never set by anybody
  };
  static Times machineTimes();

  explicit ClockCompare(QObject* parent = nullptr, std::function<Times()> now = machineTimes,
                        std::chrono::milliseconds every = std::chrono::seconds(5));

 signals:
  // The clocks moved apart by half a second or more since the last look; a clock that is steered stays well below that.
  // Where the machine's own clock stops while it sleeps, waking is a jump.
  void jumped();

 private:
  void look();

  std::function<Times()> m_now;
  std::chrono::nanoseconds m_ahead;  // of the wall clock
  QTimer m_timer;
};

}  // namespace app::clocks
