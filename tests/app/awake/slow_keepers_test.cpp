// Run beside a bus of its own (tests/support/with_buses.sh): services that refuse, are slow, missing, or hang.
#include <QDBusConnection>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <array>
#include <chrono>
#include <csignal>

#include "app/awake/awake.h"
#include "app/awake/bus_knock.h"
#include "tests/app/awake/mock_services.h"
#include "tests/support/alerts.h"
#include "tests/support/catch.h"
#include "tests/support/event_loop.h"
#include "tests/support/folders.h"

using app::awake::Awake;
using app::awake::Buses;
using app::awake::Keeper;
using app::awake::Keepers;
using app::awake::Wakefulness;
using core::intents::AlertClass;
using tests::becomesSo;
using namespace std::chrono_literals;

namespace {

constexpr std::int64_t kHour = 3'600'000'000'000;

// An alert is due in an hour, from the start. Notes the longest time this thread's events had to wait.
struct WaitingBench {
  explicit WaitingBench(Buses buses = app::awake::machineBuses())
      : awake([] { return 100 * kHour; }, {std::move(buses), power.path(), QStringLiteral("/nowhere")}, nullptr, 500ms,
              100ms) {
    QObject::connect(&awake, &Awake::changed, &awake, [this](const Wakefulness& now) {
      const std::string said = now.sleepTrouble().id;
      if (told.empty() || told.back() != said) told.push_back(said);
    });
    sinceBeat.start();
    QObject::connect(&beat, &QTimer::timeout, &awake,
                     [this] { longestWait = std::max(longestWait, sinceBeat.restart()); });
    beat.start(5);
    awake.follow(tests::scheduleOf({tests::dueAlert("size", AlertClass::Open, 101 * kHour)}));
  }
  bool saysItMaySleep() {
    return becomesSo([&] { return awake.wakefulness().sleepTrouble().id == "awake.may-sleep"; });
  }
  bool keptBy(Keepers keepers) {
    return becomesSo([&] { return awake.wakefulness().kept == keepers; });
  }
  tests::Folders power;
  Awake awake;
  std::vector<std::string> told;
  QTimer beat;
  QElapsedTimer sinceBeat;
  qint64 longestWait = 0;
};

// A bus of its own that can be stopped and ended.
struct OwnBus {
  QTemporaryDir folder;
  QString address = QStringLiteral("unix:path=") + folder.filePath("bus");
  tests::ChildProcess daemon{
      {"dbus-daemon", "--session", "--nofork", "--nopidfile", "--address=" + address.toStdString()},
      tests::ChildProcess::Pipe::None};
  OwnBus() {
    REQUIRE(becomesSo([&] { return !app::awake::answeringAddress(address, 500ms).isEmpty(); }));
  }
  ~OwnBus() { daemon.send(SIGCONT); }
};

std::string saidWith(const QString& system, const QString& session) {
  tests::ChildProcess child({"env", "DBUS_SYSTEM_BUS_ADDRESS=" + system.toStdString(),
                             "DBUS_SESSION_BUS_ADDRESS=" + session.toStdString(), SAY_AWAKE},
                            tests::ChildProcess::Pipe::FromChild);
  std::array<char, 100> said{};
  const ssize_t got = read(child.pipe(), said.data(), said.size());
  REQUIRE(child.exitStatus() == 0);
  return {said.data(), static_cast<std::size_t>(std::max<ssize_t>(got, 0))};
}

}  // namespace

TEST_CASE("where every keeper refuses it is said that the machine may sleep, and one that grants later is taken") {
  auto login = tests::loginThat(tests::kRefuse);
  const auto saver = tests::screenSaverThat(tests::kRefuse);
  WaitingBench bench;
  CHECK(bench.saysItMaySleep());
  tests::letPass(400);
  CHECK(bench.told == std::vector<std::string>{"", "awake.may-sleep"});
  saver->give("Inhibit", "ss", "u", "ret = 3");
  CHECK(bench.keptBy(Keeper::ScreenSaver));
  CHECK(bench.awake.wakefulness().sleepTrouble().id.empty());
}

TEST_CASE("where sleep may not be blocked idling is, and not both once sleep may") {
  const QString grant = QStringLiteral("ret = dbus.types.UnixFd(os.open('/dev/null', os.O_RDONLY))");
  const auto login = tests::loginThat(QStringLiteral("if args[0] == 'sleep:idle': %1\n%2").arg(tests::kRefuse, grant));
  WaitingBench bench;
  CHECK(bench.keptBy(Keeper::Idle));
  CHECK(bench.awake.wakefulness().sleepTrouble().id.empty());
  login->give("Inhibit", "ssss", "h", grant);
  CHECK(bench.keptBy(Keeper::Sleep));
}

TEST_CASE("no bus at all is no keeper, told at once, and one that comes later is found") {
  QTemporaryDir folder;
  const QString address = QStringLiteral("unix:path=") + folder.filePath("bus");
  WaitingBench bench({address, address});
  CHECK(bench.saysItMaySleep());
  WaitingBench without(Buses{});
  CHECK(without.saysItMaySleep());
  tests::ChildProcess daemon(
      {"dbus-daemon", "--session", "--nofork", "--nopidfile", "--address=" + address.toStdString()},
      tests::ChildProcess::Pipe::None);
  REQUIRE(becomesSo([&] { return !app::awake::answeringAddress(address, 500ms).isEmpty(); }));
  tests::letPass(500);
  CHECK(bench.saysItMaySleep());  // nobody is on that bus
  CHECK(bench.longestWait < 1000);
}

TEST_CASE("services that never answer are said not to keep the machine awake after a while, and hold nothing up") {
  const auto login = tests::loginThat(tests::kNeverAnswer);
  const auto saver = tests::screenSaverThat(tests::kNeverAnswer);
  {
    WaitingBench bench;
    tests::letPass(200);
    CHECK(bench.awake.wakefulness().sleepTrouble().id.empty());
    CHECK(bench.saysItMaySleep());
    tests::letPass(300);
    CHECK(bench.longestWait < 1000);
  }
  CHECK(saidWith(qEnvironmentVariable("DBUS_SYSTEM_BUS_ADDRESS"), qEnvironmentVariable("DBUS_SESSION_BUS_ADDRESS")) ==
        "0 asking\n");
}

TEST_CASE("a slow service's word is taken when it comes, and given back where nobody wants it any more") {
  const auto saver = tests::screenSaverThat("import time\ntime.sleep(0.8)\nret = 5");
  WaitingBench bench;
  CHECK(bench.saysItMaySleep());
  SECTION("taken") {
    CHECK(bench.keptBy(Keeper::ScreenSaver));
    CHECK(bench.awake.wakefulness().sleepTrouble().id.empty());
  }
  SECTION("given back") {
    bench.awake.follow(tests::scheduleOf({}));
    CHECK(becomesSo([&] { return saver->calls().size() == 2; }));
    CHECK(saver->calls().back() == "UnInhibit(5)");
    CHECK(bench.awake.wakefulness().kept == Keepers());
  }
}

TEST_CASE("a bus that takes callers and never answers is no bus, and holds up neither the work nor the program's end") {
  OwnBus bus;
  bus.daemon.send(SIGSTOP);
  QElapsedTimer passed;
  passed.start();
  {
    WaitingBench bench({bus.address, bus.address});
    CHECK(bench.saysItMaySleep());
    CHECK(bench.longestWait < 1000);
  }
  CHECK(passed.elapsed() < 8000);
  passed.restart();
  CHECK(saidWith(bus.address, bus.address) == "0 asking\n");
  CHECK(passed.elapsed() < 8000);
}

TEST_CASE("a bus that stops answering in mid-work holds nothing up, and one that ends is noticed and found again") {
  auto bus = std::make_unique<OwnBus>();
  QElapsedTimer passed;
  SECTION("stops") {
    {
      WaitingBench bench({bus->address, bus->address});
      tests::letPass(300);
      bus->daemon.send(SIGSTOP);
      tests::letPass(300);
      bench.awake.follow(tests::scheduleOf({}));
      bench.awake.follow(tests::scheduleOf({tests::dueAlert("size", AlertClass::Open, 101 * kHour)}));
      tests::letPass(300);
      CHECK(bench.longestWait < 1000);
      passed.start();
    }
    CHECK(passed.elapsed() < 3000);
  }
  SECTION("ends") {
    const QByteArray session = qgetenv("DBUS_SESSION_BUS_ADDRESS");
    const auto login = tests::loginThat("ret = dbus.types.UnixFd(os.open('/dev/null', os.O_RDONLY))");
    WaitingBench bench({QString::fromLocal8Bit(session), bus->address});
    CHECK(bench.keptBy(Keeper::Sleep));
    bus.reset();
    tests::letPass(300);
    CHECK(bench.awake.wakefulness().kept == Keepers(Keeper::Sleep));
    CHECK(bench.longestWait < 1000);
  }
}

TEST_CASE("a service that leaves the bus with its word and comes back is asked again") {
  auto saver = tests::screenSaverThat("ret = 1");
  WaitingBench bench;
  REQUIRE(bench.keptBy(Keeper::ScreenSaver));
  saver.reset();
  CHECK(bench.saysItMaySleep());
  saver = tests::screenSaverThat("ret = 2");
  CHECK(bench.keptBy(Keeper::ScreenSaver));
}
