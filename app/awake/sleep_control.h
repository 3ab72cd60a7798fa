#pragma once
// Asks the system not to fall asleep, and reports when it does so all the same. One file for each system that can be
// asked, one for those that cannot.
#include <QObject>
#include <QString>
#include <memory>

#include "app/awake/wakefulness.h"

namespace app::awake {

// Addresses of the message buses, as their specification writes them; "" for none.
struct Buses {
  QString system;
  QString session;
};
// Returns those of this machine and this session: as set in the environment, else in their usual places.
Buses machineBuses();

// Never blocks: every service may be missing, refuse, be slow, or never answer.
class SleepControl : public QObject {
  Q_OBJECT

 public:
  explicit SleepControl(const Buses& buses = machineBuses(), QObject* parent = nullptr);
  ~SleepControl() override;

  // Asks every keeper there is for its promise, or gives it back.
  void hold(bool wanted);
  // Asks each keeper again that was not there, refused or broke its promise. Call it now and then.
  void tryAgain();

  Keepers kept() const;
  // Returns whether a keeper has still to answer.
  bool asking() const;

 signals:
  // Emitted when the result of kept() or asking() changed.
  void changed();
  // The machine is about to sleep. It waits until the slots called directly have returned, for some seconds at most.
  void sleeping();
  // It has slept.
  void woke();

 private:
  struct Private;
  std::unique_ptr<Private> d;
};

}  // namespace app::awake
