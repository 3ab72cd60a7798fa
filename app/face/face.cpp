#include "app/face/face.h"

#include <QCoreApplication>
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

}  // namespace

double dotsPerMillimetre(const QScreen* screen) {
  if (screen == nullptr || screen->physicalSize().width() <= 0) return kTabletDots;
  const double dots = screen->geometry().width() / screen->physicalSize().width();
  return dots >= kCoarsest && dots <= kFinest ? dots : kTabletDots;
}

Face::Face(viewmodels::Desk& desk, QObject* parent) : QObject(parent), m_desk(desk) {
  viewmodels::registerTypes();
  for (const QString& family : chooseLetters()) {
    m_warnings
        << QCoreApplication::translate("bench", "The letters %1 are not installed: texts may not fit.").arg(family);
  }
  m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
  // The engine owns it.
  m_engine.addImageProvider(QStringLiteral("photographs"), new SmallPictures(desk.workbench()));
  connect(&m_engine, &QQmlApplicationEngine::warnings, this, [this](const QList<QQmlError>& errors) {
    for (const QQmlError& error : errors) m_warnings << error.toString();
  });
}

bool Face::load(double dots) {
  m_engine.setInitialProperties(
      {{QStringLiteral("desk"), QVariant::fromValue(&m_desk)}, {QStringLiteral("dotsPerMm"), dots}});
  m_engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Mountwright/Program/Main.qml")));
  if (m_engine.rootObjects().isEmpty()) return false;
  m_window = qobject_cast<QQuickWindow*>(m_engine.rootObjects().front());
  if (m_window == nullptr) return false;

  m_window->installEventFilter(&m_pedal);
  connect(m_window, &QWindow::focusObjectChanged, this, [this](QObject* object) {
    const auto* item = qobject_cast<QQuickItem*>(object);
    m_pedal.setWriting(item != nullptr && item->flags().testFlag(QQuickItem::ItemAcceptsInputMethod));
  });
  viewmodels::AlertViewModel& alert = m_desk.alert();
  connect(&alert, &viewmodels::AlertViewModel::changed, this, [this, &alert, last = QString()]() mutable {
    m_pedal.setAlertUp(alert.up());
    if (alert.identity() != last && alert.up()) m_pedal.alertAppeared();
    last = alert.identity();
  });
  m_pedal.setAlertUp(alert.up());
  connect(&m_pedal, &pedal::PedalFilter::noticed, this, [this] { call("noticed"); });
  connect(&m_pedal, &pedal::PedalFilter::forward, this, [this] { call("pedalForward"); });
  connect(&m_pedal, &pedal::PedalFilter::back, this, [this] { call("pedalBack"); });
  connect(&m_pedal, &pedal::PedalFilter::done, this, [this] { call("done"); });
  connect(&m_pedal, &pedal::PedalFilter::acknowledge, this, [this] { call("heard"); });
  connect(&m_pedal, &pedal::PedalFilter::pressed, this, &Face::pedalPressed);
  connect(&m_pedal, &pedal::PedalFilter::pressed, &alert, &viewmodels::AlertViewModel::releaseHeld);
  return m_warnings.isEmpty();
}

void Face::open(const QString& screen) { QMetaObject::invokeMethod(m_window, "open", Q_ARG(QString, screen)); }

void Face::call(const char* function) { QMetaObject::invokeMethod(m_window, function); }

}  // namespace app::face
