#include "app/alerts/alerts.h"

#include <QThread>
#include <atomic>
#include <utility>

#include "app/alerts/alert_loop.h"
#include "app/alerts/sound_out.h"
#include "app/sound/player.h"

namespace app::alerts {
namespace {

constexpr int kSampleRate = 48'000;
constexpr int kStopMilliseconds = 3000;

}  // namespace

struct Alerts::Private {
  explicit Private(std::function<std::int64_t()> boottimeNow)
      : out(new SoundOut(player)), loop(new AlertLoop(std::move(boottimeNow), player, *out)) {}

  sound::Player player{kSampleRate};
  QThread alertThread;
  QThread soundThread;
  SoundOut* out;  // each lives in its thread and is deleted there
  AlertLoop* loop;
  std::atomic<Sound> sound = Sound::Starting;
};

Alerts::Alerts(std::function<std::int64_t()> boottimeNow, QObject* parent)
    : QObject(parent), d(std::make_unique<Private>(std::move(boottimeNow))) {
  d->alertThread.setObjectName("alerts");
  d->soundThread.setObjectName("sound");
  d->out->moveToThread(&d->soundThread);
  d->loop->moveToThread(&d->alertThread);
  connect(&d->soundThread, &QThread::finished, d->out, &QObject::deleteLater);
  connect(&d->alertThread, &QThread::finished, d->loop, &QObject::deleteLater);
  connect(&d->soundThread, &QThread::started, d->out, &SoundOut::start);
  connect(&d->alertThread, &QThread::started, d->loop, &AlertLoop::start);
  connect(d->out, &SoundOut::soundChanged, d->loop, &AlertLoop::takeSound);
  connect(d->loop, &AlertLoop::dueChanged, this, &Alerts::dueChanged, Qt::QueuedConnection);
  connect(d->loop, &AlertLoop::soundChanged, this, &Alerts::soundChanged, Qt::QueuedConnection);
  Private* state = d.get();
  connect(
      d->loop, &AlertLoop::soundChanged, d->loop, [state](Sound sound) { state->sound = sound; }, Qt::DirectConnection);
  d->alertThread.start(QThread::TimeCriticalPriority);
  d->soundThread.start(QThread::TimeCriticalPriority);
}

Alerts::~Alerts() {
  d->alertThread.quit();
  d->alertThread.wait();
  d->out->requestStop();
  d->soundThread.quit();
  // A sound server that hangs can hold the thread for ever: better left to the end of the process than waited for.
  if (!d->soundThread.wait(kStopMilliseconds)) static_cast<void>(d.release());
}

void Alerts::publish(std::shared_ptr<const core::record::AlertSchedule> schedule) {
  QMetaObject::invokeMethod(
      d->loop, [loop = d->loop, schedule = std::move(schedule)] { loop->publish(schedule); }, Qt::QueuedConnection);
}

void Alerts::releaseHeld() {
  QMetaObject::invokeMethod(
      d->loop, [loop = d->loop] { loop->releaseHeld(); }, Qt::QueuedConnection);
}

Alerts::Sound Alerts::sound() const { return d->sound; }

}  // namespace app::alerts
