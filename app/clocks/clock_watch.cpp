#include "app/clocks/clock_watch.h"

#include "app/clocks/jump_watch.h"

namespace app::clocks {

ClockWatch::ClockWatch(QObject* parent, const QStringList& zoneFiles) : QObject(parent) {
  connect(new JumpWatch(this), &JumpWatch::jumped, this, &ClockWatch::jumped);
  connect(new ZoneWatch(zoneFiles, this), &ZoneWatch::changed, this, &ClockWatch::zoneChanged);
}

ClockWatch::~ClockWatch() = default;

}  // namespace app::clocks
