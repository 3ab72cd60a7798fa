#include "app/pedal/pedal_filter.h"

#include <QKeyEvent>
#include <QTouchEvent>

namespace app::pedal {
namespace {

std::optional<Pedal> pedalOf(int key) {
  switch (key) {
    case Qt::Key_PageDown:
    case Qt::Key_Right:
    case Qt::Key_Down:
    case Qt::Key_Space: return Pedal::Forward;
    case Qt::Key_PageUp:
    case Qt::Key_Left:
    case Qt::Key_Up:
    case Qt::Key_Backspace: return Pedal::Back;
    case Qt::Key_Return:
    case Qt::Key_Enter: return Pedal::Enter;
    default: return std::nullopt;
  }
}

}  // namespace

PedalFilter::PedalFilter(QObject* parent) : QObject(parent) {
  m_clock.start();
  m_hold.setSingleShot(true);
  m_hold.setInterval(static_cast<int>(kLongPress));
  m_hold.setTimerType(Qt::PreciseTimer);
  connect(&m_hold, &QTimer::timeout, this, [this] { tell(m_keys.held(m_clock.elapsed()), Pedal::Forward); });
}

void PedalFilter::alertAppeared() { m_keys.alertAppeared(m_clock.elapsed()); }

void PedalFilter::setAlertUp(bool up) {
  if (up == m_alertUp) return;
  m_alertUp = up;
  if (up) {
    alertAppeared();
  } else {
    m_keys.alertWent();
  }
}

bool PedalFilter::eventFilter(QObject* watched, QEvent* event) {
  switch (event->type()) {
    case QEvent::KeyPress:
    case QEvent::KeyRelease: break;
    case QEvent::MouseButtonPress:
    case QEvent::TouchBegin: emit noticed(); return QObject::eventFilter(watched, event);
    case QEvent::TouchUpdate: return static_cast<const QTouchEvent&>(*event).points().size() >= kPalmContacts;
    default: return QObject::eventFilter(watched, event);
  }
  if (m_writing && !m_alertUp) return QObject::eventFilter(watched, event);
  const auto& key = static_cast<const QKeyEvent&>(*event);
  const auto pedal = pedalOf(key.key());
  if (!pedal) return QObject::eventFilter(watched, event);
  // A held key repeats; the foot did not.
  if (key.isAutoRepeat()) return true;
  if (event->type() == QEvent::KeyPress) {
    m_keys.pressed(*pedal, m_clock.elapsed());
    m_hold.start();
    emit noticed();
    emit pressed();
  } else {
    tell(m_keys.released(*pedal, m_clock.elapsed()), *pedal);
  }
  return true;
}

void PedalFilter::tell(std::optional<PedalAct> act, Pedal pedal) {
  if (!act) return;
  switch (*act) {
    case PedalAct::Forward: pedal == Pedal::Enter ? emit done() : emit forward(); return;
    case PedalAct::Back: emit back(); return;
    case PedalAct::Heard: emit acknowledge(); return;
  }
}

}  // namespace app::pedal
