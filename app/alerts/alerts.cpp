#include "app/alerts/alerts.h"

#include <QThread>
#include <atomic>
#include <utility>

#include "app/alerts/alert_loop.h"

namespace app::alerts {

struct Alerts::Private {
  explicit Private(std::function<std::int64_t()> boottimeNow)
      : loop(new AlertLoop(std::move(boottimeNow), SoundProcess::besideTheProgram())) {}

  QThread alertThread;
  AlertLoop* loop;  // lives in its thread and is deleted there
  std::atomic<Sound> sound = Sound::Starting;
  std::atomic<std::chrono::steady_clock::time_point> beat = std::chrono::steady_clock::now();
};

Alerts::Alerts(std::function<std::int64_t()> boottimeNow, QObject* parent)
    : QObject(parent), d(std::make_unique<Private>(std::move(boottimeNow))) {
  d->alertThread.setObjectName("alerts");
  d->loop->moveToThread(&d->alertThread);
  connect(&d->alertThread, &QThread::finished, d->loop, &QObject::deleteLater);
  connect(&d->alertThread, &QThread::started, d->loop, &AlertLoop::start);
  connect(d->loop, &AlertLoop::dueChanged, this, &Alerts::dueChanged, Qt::QueuedConnection);
  connect(d->loop, &AlertLoop::soundChanged, this, &Alerts::soundChanged, Qt::QueuedConnection);
  connect(d->loop, &AlertLoop::beat, this, &Alerts::beat, Qt::QueuedConnection);
  Private* state = d.get();
  connect(
      d->loop, &AlertLoop::soundChanged, d->loop, [state](Sound sound) { state->sound = sound; }, Qt::DirectConnection);
  connect(
      d->loop, &AlertLoop::beat, d->loop, [state] { state->beat = std::chrono::steady_clock::now(); },
      Qt::DirectConnection);
  d->alertThread.start(QThread::TimeCriticalPriority);
}

Alerts::~Alerts() {
  d->alertThread.quit();
  d->alertThread.wait();
}

void Alerts::publish(std::shared_ptr<const core::alerts::AlertSchedule> schedule) {
  QMetaObject::invokeMethod(
      d->loop, [loop = d->loop, schedule = std::move(schedule)] { loop->publish(schedule); }, Qt::QueuedConnection);
}

void Alerts::releaseHeld() {
  QMetaObject::invokeMethod(
      d->loop, [loop = d->loop] { loop->releaseHeld(); }, Qt::QueuedConnection);
}

void Alerts::tryOut() {
  QMetaObject::invokeMethod(
      d->loop, [loop = d->loop] { loop->tryOut(); }, Qt::QueuedConnection);
}

Alerts::Sound Alerts::sound() const { return d->sound; }

std::chrono::milliseconds Alerts::sinceBeat() const {
  return std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now() - d->beat.load());
}

}  // namespace app::alerts
