#include <QDBusObjectPath>
#include <QDBusUnixFileDescriptor>
#include <QVariantMap>
#include <array>

#include "app/awake/bus_line.h"
#include "app/awake/promise.h"
#include "app/awake/sleep_control.h"

namespace app::awake {
namespace {

// Names and forms of the services are those of their published interfaces.
const QString kLogin = QStringLiteral("org.freedesktop.login1");
const QString kLoginPath = QStringLiteral("/org/freedesktop/login1");
const QString kLoginManager = QStringLiteral("org.freedesktop.login1.Manager");
const QString kScreenSaver = QStringLiteral("org.freedesktop.ScreenSaver");
const QString kScreenSaverPath = QStringLiteral("/org/freedesktop/ScreenSaver");
const QString kPortal = QStringLiteral("org.freedesktop.portal.Desktop");
const QString kPortalPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString kPortalInhibit = QStringLiteral("org.freedesktop.portal.Inhibit");
const QString kPortalRequest = QStringLiteral("org.freedesktop.portal.Request");
const QString kInhibit = QStringLiteral("Inhibit");
constexpr uint kSuspendAndIdle = 4U | 8U;

// The bus's own word that a service came or went.
BusLine::Signal ownerOf(const QString& service) {
  const QString bus = QStringLiteral("org.freedesktop.DBus");
  return {QStringLiteral("/org/freedesktop/DBus"), bus, QStringLiteral("NameOwnerChanged"), {service}};
}

// Who asks, and why, where a system shows that to its user.
QString who() { return QStringLiteral("Mountwright"); }
QString why() { return SleepControl::tr("A wait on the bench is running"); }
QString whyDelayed() { return SleepControl::tr("The bench writes down the time"); }

QDBusMessage askLogin(const QString& what, const QString& reason, const QString& mode) {
  return QDBusMessage::createMethodCall(kLogin, kLoginPath, kLoginManager, kInhibit) << what << who() << reason << mode;
}

// The word holds as long as the file is open.
Promise::LetGo takeFile(const QDBusConnection&, const QDBusMessage& answer) {
  const auto file = answer.arguments().value(0).value<QDBusUnixFileDescriptor>();
  if (!file.isValid()) return {};
  return [file] {};
}

QDBusMessage askScreenSaver() {
  return QDBusMessage::createMethodCall(kScreenSaver, kScreenSaverPath, kScreenSaver, kInhibit) << who() << why();
}

Promise::LetGo takeCookie(const QDBusConnection& connection, const QDBusMessage& answer) {
  const QVariant cookie = answer.arguments().value(0);
  if (cookie.typeId() != QMetaType::UInt) return {};
  return [connection, cookie] {
    connection.send(
        QDBusMessage::createMethodCall(kScreenSaver, kScreenSaverPath, kScreenSaver, QStringLiteral("UnInhibit"))
        << cookie);
  };
}

QDBusMessage askPortal() {
  return QDBusMessage::createMethodCall(kPortal, kPortalPath, kPortalInhibit, kInhibit)
         << QString() << kSuspendAndIdle << QVariantMap{{QStringLiteral("reason"), why()}};
}

}  // namespace

struct SleepControl::Private {
  Private(SleepControl& sleepControl, const Buses& buses);

  void hearSystem(const QDBusMessage& signal);
  void hearSession(const QDBusMessage& signal);
  void idleInstead();

  SleepControl& control;
  bool wanted = false;
  QString portalRequest;  // what the portal answers under, later
  BusLine system;
  BusLine session;
  Promise sleep{askLogin(QStringLiteral("sleep:idle"), why(), QStringLiteral("block")), takeFile};
  // Outside a session sleep may not be blocked; idling mostly still may.
  Promise idle{askLogin(QStringLiteral("idle"), why(), QStringLiteral("block")), takeFile};
  // Held at all times: the machine then waits a little with sleeping, and the time can be written down.
  Promise delay{askLogin(QStringLiteral("sleep"), whyDelayed(), QStringLiteral("delay")), takeFile};
  Promise screenSaver{askScreenSaver(), takeCookie};
  Promise portal;

  std::array<Promise*, 3> ofSystem{&sleep, &idle, &delay};
  std::array<Promise*, 2> ofSession{&screenSaver, &portal};
};

SleepControl::Private::Private(SleepControl& sleepControl, const Buses& buses)
    : control(sleepControl),
      system(buses.system, {{kLoginPath, kLoginManager, QStringLiteral("PrepareForSleep")}}),
      session(buses.session,
              {{QString(), kPortalRequest, QStringLiteral("Response")}, ownerOf(kScreenSaver), ownerOf(kPortal)}),
      portal(askPortal(), [this](const QDBusConnection& connection, const QDBusMessage& answer) -> Promise::LetGo {
        portalRequest = answer.arguments().value(0).value<QDBusObjectPath>().path();
        if (portalRequest.isEmpty()) return {};
        return [connection, path = portalRequest] {
          connection.send(QDBusMessage::createMethodCall(kPortal, path, kPortalRequest, QStringLiteral("Close")));
        };
      }) {
  connect(&system, &BusLine::changed, &control, [this] {
    for (Promise* each : ofSystem) each->connectTo(system.connection());
    emit control.changed();
  });
  connect(&session, &BusLine::changed, &control, [this] {
    for (Promise* each : ofSession) each->connectTo(session.connection());
    emit control.changed();
  });
  connect(&system, &BusLine::heard, &control, [this](const QDBusMessage& signal) { hearSystem(signal); });
  connect(&session, &BusLine::heard, &control, [this](const QDBusMessage& signal) { hearSession(signal); });
  connect(&sleep, &Promise::changed, &control, [this] { idleInstead(); });
  for (const Promise* each : {&sleep, &idle, &screenSaver, &portal}) {
    connect(each, &Promise::changed, &control, &SleepControl::changed);
  }
  delay.want(true);
  system.open();
}

void SleepControl::Private::idleInstead() { idle.want(wanted && sleep.refused()); }

void SleepControl::Private::hearSystem(const QDBusMessage& signal) {
  const QVariant about = signal.arguments().value(0);
  if (about.typeId() != QMetaType::Bool) return;
  if (about.toBool()) {
    emit control.sleeping();
    delay.want(false);
  } else {
    delay.want(true);
    emit control.woke();
  }
}

void SleepControl::Private::hearSession(const QDBusMessage& signal) {
  const QVariant first = signal.arguments().value(0);
  if (signal.member() == QLatin1String("Response")) {
    const bool granted = first.toUInt() == 0;
    if (!granted && portal.held() && signal.path() == portalRequest) portal.broken();
    return;
  }
  // A service that went has forgotten its word; the login manager's holds as long as the file is open.
  Promise& promise = first.toString() == kPortal ? portal : screenSaver;
  if (promise.held()) promise.broken();
}

SleepControl::SleepControl(const Buses& buses, QObject* parent)
    : QObject(parent), d(std::make_unique<Private>(*this, buses)) {}

SleepControl::~SleepControl() = default;

void SleepControl::hold(bool wanted) {
  if (d->wanted == wanted) return;
  d->wanted = wanted;
  for (Promise* each : {&d->sleep, &d->screenSaver, &d->portal}) each->want(wanted);
  d->idleInstead();
  if (wanted) {
    d->system.open();
    d->session.open();
  }
  emit changed();
}

void SleepControl::tryAgain() {
  d->system.open();
  if (d->wanted) d->session.open();
  for (Promise* each : d->ofSystem) each->tryAgain();
  for (Promise* each : d->ofSession) each->tryAgain();
}

Keepers SleepControl::kept() const {
  Keepers keepers;
  keepers.setFlag(Keeper::Sleep, d->sleep.held());
  keepers.setFlag(Keeper::Idle, d->idle.held());
  keepers.setFlag(Keeper::ScreenSaver, d->screenSaver.held());
  keepers.setFlag(Keeper::Portal, d->portal.held());
  return keepers;
}

bool SleepControl::asking() const {
  if (!d->wanted) return false;
  return d->system.opening() || d->session.opening() || d->sleep.asking() || d->idle.asking() ||
         d->screenSaver.asking() || d->portal.asking();
}

}  // namespace app::awake
