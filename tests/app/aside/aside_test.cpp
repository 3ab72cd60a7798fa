#include "app/aside/aside.h"

#include <QThread>
#include <atomic>
#include <memory>
#include <semaphore>

#include "tests/support/catch.h"
#include "tests/support/event_loop.h"

using app::aside::aside;

TEST_CASE("work is done in another thread and told in the receiver's") {
  QObject receiver;
  QThread* worked = nullptr;
  QThread* told = nullptr;
  aside(&receiver, [&] {
    worked = QThread::currentThread();
    return [&] { told = QThread::currentThread(); };
  });
  REQUIRE(tests::becomesSo([&] { return told != nullptr; }));
  CHECK(told == QThread::currentThread());
  CHECK(worked != told);
}

TEST_CASE("work that is not done yet holds up neither its receiver's thread nor its receiver's end") {
  const auto gate = std::make_shared<std::binary_semaphore>(0);
  const auto worked = std::make_shared<std::atomic<bool>>(false);
  const auto told = std::make_shared<std::atomic<bool>>(false);
  QElapsedTimer passed;
  passed.start();
  {
    QObject receiver;
    aside(&receiver, [gate, worked, told] {
      gate->acquire();
      *worked = true;
      return [told] { *told = true; };
    });
    tests::letPass(50);
  }
  CHECK(passed.elapsed() < 2000);
  gate->release();
  REQUIRE(tests::becomesSo([&] { return worked->load(); }));
  tests::letPass(50);
  CHECK_FALSE(told->load());
}

TEST_CASE("a receiver that goes with an answer in its post is not told") {
  const auto told = std::make_shared<std::atomic<int>>(0);
  for (int i = 0; i < 200; ++i) {
    auto receiver = std::make_unique<QObject>();
    aside(receiver.get(), [told] { return [told] { ++*told; }; });
    if (i % 2 == 0) QThread::usleep(200);
  }
  tests::letPass(100);
  CHECK(told->load() == 0);
}
