#include "app/face/face.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QQmlError>
#include <QQuickItem>
#include <QScreen>

#include "app/face/letters.h"
#include "app/face/small_pictures.h"
#include "app/viewmodels/registration.h"

namespace app::face {
namespace {

// Between a wall-sized panel and the finest telephone; outside of it the screen does not know its own size.
constexpr double kCoarsest = 1.5;
constexpr double kFinest = 30;
constexpr double kTabletDots = 5.9;

constexpr const char* kModules = "import QtQuick; import QtQuick.Window; import QtQuick.Templates; QtObject {}";

}  // namespace

double dotsPerMillimetre(const QScreen* screen) {
  if (screen == nullptr || screen->physicalSize().width() <= 0) return kTabletDots;
  const double dots = screen->geometry().width() / screen->physicalSize().width();
  return dots >= kCoarsest && dots <= kFinest ? dots : kTabletDots;
}

Face::Face(QObject* parent) : QObject(parent), m_main(&m_engine) {
  viewmodels::registerTypes();
  for (const QString& family : chooseLetters()) {
    m_warnings
        << QCoreApplication::translate("bench", "The letters %1 are not installed: texts may not fit.").arg(family);
  }
  m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
  connect(&m_engine, &QQmlEngine::warnings, this, [this](const QList<QQmlError>& errors) {
    for (const QQmlError& error : errors) m_warnings << error.toString();
  });
  // Qt's own modules have to be met in this thread once; the engine's thread would wait for it at each.
  QQmlComponent(&m_engine).setData(kModules, QUrl());
  m_main.loadUrl(QUrl(QStringLiteral("qrc:/qt/qml/Mountwright/Program/Main.qml")), QQmlComponent::Asynchronous);
}

bool Face::load(viewmodels::Desk& desk, double dots) {
  // The engine owns it.
  m_engine.addImageProvider(QStringLiteral("photographs"), new SmallPictures(desk.workbench()));
  if (m_main.isLoading()) {
    QEventLoop wait;
    connect(&m_main, &QQmlComponent::statusChanged, &wait, &QEventLoop::quit);
    wait.exec(QEventLoop::ExcludeUserInputEvents);
  }
  // One that did not read must not be asked to make anything.
  if (m_main.isReady()) {
    m_root.reset(m_main.createWithInitialProperties(
        {{QStringLiteral("desk"), QVariant::fromValue(&desk)}, {QStringLiteral("dotsPerMm"), dots}}));
  }
  for (const QQmlError& error : m_main.errors()) m_warnings << error.toString();
  m_window = qobject_cast<QQuickWindow*>(m_root.get());
  if (m_window == nullptr) return false;

  m_window->installEventFilter(&m_pedal);
  connect(m_window, &QWindow::focusObjectChanged, this, [this](QObject* object) {
    const auto* item = qobject_cast<QQuickItem*>(object);
    m_pedal.setWriting(item != nullptr && item->flags().testFlag(QQuickItem::ItemAcceptsInputMethod));
  });
  connect(&m_pedal, &pedal::PedalFilter::noticed, this, [this] { QMetaObject::invokeMethod(m_window, "noticed"); });
  connect(&m_pedal, &pedal::PedalFilter::forward, this, [this] { ask("Forward"); });
  connect(&m_pedal, &pedal::PedalFilter::back, this, [this] { ask("Back"); });
  connect(&m_pedal, &pedal::PedalFilter::done, this, [this] { ask("Enter"); });
  connect(&m_pedal, &pedal::PedalFilter::acknowledge, this, [this] { ask("Heard"); });
  connect(&m_pedal, &pedal::PedalFilter::pressed, this, &Face::pedalPressed);
  follow(desk.alert());
  return m_warnings.isEmpty();
}

void Face::follow(viewmodels::AlertViewModel& alert) {
  connect(&alert, &viewmodels::AlertViewModel::changed, this, [this, &alert, last = QString()]() mutable {
    m_pedal.setAlertUp(alert.up());
    if (alert.identity() != last && alert.up()) m_pedal.alertAppeared();
    last = alert.identity();
  });
  m_pedal.setAlertUp(alert.up());
  connect(&m_pedal, &pedal::PedalFilter::pressed, &alert, &viewmodels::AlertViewModel::releaseHeld);
}

void Face::close() {
  m_window = nullptr;
  m_root.reset();
}

void Face::open(const QString& screen) { QMetaObject::invokeMethod(m_window, "open", Q_ARG(QString, screen)); }

void Face::ask(const char* by) { QMetaObject::invokeMethod(m_window, "asked", Q_ARG(QString, QLatin1String(by))); }

}  // namespace app::face
