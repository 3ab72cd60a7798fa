#include "app/room/sensor_watch.h"

#include <atomic>
#include <memory>
#include <semaphore>
#include <vector>

#include "tests/support/catch.h"
#include "tests/support/event_loop.h"
#include "tests/support/folders.h"

using app::room::SensorReading;
using app::room::SensorWatch;
using core::base::Message;

namespace {

using namespace std::chrono_literals;

// A sensor that is read every 20 ms and counts how often.
struct Sensor {
  tests::Folders files;
  std::shared_ptr<std::atomic<int>> reads = std::make_shared<std::atomic<int>>(0);
  SensorWatch watch{nullptr,
                    [count = reads](const QString& folder) {
                      auto answer = app::room::readSensor(folder);
                      ++*count;
                      return answer;
                    },
                    20ms};
  std::vector<SensorReading> readings;
  std::vector<std::string> troubles;

  Sensor() {
    QObject::connect(&watch, &SensorWatch::reading, &watch, [this](SensorReading told) { readings.push_back(told); });
    QObject::connect(&watch, &SensorWatch::trouble, &watch,
                     [this](const Message& told) { troubles.push_back(told.id); });
    show("20000", "50000");
  }
  void show(const QByteArray& temperature, const QByteArray& humidity) {
    REQUIRE(files.write("temp1_input", temperature));
    REQUIRE(files.write("humidity1_input", humidity));
  }
  // At least one read that began after now is over and taken.
  void settle() {
    const int until = *reads + 3;
    REQUIRE(tests::becomesSo([&] { return *reads >= until; }));
    tests::letPass(5);
  }
};

}  // namespace

TEST_CASE("the first reading is told at once, and the same one not again") {
  Sensor sensor;
  sensor.watch.start(sensor.files.path());
  CHECK(sensor.readings.empty());  // it was not read in this thread
  sensor.settle();
  sensor.settle();
  REQUIRE(sensor.readings.size() == 1);
  CHECK(sensor.readings[0].celsius == Approx(20));
  CHECK(sensor.readings[0].percent == Approx(50));
  CHECK(sensor.troubles.empty());
}

TEST_CASE("half a kelvin or two per cent from what was last told is told, less is not, however it adds up") {
  Sensor sensor;
  sensor.watch.start(sensor.files.path());
  sensor.settle();
  sensor.show("20490", "51900");
  sensor.settle();
  CHECK(sensor.readings.size() == 1);
  sensor.show("20500", "51900");
  sensor.settle();
  CHECK(sensor.readings.size() == 2);
  sensor.show("20100", "53800");
  sensor.settle();
  CHECK(sensor.readings.size() == 2);
  sensor.show("20100", "49900");
  sensor.settle();
  CHECK(sensor.readings.size() == 3);
}

TEST_CASE("a trouble is told once while it lasts, and the reading after it always") {
  Sensor sensor;
  sensor.watch.start(sensor.files.path());
  sensor.settle();
  REQUIRE(sensor.files.write("humidity1_input", "damp"));
  sensor.settle();
  REQUIRE(sensor.files.write("humidity1_input", "wet"));
  sensor.settle();
  CHECK(sensor.troubles == std::vector<std::string>{"sensor.not-a-number"});
  REQUIRE(sensor.files.write("humidity1_input", "0"));
  sensor.settle();
  CHECK(sensor.troubles.size() == 2);
  CHECK(sensor.troubles.back() == "sensor.out-of-range");
  REQUIRE(sensor.files.remove(""));
  sensor.settle();
  CHECK(sensor.troubles.back() == "sensor.unreadable");
  CHECK(sensor.readings.size() == 1);
  sensor.show("20000", "50000");
  sensor.settle();
  CHECK(sensor.readings.size() == 2);
  CHECK(sensor.troubles.size() == 3);
}

TEST_CASE("a stopped watch neither reads nor tells, and a started one tells anew") {
  Sensor sensor;
  sensor.watch.start(sensor.files.path());
  sensor.watch.stop();
  tests::letPass(100);
  CHECK(sensor.readings.empty());  // the read that was under way is dropped
  const int before = *sensor.reads;
  tests::letPass(100);
  CHECK(*sensor.reads == before);
  sensor.watch.start(sensor.files.path());
  sensor.settle();
  sensor.watch.start(sensor.files.path());
  sensor.settle();
  CHECK(sensor.readings.size() == 2);
}

TEST_CASE("a sensor that does not answer is said to be silent, is not asked again meanwhile, and may still answer") {
  const auto gate = std::make_shared<std::counting_semaphore<>>(0);
  const auto asked = std::make_shared<std::atomic<int>>(0);
  SensorWatch watch(
      nullptr,
      [gate, asked](const QString&) -> core::base::Result<SensorReading, Message> {
        ++*asked;
        gate->acquire();
        return SensorReading{20, 50};
      },
      20ms);
  int told = 0;
  std::vector<std::string> troubles;
  QObject::connect(&watch, &SensorWatch::reading, &watch, [&] { ++told; });
  QObject::connect(&watch, &SensorWatch::trouble, &watch, [&](const Message& each) { troubles.push_back(each.id); });
  watch.start("/sensor");
  tests::letPass(150);
  CHECK(troubles == std::vector<std::string>{"sensor.silent"});
  CHECK(*asked == 1);
  gate->release();
  CHECK(tests::becomesSo([&] { return told == 1; }));
  gate->release(100);
}

TEST_CASE("what was told long ago is told again although it has not changed, so that it is seen to be fresh") {
  tests::Folders files;
  REQUIRE(files.write("temp1_input", "20000"));
  REQUIRE(files.write("humidity1_input", "50000"));
  SensorWatch watch(nullptr, app::room::readSensor, 20ms, 1s);
  int told = 0;
  QObject::connect(&watch, &SensorWatch::reading, &watch, [&] { ++told; });
  watch.start(files.path());
  REQUIRE(tests::becomesSo([&] { return told == 1; }));
  tests::letPass(100);
  CHECK(told == 1);
  CHECK(tests::becomesSo([&] { return told == 2; }));
}
