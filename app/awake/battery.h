#pragma once
// The power supply of the machine, as the kernel shows it: a folder of small text files for each supply and battery.
// Where a system has no such folders, nothing is known and nothing is claimed.
#include <QString>
#include <optional>

namespace app::awake {

// Returns the charge in per cent of the machine's battery, 0 to 100, the mean where there are several; nothing while it
// is fed from outside, has no battery, or no battery reports its charge. Batteries of devices (a pen, a keyboard) are
// left out. May take as long as the battery's controller takes to answer.
std::optional<int> batteryRunningDown(const QString& root = QStringLiteral("/sys/class/power_supply"));

}  // namespace app::awake
