#include <QSocketNotifier>

#include "app/clocks/clock_compare.h"
#include "app/clocks/jump_watch.h"

namespace app::clocks {

JumpWatch::JumpWatch(QObject* parent) : QObject(parent) {
  connect(new ClockCompare(this), &ClockCompare::jumped, this, &JumpWatch::jumped);
}

JumpWatch::~JumpWatch() = default;

}  // namespace app::clocks
