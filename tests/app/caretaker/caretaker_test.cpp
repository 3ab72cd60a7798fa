// Run beside a bus of its own (tests/support/with_buses.sh).
#include "app/caretaker/caretaker.h"

#include "app/awake/due.h"
#include "tests/app/awake/mock_services.h"
#include "tests/app/workbench/bench.h"
#include "tests/support/event_loop.h"
#include "tests/support/folders.h"

using app::caretaker::Caretaker;
using core::base::Message;
using tests::becomesSo;
using Locks = std::vector<std::string>;

namespace {

// Notes what the clock log is told, in order.
class NotingStore : public tests::MemoryEventStore {
 public:
  Result<core::record::Done> logClock(const std::string& device, const std::string& kind,
                                      const core::waits::ClockReading& reading) override {
    kinds.push_back(kind);
    return MemoryEventStore::logClock(device, kind, reading);
  }
  Locks kinds;
};

struct Shop {
  NotingStore store;
  tests::StoredBench bench{store};
  tests::Folders machine;
  std::vector<std::pair<Caretaker::Trouble, std::string>> troubles;
  int timesChanged = 0;
  std::unique_ptr<Caretaker> caretaker;

  void open() {
    REQUIRE(machine.write("etc/timezone", "A\n"));
    app::awake::Places places;
    places.power = machine.path("power");
    places.clocks = machine.path("rtc");
    caretaker = std::make_unique<Caretaker>(bench.work, bench.clock, places, QStringList{machine.path("etc/timezone")});
    QObject::connect(caretaker.get(), &Caretaker::troubleChanged, caretaker.get(),
                     [this](Caretaker::Trouble trouble, const Message& message) {
                       if (!message.id.empty()) troubles.emplace_back(trouble, message.id);
                     });
    QObject::connect(caretaker.get(), &Caretaker::timeChanged, caretaker.get(), [this] { ++timesChanged; });
    caretaker->start();
  }
  bool alertNear() const {
    return app::awake::dueWithinHorizon(*bench.work.schedule(), bench.clock.now().boottimeNanoseconds);
  }
  // Works until something is waited for that an alert calls for before long.
  std::string workUntilAlert() {
    const std::string job = bench.takeIn(tests::demoJob());
    for (int acts = 0; acts < 100 && !alertNear(); ++acts) bench.goOn(job);
    REQUIRE(alertNear());
    return job;
  }
};

}  // namespace

TEST_CASE("a wait that is begun blocks sleep until it is taken back") {
  const tests::MockLogin login;
  Shop shop;
  shop.open();
  REQUIRE(becomesSo([&] { return login.locks() == Locks{"sleep delay"}; }));
  const std::string job = shop.workUntilAlert();
  CHECK(becomesSo([&] { return login.locks() == Locks{"sleep delay", "sleep:idle block"}; }));
  REQUIRE(shop.bench.refusal(job, core::intents::Undo{shop.bench.work.lastIntentId()}) == "");
  REQUIRE_FALSE(shop.alertNear());
  CHECK(becomesSo([&] { return login.locks() == Locks{"sleep delay"}; }));
  CHECK(shop.troubles.empty());
}

TEST_CASE("the time is in the record before the machine sleeps and after it has woken") {
  const tests::MockLogin login;
  Shop shop;
  shop.open();
  REQUIRE(becomesSo([&] { return login.locks() == Locks{"sleep delay"}; }));
  shop.store.kinds.clear();
  login.prepareForSleep(true);
  REQUIRE(becomesSo([&] { return login.locks().empty(); }));
  CHECK(shop.store.kinds == Locks{"heartbeat"});
  CHECK(shop.timesChanged == 0);
  shop.bench.clock.advance(3'600'000);
  login.prepareForSleep(false);
  REQUIRE(becomesSo([&] { return shop.timesChanged == 1; }));
  CHECK(shop.store.kinds == Locks{"heartbeat", "heartbeat"});
  CHECK(shop.bench.work.shop().clockLog.heartbeats.back() == shop.bench.clock.now());
}

TEST_CASE("a clock set while the machine slept is written down as such when it wakes") {
  const tests::MockLogin login;
  Shop shop;
  shop.open();
  REQUIRE(becomesSo([&] { return login.locks() == Locks{"sleep delay"}; }));
  shop.store.kinds.clear();
  shop.bench.clock.jump(7'200'000);
  login.prepareForSleep(false);
  REQUIRE(becomesSo([&] { return shop.timesChanged == 1; }));
  CHECK(shop.store.kinds == Locks{"jump"});
}

TEST_CASE("a change of zone is written down and told") {
  Shop shop;
  shop.open();
  shop.store.kinds.clear();
  shop.bench.clock.setZone("Europe/Paris");
  REQUIRE(shop.machine.write("etc/timezone", "B\n"));
  REQUIRE(becomesSo([&] { return shop.timesChanged == 1; }));
  CHECK(shop.store.kinds == Locks{"zone"});
}

TEST_CASE("where nobody keeps the machine awake, or its battery is low, that is told while a wait runs") {
  Shop shop;
  REQUIRE(shop.machine.write("power/BAT0/type", "Battery"));
  REQUIRE(shop.machine.write("power/BAT0/status", "Discharging"));
  REQUIRE(shop.machine.write("power/BAT0/capacity", "7"));
  shop.open();
  tests::letPass(300);
  CHECK(shop.troubles.empty());
  shop.workUntilAlert();
  const auto told = [&](Caretaker::Trouble trouble, const char* id) {
    return std::find(shop.troubles.begin(), shop.troubles.end(), std::pair(trouble, std::string(id))) !=
           shop.troubles.end();
  };
  CHECK(becomesSo([&] { return told(Caretaker::Trouble::Sleep, "awake.may-sleep"); }));
  CHECK(becomesSo([&] { return told(Caretaker::Trouble::Battery, "awake.battery-low"); }));
}

TEST_CASE("a sensor's trouble is told") {
  Shop shop;
  REQUIRE(shop.bench.work.submit(core::intents::OfShop{core::intents::ChooseSensor{"/nowhere"}}).id.empty());
  shop.open();
  using Told = std::vector<std::pair<Caretaker::Trouble, std::string>>;
  CHECK(becomesSo([&] { return shop.troubles == Told{{Caretaker::Trouble::Sensor, "sensor.unreadable"}}; }));
}

TEST_CASE("a record that takes no sign of life any more is told before an act is lost on it") {
  Shop shop;
  shop.open();
  REQUIRE(shop.troubles.empty());
  shop.store.failWrites(Message("store.written-back").with("path", "record"));
  shop.bench.clock.setZone("Europe/Paris");
  REQUIRE(shop.machine.write("etc/timezone", "B\n"));
  using Told = std::vector<std::pair<Caretaker::Trouble, std::string>>;
  CHECK(becomesSo([&] { return shop.troubles == Told{{Caretaker::Trouble::Record, "store.written-back"}}; }));
}
