#include "app/viewmodels/bench/watch_view_model.h"

#include "tests/support/catch.h"
#include "tests/support/fake_clock.h"

using app::viewmodels::WatchViewModel;

TEST_CASE("a clock that stands after 2100 is said to be far ahead, until it is set") {
  tests::FakeClock clock;
  const std::int64_t ahead = std::int64_t{80} * 366 * 86'400'000;
  clock.jump(ahead);
  WatchViewModel watch(clock);
  watch.refresh();
  CHECK(watch.troubles().contains(QLatin1String("clock is far ahead")));
  clock.jump(-ahead);
  watch.refresh();
  CHECK(watch.troubles().isEmpty());
}

TEST_CASE("a clock that stands in 1970 is said not to be trusted, until it is set") {
  tests::FakeClock clock;
  const std::int64_t since1970 = clock.now().utcMilliseconds;
  clock.jump(-since1970 + 60'000);
  WatchViewModel watch(clock);
  watch.refresh();
  // And the time stands beside it.
  CHECK_FALSE(watch.time().isEmpty());
  CHECK(watch.troubles().contains(QLatin1String("clock was never set")));
  clock.jump(since1970);
  watch.refresh();
  CHECK(watch.troubles().isEmpty());
}
