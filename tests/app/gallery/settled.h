#pragma once
// A window's picture once its texts have found their places: on a busy machine the first frame alone takes longer
// than any fixed wait.
#include <QImage>
#include <QQuickWindow>
#include <QTest>

namespace tests {

inline QImage settledPicture(QQuickWindow& window) {
  constexpr int kMostFrames = 50;
  QTest::qWait(60);
  QImage last = window.grabWindow();
  for (int i = 0; i < kMostFrames; ++i) {
    QTest::qWait(20);
    QImage next = window.grabWindow();
    if (next == last) return next;
    last = std::move(next);
  }
  return last;
}

}  // namespace tests
