// Run beside a bus of its own (tests/support/with_buses.sh): services that grant.
#include "app/awake/awake.h"

#include <QDBusArgument>
#include <QDBusMessage>
#include <chrono>

#include "tests/app/awake/mock_services.h"
#include "tests/support/alerts.h"
#include "tests/support/catch.h"
#include "tests/support/event_loop.h"
#include "tests/support/folders.h"

using app::awake::Awake;
using app::awake::Keeper;
using app::awake::Keepers;
using app::awake::Wakefulness;
using core::intents::AlertClass;
using tests::becomesSo;
using tests::MockLogin;
using namespace std::chrono_literals;
using Locks = std::vector<std::string>;

namespace {

constexpr std::int64_t kHour = 3'600'000'000'000;

// A bench whose boot-time clock stands at a hundred hours until it is moved.
struct Bench {
  tests::Folders power;
  std::int64_t now = 100 * kHour;
  Awake awake{[this] { return now; },
              {app::awake::machineBuses(), power.path(), QStringLiteral("/nowhere")},
              nullptr,
              500ms,
              100ms};
  std::vector<std::string> events;

  Bench() {
    QObject::connect(&awake, &Awake::sleeping, &awake, [this] { events.emplace_back("sleeping"); });
    QObject::connect(&awake, &Awake::woke, &awake, [this] { events.emplace_back("woke"); });
  }
  void alertIn(std::int64_t nanoseconds) {
    awake.follow(tests::scheduleOf({tests::dueAlert("size", AlertClass::Open, now + nanoseconds)}));
  }
  void nothingRuns() { awake.follow(tests::scheduleOf({})); }
  bool keptBy(Keepers keepers) {
    return becomesSo([&] { return awake.wakefulness().settled && awake.wakefulness().kept == keepers; });
  }
};

bool locksBecome(const MockLogin& login, const Locks& locks) {
  return becomesSo([&] { return login.locks() == locks; });
}

}  // namespace

TEST_CASE("while an alert is due sleep and idling are blocked, and free again as soon as nothing runs") {
  const MockLogin login;
  Bench bench;
  REQUIRE(locksBecome(login, {"sleep delay"}));
  bench.alertIn(kHour);
  CHECK(bench.keptBy(Keeper::Sleep));
  CHECK(login.locks() == Locks{"sleep delay", "sleep:idle block"});
  CHECK(bench.awake.wakefulness().sleepTrouble().id.empty());
  bench.nothingRuns();
  CHECK(locksBecome(login, {"sleep delay"}));
  bench.alertIn(2 * kHour);
  CHECK(locksBecome(login, {"sleep delay", "sleep:idle block"}));
}

TEST_CASE("an alert beyond the horizon blocks nothing until time has brought it near") {
  const MockLogin login;
  Bench bench;
  REQUIRE(locksBecome(login, {"sleep delay"}));
  bench.alertIn(13 * kHour);
  tests::letPass(300);
  CHECK(login.locks() == Locks{"sleep delay"});
  CHECK_FALSE(bench.awake.wakefulness().wanted);
  bench.now += kHour;
  CHECK(locksBecome(login, {"sleep delay", "sleep:idle block"}));
}

TEST_CASE("nothing is held any more when the bench is gone") {
  const MockLogin login;
  {
    Bench bench;
    bench.alertIn(kHour);
    REQUIRE(locksBecome(login, {"sleep delay", "sleep:idle block"}));
  }
  CHECK(locksBecome(login, {}));
}

TEST_CASE("sleep is told before it, and the machine waits with it until that was heard; waking is told as well") {
  const MockLogin login;
  Bench bench;
  REQUIRE(locksBecome(login, {"sleep delay"}));
  Locks whileTelling;
  QObject::connect(&bench.awake, &Awake::sleeping, &bench.awake, [&] { whileTelling = login.locks(); });
  login.prepareForSleep(true);
  REQUIRE(becomesSo([&] { return bench.events.size() == 1; }));
  CHECK(whileTelling == Locks{"sleep delay"});
  CHECK(locksBecome(login, {}));
  login.prepareForSleep(false);
  CHECK(becomesSo([&] { return bench.events.size() == 2; }));
  CHECK(bench.events == Locks{"sleeping", "woke"});
  CHECK(locksBecome(login, {"sleep delay"}));
}

TEST_CASE("an alert that came near while the machine slept is kept awake for from its waking") {
  const MockLogin login;
  tests::Folders power;
  std::int64_t now = 100 * kHour;
  Awake awake([&] { return now; }, {app::awake::machineBuses(), power.path(), "/nowhere"}, nullptr, 500ms, 1h);
  awake.follow(tests::scheduleOf({tests::dueAlert("size", AlertClass::Open, now + 20 * kHour)}));
  REQUIRE(locksBecome(login, {"sleep delay"}));
  login.prepareForSleep(true);
  REQUIRE(locksBecome(login, {}));
  now += 15 * kHour;
  login.prepareForSleep(false);
  CHECK(locksBecome(login, {"sleep delay", "sleep:idle block"}));
}

TEST_CASE("a screen saver is held off with its number and let go with it") {
  const auto saver = tests::screenSaverThat("ret = 4711");
  Bench bench;
  bench.alertIn(kHour);
  CHECK(bench.keptBy(Keeper::ScreenSaver));
  bench.nothingRuns();
  REQUIRE(becomesSo([&] { return saver->calls().size() >= 2; }));
  CHECK(saver->calls() == Locks{"Inhibit(Mountwright, A wait on the bench is running)", "UnInhibit(4711)"});
}

TEST_CASE("the portal is asked not to suspend and not to idle, and its request is closed afterwards") {
  const QString request = QStringLiteral("/org/freedesktop/portal/desktop/request/1/a");
  const auto portal = tests::portalThat(
      QStringLiteral("path = '%1'\n"
                     "if path not in objects: self.AddObject(path, 'org.freedesktop.portal.Request', {}, "
                     "[('Close', '', '', '')])\n"
                     "ret = dbus.ObjectPath(path)")
          .arg(request));
  Bench bench;
  bench.alertIn(kHour);
  CHECK(bench.keptBy(Keeper::Portal));
  REQUIRE_FALSE(portal->calls().empty());
  CHECK(portal->calls()[0] == "Inhibit(, 12, ...)");

  SECTION("closed when nothing runs") {
    bench.nothingRuns();
    const auto closed = [&] {
      const QDBusMessage question = QDBusMessage::createMethodCall("org.freedesktop.portal.Desktop", request,
                                                                   "org.freedesktop.DBus.Mock", "GetMethodCalls")
                                    << "Close";
      const auto calls = QDBusConnection::sessionBus().call(question).arguments().value(0).value<QDBusArgument>();
      calls.beginArray();
      return !calls.atEnd();
    };
    CHECK(becomesSo(closed));
  }
  SECTION("its later answer that it was refused ends what it seemed to grant") {
    portal->emitSignal(request, "org.freedesktop.portal.Request", "Response", "ua{sv}",
                       {QVariant::fromValue(2U), QVariantMap()});
    CHECK(becomesSo([&] { return bench.awake.wakefulness().kept == Keepers(); }));
  }
  SECTION("its later answer that it was granted changes nothing") {
    portal->emitSignal(request, "org.freedesktop.portal.Request", "Response", "ua{sv}",
                       {QVariant::fromValue(0U), QVariantMap()});
    tests::letPass(300);
    CHECK(bench.awake.wakefulness().kept == Keepers(Keeper::Portal));
  }
}

TEST_CASE("every keeper there is is asked at once") {
  const MockLogin login;
  const auto saver = tests::screenSaverThat("ret = 1");
  Bench bench;
  bench.alertIn(kHour);
  CHECK(bench.keptBy(Keeper::Sleep | Keeper::ScreenSaver));
}

TEST_CASE("the battery is looked at while an alert is due, and said where it is low") {
  const MockLogin login;
  Bench bench;
  REQUIRE(bench.power.write("BAT0/type", "Battery"));
  REQUIRE(bench.power.write("BAT0/status", "Discharging"));
  REQUIRE(bench.power.write("BAT0/capacity", "15"));
  tests::letPass(300);
  CHECK_FALSE(bench.awake.wakefulness().batteryPercent);
  bench.alertIn(kHour);
  REQUIRE(becomesSo([&] { return bench.awake.wakefulness().batteryPercent == 15; }));
  CHECK(bench.awake.wakefulness().batteryTrouble().id.empty());
  REQUIRE(bench.power.write("BAT0/capacity", "14"));
  REQUIRE(becomesSo([&] { return bench.awake.wakefulness().batteryPercent == 14; }));
  CHECK(bench.awake.wakefulness().batteryTrouble().id == "awake.battery-low");
  REQUIRE(bench.power.write("BAT0/status", "Charging"));
  CHECK(becomesSo([&] { return !bench.awake.wakefulness().batteryPercent; }));
}
