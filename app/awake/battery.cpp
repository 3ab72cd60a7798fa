#include "app/awake/battery.h"

#include <QDir>

#include "app/convert/text.h"
#include "app/files/whole_file.h"

namespace app::awake {
namespace {

constexpr std::size_t kLongestText = 64;

// "" where there is no such file.
QByteArray textOf(const QDir& supply, const char* name) {
  const auto text = files::readWhole(supply.filePath(QLatin1String(name)), kLongestText);
  return text ? convert::toBytes(text.value()).trimmed() : QByteArray();
}

struct Supplies {
  bool batteryEmptying = false;   // a battery says so
  bool batteryUndecided = false;  // a battery does not say whether it fills or empties
  bool fedFromOutside = false;
  int batteries = 0;  // that say their charge
  int percents = 0;   // of those, in all
};

void addBattery(Supplies& supplies, const QDir& battery) {
  if (textOf(battery, "scope") == "Device" || textOf(battery, "present") == "0") return;
  const QByteArray status = textOf(battery, "status");
  if (status == "Discharging") supplies.batteryEmptying = true;
  if (status.isEmpty() || status == "Unknown") supplies.batteryUndecided = true;
  bool number = false;
  const int percent = textOf(battery, "capacity").toInt(&number);
  if (!number || percent < 0 || percent > 100) return;
  ++supplies.batteries;
  supplies.percents += percent;
}

Supplies read(const QString& root) {
  Supplies supplies;
  const QDir folder(root);
  for (const QString& name : folder.entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
    const QDir supply(folder.filePath(name));
    if (textOf(supply, "type") == "Battery") {
      addBattery(supplies, supply);
    } else if (textOf(supply, "online").toInt() > 0) {
      supplies.fedFromOutside = true;
    }
  }
  return supplies;
}

}  // namespace

std::optional<int> batteryRunningDown(const QString& root) {
  const Supplies supplies = read(root);
  // A charger may be too weak for the machine: then the battery empties although it is fed.
  const bool runningDown = supplies.batteryEmptying || (supplies.batteryUndecided && !supplies.fedFromOutside);
  if (!runningDown || supplies.batteries == 0) return {};
  return supplies.percents / supplies.batteries;
}

}  // namespace app::awake
