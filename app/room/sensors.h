#pragma once
// Climate sensors as the kernel shows them: a folder of small text files for each. Where a system has no such
// folders, no sensor is found.
#include <QString>
#include <QStringList>

#include "core/base/message.h"
#include "core/base/result.h"

namespace app::room {

struct SensorReading {
  double celsius = 0;  // within the limits of core/units for a workshop
  double percent = 0;  // relative humidity, likewise
  friend bool operator==(const SensorReading&, const SensorReading&) = default;
};

// Reads one folder, which may take as long as the device takes: seconds for some. Reads either an industrial input
// device (in_temp_input in millidegrees, or (in_temp_raw + in_temp_offset) * in_temp_scale; in_humidityrelative_* in
// thousandths of a per cent likewise; a missing offset is 0) or a hardware monitor (temp1_input, humidity1_input in the
// same units). Errors: sensor.unreadable {path}, sensor.not-a-number {path, text}, sensor.out-of-range {path, value}.
core::base::Result<SensorReading, core::base::Message> readSensor(const QString& folder);

// The folders under <root>/bus/iio/devices and <root>/class/hwmon that show both temperature and humidity, in order of
// their names. Reads no value. The number in a folder's name may change when the machine is started again.
QStringList findSensors(const QString& root = QStringLiteral("/sys"));

}  // namespace app::room
