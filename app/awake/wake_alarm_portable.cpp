#include <QSocketNotifier>

#include "app/awake/wake_alarm.h"

namespace app::awake {

WakeAlarm::WakeAlarm(QObject* parent, QString clocks) : QObject(parent), m_clocks(std::move(clocks)) {}

WakeAlarm::~WakeAlarm() = default;

bool WakeAlarm::set(std::optional<std::int64_t>) { return false; }

}  // namespace app::awake
