#include "app/aside/aside.h"

#include <memory>
#include <mutex>
#include <thread>

namespace app::aside {
namespace {

struct Address {
  std::mutex lock;
  QObject* receiver = nullptr;
  QMetaObject::Connection ending;
};

}  // namespace

void aside(QObject* receiver, std::function<Told()> work) {
  auto address = std::make_shared<Address>();
  address->receiver = receiver;
  // Heard in the receiver's thread, before the receiver drops what was posted to it.
  address->ending = QObject::connect(
      receiver, &QObject::destroyed, receiver,
      [address] {
        const std::lock_guard guard(address->lock);
        address->receiver = nullptr;
      },
      Qt::DirectConnection);
  std::thread([address, work = std::move(work)] {
    Told told = work();
    const std::lock_guard guard(address->lock);
    if (address->receiver == nullptr) return;
    QMetaObject::invokeMethod(
        address->receiver,
        [address, told = std::move(told)] {
          QObject::disconnect(address->ending);
          told();
        },
        Qt::QueuedConnection);
  }).detach();
}

}  // namespace app::aside
