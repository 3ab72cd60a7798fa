// Keeps this machine awake for an alert that is due in an hour, for half a second, and says who gave its word: what a
// test runs where buses hang, to see that neither the work nor the program's end is held up.
#include <QCoreApplication>
#include <QTimer>
#include <iostream>

#include "app/awake/awake.h"

int main(int argc, char* argv[]) {
  QCoreApplication application(argc, argv);
  app::awake::Awake awake([] { return 0; });
  auto schedule = std::make_shared<core::alerts::AlertSchedule>();
  schedule->alerts.emplace_back().dueBoottimeNanoseconds = 3'600'000'000'000;
  awake.follow(schedule);
  QTimer::singleShot(500, &application, [&] {
    const auto& known = awake.wakefulness();
    std::cout << known.kept.toInt() << ' ' << (known.settled ? "settled" : "asking") << std::endl;
    QCoreApplication::quit();
  });
  return QCoreApplication::exec();
}
