#pragma once
// Runs the thread's event loop until a condition is true, or for a while.
#include <QCoreApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QTimer>

namespace tests {

template <typename Condition>
bool becomesSo(Condition condition, int milliseconds = 5000) {
  QElapsedTimer passed;
  passed.start();
  while (!condition()) {
    if (passed.elapsed() > milliseconds) return false;
    QEventLoop loop;
    QTimer::singleShot(5, &loop, &QEventLoop::quit);
    loop.exec();
  }
  return true;
}

inline void letPass(int milliseconds) {
  QEventLoop loop;
  QTimer::singleShot(milliseconds, &loop, &QEventLoop::quit);
  loop.exec();
}

}  // namespace tests
