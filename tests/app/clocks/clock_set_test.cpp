// Sets this machine's wall clock, to what it shows: by microseconds, which the kernel tells of like any other setting.
// Fails where that is not allowed.
#include <sys/timex.h>
#include <time.h>

#include <QCoreApplication>
#include <QElapsedTimer>
#include <cerrno>
#include <cstring>
#include <iostream>

#include "app/clocks/clock_watch.h"
#include "tests/support/event_loop.h"

namespace {

// A shift of nothing asks whether one would be allowed.
bool maySet() {
  timex nothing{};
  nothing.modes = ADJ_SETOFFSET;
  return adjtimex(&nothing) >= 0;
}

bool setClock() {
  timespec now{};
  return clock_gettime(CLOCK_REALTIME, &now) == 0 && clock_settime(CLOCK_REALTIME, &now) == 0;
}

}  // namespace

int main(int argc, char* argv[]) {
  const QCoreApplication application(argc, argv);
  if (!maySet()) {
    std::cout << "the wall clock may not be set here: " << std::strerror(errno) << '\n';
    return 1;
  }
  app::clocks::ClockWatch watch;
  int jumps = 0;
  QObject::connect(&watch, &app::clocks::ClockWatch::jumped, &watch, [&] { ++jumps; });
  tests::letPass(100);
  const int before = jumps;
  for (int time = 1; time <= 3; ++time) {
    QElapsedTimer passed;
    passed.start();
    if (!setClock()) {
      std::cout << "the wall clock could not be set: " << std::strerror(errno) << '\n';
      return 1;
    }
    if (!tests::becomesSo([&] { return jumps == before + time; }, 1000)) {
      std::cout << "setting " << time << " was not told of: " << jumps - before << " told\n";
      return 1;
    }
    std::cout << "told of after " << double(passed.nsecsElapsed()) / 1e6 << " ms\n";
    tests::letPass(50);
  }
  if (before == 0 && jumps == 3) return 0;
  std::cout << before << " jumps told before the clock was set, " << jumps << " in all\n";
  return 1;
}
