#pragma once
// The window: loads the screens over a desk and lets pedal and screens find each other.
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QStringList>

#include "app/pedal/pedal_filter.h"
#include "app/viewmodels/desk.h"

namespace app::face {

// Dots to the mm of a screen as it reports itself; the usual density of a ten-inch tablet where it reports nonsense.
double dotsPerMillimetre(const QScreen* screen);

class Face : public QObject {
  Q_OBJECT

 public:
  explicit Face(viewmodels::Desk& desk, QObject* parent = nullptr);

  // Whether the screens loaded without a word from the QML engine.
  bool load(double dotsPerMillimetre);
  QQuickWindow* window() const { return m_window; }
  // To the screen of that name, one of qml/Screens.qml.
  void open(const QString& screen);
  const QStringList& warnings() const { return m_warnings; }

 signals:
  void pedalPressed();

 private:
  void call(const char* function);

  viewmodels::Desk& m_desk;
  pedal::PedalFilter m_pedal;
  QQmlApplicationEngine m_engine;
  QQuickWindow* m_window = nullptr;
  QStringList m_warnings;
};

}  // namespace app::face
