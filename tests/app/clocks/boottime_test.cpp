// A machine that slept has a boot-time clock ahead of its steady one. A time namespace moves it so, with no sleep.
#include <array>
#include <sstream>
#include <string>

#include "tests/support/catch.h"
#include "tests/support/child_process.h"

namespace {

constexpr std::int64_t kSecond = 1'000'000'000;

struct Clocks {
  std::int64_t boottime = 0;
  std::int64_t steady = 0;
  std::int64_t wall = 0;
  std::string bootId;
};

Clocks saidBy(const std::vector<std::string>& command) {
  tests::ChildProcess child(command, tests::ChildProcess::Pipe::FromChild);
  std::string said;
  std::array<char, 256> part{};
  for (ssize_t got = 0; (got = read(child.pipe(), part.data(), part.size())) > 0;) {
    said.append(part.data(), static_cast<std::size_t>(got));
  }
  REQUIRE(child.exitStatus() == 0);
  Clocks clocks;
  std::istringstream(said) >> clocks.boottime >> clocks.steady >> clocks.wall >> clocks.bootId;
  REQUIRE_FALSE(clocks.bootId.empty());
  return clocks;
}

}  // namespace

TEST_CASE("the machine's clock counts sleep: it follows boot time alone, and the boot stays the same") {
  const Clocks awake = saidBy({SAY_CLOCKS});
  const Clocks slept = saidBy({"unshare", "--time", "--boottime", "36000", "--", SAY_CLOCKS});
  const std::int64_t sleep = 36'000 * kSecond;
  const auto passed = slept.steady - awake.steady;
  CHECK(passed >= 0);
  CHECK(passed < 30 * kSecond);
  CHECK(std::llabs(slept.boottime - awake.boottime - sleep - passed) < kSecond / 10);
  CHECK(std::llabs(slept.wall - awake.wall - passed) < kSecond);
  CHECK(slept.bootId == awake.bootId);
}
