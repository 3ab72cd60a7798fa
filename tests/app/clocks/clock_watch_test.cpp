#include "app/clocks/clock_watch.h"

#include <QThread>
#include <cstdio>

#include "app/clocks/clock_compare.h"
#include "tests/support/catch.h"
#include "tests/support/event_loop.h"
#include "tests/support/folders.h"

using app::clocks::ClockCompare;
using app::clocks::ClockWatch;
using app::clocks::ZoneWatch;
using namespace std::chrono_literals;

namespace {

// Where a zone is set: a link into a folder of zones, and a file with its name.
struct Zones {
  tests::Folders files;
  QString link = files.path("etc/localtime");
  QString name = files.path("etc/timezone");

  Zones() {
    REQUIRE(files.write("zones/A", "rules of A"));
    REQUIRE(files.write("zones/B", "rules of B"));
    REQUIRE(files.write("zones/C", "rules of A"));
    REQUIRE(files.write("etc/timezone", "A\n"));
    pointTo("A");
  }
  void pointTo(const char* zone) {
    QFile::remove(link);
    REQUIRE(QFile::link(files.path("zones/") + zone, link));
  }
};

struct Watched {
  explicit Watched(const Zones& zones) : watch(nullptr, {zones.link, zones.name}) {
    QObject::connect(&watch, &ClockWatch::zoneChanged, &watch, [this] { ++changes; });
    QObject::connect(&watch, &ClockWatch::jumped, &watch, [this] { ++jumps; });
  }
  bool told(int times) {
    const bool reached = tests::becomesSo([&] { return changes >= times; });
    tests::letPass(250);  // whatever else there is to tell is told by then
    return reached && changes == times;
  }
  ClockWatch watch;
  int changes = 0;
  int jumps = 0;
};

}  // namespace

TEST_CASE("a link that is put in another's place changes the zone, each time anew") {
  Zones zones;
  Watched watched(zones);
  zones.pointTo("B");
  CHECK(watched.told(1));
  zones.pointTo("A");
  CHECK(watched.told(2));
  zones.pointTo("C");  // another name for the same rules is another zone
  CHECK(watched.told(3));
}

TEST_CASE("a link that is renamed over the other changes the zone") {
  Zones zones;
  Watched watched(zones);
  for (int i = 0; i < 3; ++i) {
    const QString fresh = zones.link + ".new";
    REQUIRE(QFile::link(zones.files.path(i % 2 == 0 ? "zones/B" : "zones/A"), fresh));
    REQUIRE(std::rename(fresh.toLocal8Bit().constData(), zones.link.toLocal8Bit().constData()) == 0);
    CHECK(watched.told(i + 1));
  }
}

TEST_CASE("a name that is written anew changes the zone, in its place or in another file's") {
  Zones zones;
  Watched watched(zones);
  QFile file(zones.name);
  REQUIRE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
  file.write("B\n");
  file.close();
  CHECK(watched.told(1));
  REQUIRE(zones.files.write("etc/timezone", "C\n"));
  CHECK(watched.told(2));
  REQUIRE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
  file.write("A\n");
  file.close();
  CHECK(watched.told(3));
}

TEST_CASE("renewed rules of the same zone change what the clock shows, and are told") {
  Zones zones;
  Watched watched(zones);
  QFile file(zones.files.path("zones/A"));
  REQUIRE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
  file.write("other rules of A");
  file.close();
  CHECK(watched.told(1));
}

TEST_CASE("what changes nothing about the zone is not told") {
  Zones zones;
  Watched watched(zones);
  REQUIRE(zones.files.write("etc/other", "something"));
  zones.pointTo("A");
  REQUIRE(zones.files.write("etc/timezone", "A\n"));
  CHECK(watched.told(0));
}

TEST_CASE("zone files that are not there are waited for") {
  Zones zones;
  REQUIRE(QFile::remove(zones.link));
  REQUIRE(QFile::remove(zones.name));
  Watched watched(zones);
  zones.pointTo("B");
  CHECK(watched.told(1));
}

TEST_CASE("a wall clock that keeps step, or is steered, has not jumped") {
  Watched watched{Zones()};
  ClockCompare::Times times{1000s, 10s};
  ClockCompare compare(
      nullptr,
      [&] {
        times.wall += 5s + 3ms;  // more than a time server steers in five seconds
        times.machine += 5s;
        return times;
      },
      5ms);
  int jumps = 0;
  QObject::connect(&compare, &ClockCompare::jumped, &compare, [&] { ++jumps; });
  tests::letPass(300);
  CHECK(times.machine > 50s);
  CHECK(jumps == 0);
  CHECK(watched.jumps == 0);
}

TEST_CASE("a wall clock that leaves the machine's clock has jumped once, forwards or back") {
  for (const auto step : {3600s, -3600s, 1s, -1s}) {
    ClockCompare::Times times{100'000s, 10s};
    ClockCompare compare(
        nullptr, [&] { return times; }, 5ms);
    int jumps = 0;
    QObject::connect(&compare, &ClockCompare::jumped, &compare, [&] { ++jumps; });
    tests::letPass(50);
    CHECK(jumps == 0);
    times.wall += step;
    tests::letPass(100);
    CHECK(jumps == 1);
  }
}

TEST_CASE("the machine's own clocks, compared, have not jumped while nobody sets them") {
  const auto first = ClockCompare::machineTimes();
  QThread::msleep(50);
  const auto second = ClockCompare::machineTimes();
  const auto apart = (second.wall - first.wall) - (second.machine - first.machine);
  CHECK(std::chrono::abs(apart) < 20ms);
}
