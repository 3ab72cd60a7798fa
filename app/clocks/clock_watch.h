#pragma once
// Hears that the wall clock was set or the zone changed, so that what was worked out from them can be worked out anew.
#include <QObject>
#include <QStringList>

#include "app/clocks/zone_watch.h"

namespace app::clocks {

// Lives in a thread with an event loop. Costs nothing while nothing happens where the system can tell of a jump;
// elsewhere the clocks are compared every five seconds.
class ClockWatch : public QObject {
  Q_OBJECT

 public:
  // `zoneFiles` are those that set the zone of this machine.
  explicit ClockWatch(QObject* parent = nullptr, const QStringList& zoneFiles = systemZoneFiles());
  ~ClockWatch() override;

 signals:
  // The wall clock was set, by however little. Some systems report this as well when the machine wakes. Steering by a
  // time server, which bends the clock's rate, is no jump.
  void jumped();
  void zoneChanged();
};

}  // namespace app::clocks
