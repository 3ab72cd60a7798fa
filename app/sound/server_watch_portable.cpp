// Where no server can be asked: looks at the multimedia library's devices now and then. Volume stays unknown.
#include <QAudioDevice>
#include <QMediaDevices>
#include <QTimer>
#include <optional>

#include "app/sound/server_watch.h"

namespace app::sound {
namespace {

constexpr int kLookMilliseconds = 1000;

}  // namespace

struct ServerWatch::Private {
  QTimer timer;
  std::optional<Outlet> last;
};

ServerWatch::ServerWatch(QObject* parent) : QObject(parent), d(std::make_unique<Private>()) {
  d->timer.setInterval(kLookMilliseconds);
  connect(&d->timer, &QTimer::timeout, this, [this] {
    const Outlet now{QMediaDevices::defaultAudioOutput().id(), false};
    if (d->last == now) return;
    d->last = now;
    emit changed(now);
  });
}

ServerWatch::~ServerWatch() = default;

void ServerWatch::start() { d->timer.start(); }

void ServerWatch::ask() { emit answered(); }

}  // namespace app::sound
