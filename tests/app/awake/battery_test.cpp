#include "app/awake/battery.h"

#include "tests/support/catch.h"
#include "tests/support/folders.h"

using app::awake::batteryRunningDown;

namespace {

struct Tree {
  tests::Folders files;
  void battery(const QString& name, const QByteArray& status, const QByteArray& capacity) const {
    REQUIRE(files.write(name + "/type", "Battery\n"));
    REQUIRE(files.write(name + "/status", status));
    REQUIRE(files.write(name + "/capacity", capacity));
  }
  void mains(const QByteArray& online) const {
    REQUIRE(files.write("AC/type", "Mains\n"));
    REQUIRE(files.write("AC/online", online));
  }
  std::optional<int> percent() const { return batteryRunningDown(files.path()); }
};

}  // namespace

TEST_CASE("a machine without batteries, or without such a folder, runs none down") {
  Tree tree;
  CHECK_FALSE(tree.percent());
  tree.mains("1\n");
  CHECK_FALSE(tree.percent());
  CHECK_FALSE(batteryRunningDown(tree.files.path("nowhere")));
}

TEST_CASE("an emptying battery says its charge, one that fills or is full does not count") {
  Tree tree;
  tree.battery("BAT0", "Discharging\n", "14\n");
  CHECK(tree.percent() == 14);
  for (const char* status : {"Charging\n", "Full\n", "Not charging\n"}) {
    tree.battery("BAT0", status, "14\n");
    CHECK_FALSE(tree.percent());
  }
}

TEST_CASE("a charger too weak for the machine does not hide that its battery empties") {
  Tree tree;
  tree.mains("1\n");
  tree.battery("BAT0", "Discharging\n", "9\n");
  CHECK(tree.percent() == 9);
}

TEST_CASE("a battery that does not say whether it fills or empties empties where nothing feeds it") {
  Tree tree;
  tree.battery("BAT0", "Unknown\n", "30\n");
  tree.mains("0\n");
  CHECK(tree.percent() == 30);
  tree.mains("1\n");
  CHECK_FALSE(tree.percent());
  tree.battery("BAT0", "", "30\n");
  CHECK_FALSE(tree.percent());
  tree.mains("nonsense");
  CHECK(tree.percent() == 30);
}

TEST_CASE("several batteries count with their mean, those of a pen or that are not fitted not at all") {
  Tree tree;
  tree.battery("BAT0", "Discharging\n", "10\n");
  tree.battery("BAT1", "Unknown\n", "31\n");
  CHECK(tree.percent() == 20);
  tree.battery("pen", "Discharging\n", "99\n");
  REQUIRE(tree.files.write("pen/scope", "Device\n"));
  tree.battery("BAT2", "Unknown\n", "0\n");
  REQUIRE(tree.files.write("BAT2/present", "0\n"));
  CHECK(tree.percent() == 20);
}

TEST_CASE("a charge that is no per cent is not believed") {
  Tree tree;
  for (const char* bad : {"", "full", "-1", "101", "4 2", "1e1", "99999999999999999999"}) {
    tree.battery("BAT0", "Discharging\n", bad);
    INFO(bad);
    CHECK_FALSE(tree.percent());
  }
  REQUIRE(tree.files.remove("BAT0/capacity"));
  REQUIRE(tree.files.write("BAT0/capacity/file", "50"));
  CHECK_FALSE(tree.percent());
  tree.battery("BAT1", "Discharging\n", "100");
  CHECK(tree.percent() == 100);
}
