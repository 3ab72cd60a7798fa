#include "app/room/sensors.h"

#include <sys/stat.h>

#include "app/words/words.h"
#include "tests/support/catch.h"
#include "tests/support/folders.h"

using app::room::findSensors;
using app::room::readSensor;
using core::base::Message;

namespace {

const QString kDevice = QStringLiteral("bus/iio/devices/iio:device0");
const QString kMonitor = QStringLiteral("class/hwmon/hwmon2");

struct Tree : tests::Folders {
  bool device(const QByteArray& temperature, const QByteArray& humidity) const {
    return write(kDevice + "/in_temp_input", temperature) && write(kDevice + "/in_humidityrelative_input", humidity);
  }
  auto read() const { return readSensor(path(kDevice)); }
  // What is wrong with the device, and that its words name the file.
  std::string trouble(const char* file) const {
    const auto answer = read();
    if (answer.ok()) return "";
    const Message& error = answer.error();
    const std::string named = path(kDevice + '/' + QLatin1String(file)).toStdString();
    CHECK(app::words::text(error, core::units::UnitSystem::Millimetres).toStdString().find(named) != std::string::npos);
    CHECK(app::words::text(error, core::units::UnitSystem::Millimetres).indexOf(u'{') < 0);
    return error.id;
  }
};

std::string textOf(const Message& message) { return std::get<std::string>(*message.argument("text")); }

}  // namespace

TEST_CASE("an input device's ready values are thousandths") {
  const Tree tree;
  REQUIRE(tree.device("19250\n", "58400\n"));
  CHECK(tree.read().value().celsius == Approx(19.25));
  CHECK(tree.read().value().percent == Approx(58.4));
  REQUIRE(tree.device("-1500", "7000.5\n"));
  CHECK(tree.read().value().celsius == Approx(-1.5));
  CHECK(tree.read().value().percent == Approx(7.0005));
}

TEST_CASE("an input device's raw values have the offset added before they are scaled") {
  const Tree tree;
  REQUIRE(tree.write(kDevice + "/in_temp_raw", "25000\n"));
  REQUIRE(tree.write(kDevice + "/in_temp_offset", "-15887.515151\n"));
  REQUIRE(tree.write(kDevice + "/in_temp_scale", "2.517700195\n"));
  REQUIRE(tree.write(kDevice + "/in_humidityrelative_raw", "30000\n"));
  REQUIRE(tree.write(kDevice + "/in_humidityrelative_scale", "1.525878906\n"));
  CHECK(tree.read().value().celsius == Approx((25000 - 15887.515151) * 2.517700195 / 1000));
  CHECK(tree.read().value().percent == Approx(45.77636718));
  REQUIRE(tree.remove(kDevice + "/in_temp_scale"));
  CHECK(tree.trouble("in_temp_scale") == "sensor.unreadable");
  REQUIRE(tree.write(kDevice + "/in_temp_scale", "2.5177"));
  REQUIRE(tree.write(kDevice + "/in_temp_offset", "none"));
  CHECK(tree.trouble("in_temp_offset") == "sensor.not-a-number");
}

TEST_CASE("a hardware monitor is read as well, and its own files are named") {
  const Tree tree;
  REQUIRE(tree.write(kMonitor + "/temp1_input", "21500\n"));
  REQUIRE(tree.write(kMonitor + "/humidity1_input", "44000\n"));
  const QString folder = tree.path(kMonitor);
  CHECK(readSensor(folder).value().celsius == Approx(21.5));
  CHECK(readSensor(folder).value().percent == Approx(44));
  REQUIRE(tree.remove(kMonitor + "/humidity1_input"));
  const Message error = readSensor(folder).error();
  CHECK(std::get<std::string>(*error.argument("path")) == (folder + "/humidity1_input").toStdString());
}

TEST_CASE("what is no number is refused with the file and what it says") {
  const Tree tree;
  for (const char* bad : {"", "\n", "warm", "19250 C", "19,250", " 19250", "1925O", "0x4b32", "1e4", "nan", "-nan",
                          "inf", "-inf", "19250\n19250\n", "--5", "."}) {
    INFO(bad);
    REQUIRE(tree.device(bad, "58400"));
    CHECK(tree.trouble("in_temp_input") == "sensor.not-a-number");
    REQUIRE(tree.device("19250", bad));
    CHECK(tree.trouble("in_humidityrelative_input") == "sensor.not-a-number");
  }
  REQUIRE(tree.device("warm\n", "58400"));
  CHECK(textOf(tree.read().error()) == "warm");
  REQUIRE(tree.device(QByteArray("\xff\x00\x1b[31m", 7), "58400"));
  CHECK(tree.trouble("in_temp_input") == "sensor.not-a-number");
  for (const QChar each : QString::fromStdString(textOf(tree.read().error()))) CHECK(each.isPrint());
}

TEST_CASE("a huge file is no number and only its beginning is looked at") {
  const Tree tree;
  REQUIRE(tree.device(QByteArray(64 << 20, '1'), "58400"));
  CHECK(tree.trouble("in_temp_input") == "sensor.not-a-number");
  CHECK(textOf(tree.read().error()).size() < 30);
  REQUIRE(tree.device(QByteArray(400, '9'), "58400"));  // more than a double can hold
  CHECK(tree.trouble("in_temp_input") == "sensor.not-a-number");
}

TEST_CASE("a number no workshop has is refused with its file") {
  const Tree tree;
  for (const char* bad : {"-40000", "-20001", "60001", "85000", "999999999999"}) {
    INFO(bad);
    REQUIRE(tree.device(bad, "58400"));
    CHECK(tree.trouble("in_temp") == "sensor.out-of-range");
  }
  for (const char* bad : {"0", "100000", "140000", "-1"}) {
    INFO(bad);
    REQUIRE(tree.device("19250", bad));
    CHECK(tree.trouble("in_humidityrelative") == "sensor.out-of-range");
  }
  REQUIRE(tree.device("-40000", "58400"));
  CHECK(std::get<std::string>(*tree.read().error().argument("value")) == "-40.0 C");
  REQUIRE(tree.device("-20000", "100"));
  CHECK(tree.read().ok());
}

TEST_CASE("a missing file, or a folder, a pipe or a device in its place, is unreadable and holds nothing up") {
  const Tree tree;
  REQUIRE(tree.device("19250", "58400"));
  const QString file = tree.path(kDevice + "/in_temp_input");
  REQUIRE(QFile::remove(file));
  CHECK(tree.trouble("in_temp_input") == "sensor.unreadable");
  REQUIRE(mkfifo(file.toLocal8Bit().constData(), 0600) == 0);
  CHECK(tree.trouble("in_temp_input") == "sensor.unreadable");
  REQUIRE(QFile::remove(file));
  REQUIRE(QDir().mkpath(file));
  CHECK(tree.trouble("in_temp_input") == "sensor.unreadable");
  REQUIRE(QDir().rmdir(file));
  REQUIRE(QFile::link(QStringLiteral("/dev/zero"), file));
  CHECK(tree.trouble("in_temp_input") == "sensor.unreadable");
}

TEST_CASE("sensors are found where a folder shows both temperature and humidity") {
  const Tree tree;
  CHECK(findSensors(tree.path()).isEmpty());
  CHECK(findSensors(tree.path("nowhere")).isEmpty());
  REQUIRE(tree.device("19250", "58400"));
  REQUIRE(tree.write(kMonitor + "/temp1_input", "21500"));
  REQUIRE(tree.write("class/hwmon/hwmon0/temp1_input", "50000"));  // a processor's
  REQUIRE(tree.write("bus/iio/devices/iio:device1/in_temp_raw", "1"));
  CHECK(findSensors(tree.path()) == QStringList{tree.path(kDevice)});
  REQUIRE(tree.write(kMonitor + "/humidity1_input", "bad"));
  REQUIRE(tree.write("bus/iio/devices/iio:device1/in_humidityrelative_input", "1"));
  CHECK(findSensors(tree.path()) ==
        QStringList{tree.path(kDevice), tree.path("bus/iio/devices/iio:device1"), tree.path(kMonitor)});
}

TEST_CASE("sensors behind the kernel's links are found and read") {
  const Tree tree;
  REQUIRE(tree.write("devices/i2c/in_temp_input", "19250"));
  REQUIRE(tree.write("devices/i2c/in_humidityrelative_input", "58400"));
  REQUIRE(QDir().mkpath(tree.path("bus/iio/devices")));
  REQUIRE(QFile::link(tree.path("devices/i2c"), tree.path(kDevice)));
  REQUIRE(findSensors(tree.path()) == QStringList{tree.path(kDevice)});
  CHECK(tree.read().ok());
  REQUIRE(tree.remove("devices/i2c"));
  CHECK(findSensors(tree.path()).isEmpty());
  const Message error = tree.read().error();
  CHECK(error.id == "sensor.unreadable");
  CHECK(std::get<std::string>(*error.argument("path")) == tree.path(kDevice).toStdString());
}
