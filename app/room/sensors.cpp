#include "app/room/sensors.h"

#include <QDir>
#include <QFileInfo>
#include <cmath>

#include "app/convert/text.h"
#include "app/files/whole_file.h"
#include "core/base/text.h"
#include "core/units/climate.h"

namespace app::room {
namespace {

using core::base::Message;
template <typename Value>
using Result = core::base::Result<Value, Message>;

constexpr std::size_t kLongestNumber = 40;  // bytes; the kernel writes at most twenty digits, a point and nine more
constexpr qsizetype kShown = 20;            // as much of a bad text as a sentence can bear

struct Files {
  const char* temperature;
  const char* humidity;
};
constexpr Files kInputDevice = {"in_temp", "in_humidityrelative"};
constexpr Files kHardwareMonitor = {"temp1", "humidity1"};

Message unreadable(const QString& path) { return Message("sensor.unreadable").with("path", convert::fromQt(path)); }

std::string shown(const QByteArray& text) {
  QString clean = convert::toQt(convert::fromBytes(text.left(kShown)));
  for (QChar& each : clean) {
    if (!each.isPrint()) each = u'?';
  }
  return convert::fromQt(text.size() > kShown ? clean + u'…' : clean);
}

Result<double> readNumber(const QString& path) {
  const auto read = files::readWhole(path, kLongestNumber);
  if (!read) return unreadable(path);
  QByteArray text = convert::toBytes(read.value());
  const bool whole = read.value().size() <= kLongestNumber;
  if (text.endsWith('\n')) text.chop(1);
  const auto number = core::base::parseDecimal(convert::fromBytes(text));
  if (!whole || !number || !std::isfinite(*number)) {
    return Message("sensor.not-a-number").with("path", convert::fromQt(path)).with("text", shown(text));
  }
  return *number;
}

bool there(const QString& path) { return QFileInfo::exists(path); }

// In thousandths of the unit. `stem` is the path up to the underscore.
Result<double> readThousandths(const QString& stem) {
  const QString input = stem + QStringLiteral("_input");
  const QString raw = stem + QStringLiteral("_raw");
  if (there(input) || !there(raw)) return readNumber(input);
  const QString offset = stem + QStringLiteral("_offset");
  const auto count = readNumber(raw);
  if (!count.ok()) return count;
  const auto added = there(offset) ? readNumber(offset) : Result<double>(0.0);
  if (!added.ok()) return added;
  const auto scale = readNumber(stem + QStringLiteral("_scale"));
  if (!scale.ok()) return scale;
  return (count.value() + added.value()) * scale.value();
}

bool shows(const QString& stem) {
  return there(stem + QStringLiteral("_input")) || there(stem + QStringLiteral("_raw"));
}

bool showsTemperature(const QString& folder, const Files& files) {
  return shows(folder + u'/' + QLatin1String(files.temperature));
}

bool showsHumidity(const QString& folder, const Files& files) {
  return shows(folder + u'/' + QLatin1String(files.humidity));
}

Message outOfRange(const QString& stem, double value, const char* unit) {
  return Message("sensor.out-of-range")
      .with("path", convert::fromQt(stem))
      .with("value", core::base::fixedNumber(value, 1) + unit);
}

void addThose(QStringList& found, const QString& parent, const Files& files) {
  const QDir folder(parent);
  for (const QString& name : folder.entryList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name)) {
    const QString path = folder.filePath(name);
    if (showsTemperature(path, files) && showsHumidity(path, files)) found << path;
  }
}

}  // namespace

core::base::Result<SensorReading, Message> readSensor(const QString& folder) {
  if (!QFileInfo(folder).isDir()) return unreadable(folder);
  const bool monitor = showsTemperature(folder, kHardwareMonitor) || showsHumidity(folder, kHardwareMonitor);
  const Files& files = monitor ? kHardwareMonitor : kInputDevice;
  const QString temperature = folder + u'/' + QLatin1String(files.temperature);
  const QString humidity = folder + u'/' + QLatin1String(files.humidity);
  const auto millidegrees = readThousandths(temperature);
  if (!millidegrees.ok()) return millidegrees.error();
  const auto thousandths = readThousandths(humidity);
  if (!thousandths.ok()) return thousandths.error();
  const SensorReading reading{millidegrees.value() / 1000, thousandths.value() / 1000};
  if (!core::units::temperatureInCelsius(reading.celsius).ok()) return outOfRange(temperature, reading.celsius, " C");
  if (!core::units::humidityInPercent(reading.percent).ok()) return outOfRange(humidity, reading.percent, " %");
  return reading;
}

QStringList findSensors(const QString& root) {
  QStringList found;
  addThose(found, root + QStringLiteral("/bus/iio/devices"), kInputDevice);
  addThose(found, root + QStringLiteral("/class/hwmon"), kHardwareMonitor);
  return found;
}

}  // namespace app::room
