#include "app/caretaker/sensor_follow.h"

#include <atomic>
#include <vector>

#include "tests/app/workbench/bench.h"
#include "tests/support/event_loop.h"
#include "tests/support/folders.h"

using app::caretaker::SensorFollow;
using core::base::Message;
using core::intents::ChooseSensor;
using namespace std::chrono_literals;

namespace {

// A shop with a sensor that is read every 20 ms.
struct Shop {
  tests::MemoryEventStore store;
  tests::StoredBench bench{store};
  tests::Folders files;
  std::shared_ptr<std::atomic<int>> reads = std::make_shared<std::atomic<int>>(0);
  SensorFollow follow{bench.work, bench.clock,
                      [count = reads](const QString& folder) {
                        auto answer = app::room::readSensor(folder);
                        ++*count;
                        return answer;
                      },
                      20ms};
  std::vector<std::string> troubles;

  Shop() {
    QObject::connect(&follow, &SensorFollow::trouble, &follow,
                     [this](const Message& told) { troubles.push_back(told.id); });
    show("20040", "50000");
  }
  void show(const QByteArray& temperature, const QByteArray& humidity) const {
    REQUIRE(files.write("in_temp_input", temperature));
    REQUIRE(files.write("in_humidityrelative_input", humidity));
  }
  void choose(const std::string& folder) {
    REQUIRE(bench.work.submit(core::intents::OfShop{ChooseSensor{folder}}).id.empty());
  }
  void chooseIt() { choose(files.path().toStdString()); }
  void settle() const {
    const int until = *reads + 3;
    REQUIRE(tests::becomesSo([&] { return *reads >= until; }));
    tests::letPass(10);
  }
  const core::waits::RoomTrack& rooms() const { return bench.work.shop().rooms; }
};

std::string roomText(const core::waits::RoomTrack& rooms) {
  if (rooms.empty()) return "none";
  return std::to_string(rooms.back().room.temperature.inCelsius()).substr(0, 4) + ' ' +
         std::to_string(rooms.back().room.humidity.inPercent()).substr(0, 4) +
         (rooms.back().bySensor ? " by sensor" : " by hand");
}

}  // namespace

TEST_CASE("the chosen sensor's room is entered, to a tenth, and again only when it has changed enough") {
  Shop shop;
  shop.follow.start();
  shop.chooseIt();
  shop.settle();
  CHECK(roomText(shop.rooms()) == "20.0 50.0 by sensor");
  shop.show("20440", "51900");
  shop.settle();
  CHECK(shop.rooms().size() == 1);
  shop.show("20600", "51900");
  shop.settle();
  CHECK(shop.rooms().size() == 2);
  CHECK(roomText(shop.rooms()) == "20.6 51.9 by sensor");
  CHECK(shop.troubles.empty());
}

TEST_CASE("a sensor chosen before the program was started is followed from the start") {
  Shop shop;
  shop.chooseIt();
  tests::letPass(100);
  CHECK(*shop.reads == 0);
  shop.follow.start();
  shop.settle();
  CHECK(shop.rooms().size() == 1);
}

TEST_CASE("after a restart what the sensor showed within the hour is not entered again, what is older is") {
  Shop shop;
  shop.follow.start();
  shop.chooseIt();
  shop.settle();
  REQUIRE(shop.rooms().size() == 1);
  for (const int minutes : {59, 2}) {
    shop.bench.clock.advance(minutes * 60'000);
    shop.choose("");
    shop.chooseIt();
    shop.settle();
    CHECK(shop.rooms().size() == (minutes == 59 ? 1 : 2));
  }
}

TEST_CASE("a room entered by hand holds until the sensor shows another, and the same one by sensor is entered") {
  Shop shop;
  const core::units::Room byHand{core::units::Temperature::celsius(20), core::units::Humidity::percent(50)};
  REQUIRE(shop.bench.work.submit(core::intents::OfShop{core::intents::EnterRoom{byHand, false}}).id.empty());
  shop.follow.start();
  shop.chooseIt();
  shop.settle();
  CHECK(roomText(shop.rooms()) == "20.0 50.0 by sensor");
  CHECK(shop.rooms().size() == 2);
}

TEST_CASE("each way a sensor goes bad is said once, the last room holds, and its recovery ends the trouble") {
  Shop shop;
  shop.follow.start();
  shop.chooseIt();
  shop.settle();
  struct Bad {
    const char* humidity;
    const char* said;
  };
  for (const Bad& bad : {Bad{"damp", "sensor.not-a-number"}, Bad{"", "sensor.not-a-number"},
                         Bad{"140000", "sensor.out-of-range"}, Bad{"0", "sensor.out-of-range"}}) {
    INFO(bad.humidity);
    shop.troubles.clear();
    shop.show("20040", bad.humidity);
    shop.settle();
    shop.settle();
    CHECK(shop.troubles == std::vector<std::string>{bad.said});
    shop.show("20040", "50000");
    shop.settle();
    CHECK(shop.troubles == std::vector<std::string>{bad.said, ""});
  }
  shop.troubles.clear();
  shop.show("-40000", "50000");
  shop.settle();
  REQUIRE(shop.files.remove(""));
  shop.settle();
  CHECK(shop.troubles == std::vector<std::string>{"sensor.out-of-range", "sensor.unreadable"});
  CHECK(shop.rooms().size() == 1);
}

TEST_CASE("a sensor no longer chosen is no longer read, and its trouble is over") {
  Shop shop;
  shop.follow.start();
  shop.choose("/nowhere");
  REQUIRE(tests::becomesSo([&] { return shop.troubles.size() == 1; }));
  shop.choose("");
  CHECK(shop.troubles == std::vector<std::string>{"sensor.unreadable", ""});
  tests::letPass(50);
  const int before = *shop.reads;
  tests::letPass(100);
  CHECK(*shop.reads == before);
}

TEST_CASE("a room that cannot be kept is said with the store's trouble") {
  Shop shop;
  shop.follow.start();
  shop.chooseIt();
  shop.settle();
  shop.store.failWrites(Message("store.full"));
  shop.show("25000", "50000");
  shop.settle();
  CHECK(shop.troubles == std::vector<std::string>{"store.full"});
  shop.store.failWrites({});
  shop.show("26000", "50000");
  shop.settle();
  CHECK(shop.troubles == std::vector<std::string>{"store.full", ""});
  CHECK(roomText(shop.rooms()) == "26.0 50.0 by sensor");
}

TEST_CASE("a sensor's reading is nobody's act: the step done before it can still be taken back") {
  Shop shop;
  const std::string job = shop.bench.takeIn(tests::demoJob());
  shop.bench.goOn(job);
  const std::string act = shop.bench.work.job(job)->lastIntent;
  REQUIRE_FALSE(act.empty());
  shop.follow.start();
  shop.chooseIt();
  shop.settle();
  REQUIRE(shop.rooms().size() == 1);
  CHECK(shop.bench.work.job(job)->lastIntent == act);
  CHECK(shop.bench.refusal(job, core::intents::Undo{act}) == "");
}
