#pragma once
// The window: loads the screens over a desk and lets pedal and screens find each other.
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickWindow>
#include <QStringList>
#include <memory>

#include "app/pedal/pedal_filter.h"
#include "app/viewmodels/desk.h"

namespace app::face {

// Dots to the mm of a screen as it reports itself; the usual density of a ten-inch tablet where it reports nonsense.
double dotsPerMillimetre(const QScreen* screen);

class Face : public QObject {
  Q_OBJECT

 public:
  // Begins to read the screens, beside this thread: whoever opens a record meanwhile need not wait for them.
  explicit Face(QObject* parent = nullptr);

  // Makes the window over a desk, which must outlive the window. Returns whether the QML engine gave no warning.
  bool load(viewmodels::Desk& desk, double dotsPerMillimetre);
  // Takes the window away.
  void close();
  QQuickWindow* window() const { return m_window; }
  // Changes to the screen of that name, one of qml/Screens.qml.
  void open(const QString& screen);
  const QStringList& warnings() const { return m_warnings; }

 signals:
  void pedalPressed();

 private:
  // Asks the window for the action that ScreenAction.By names so.
  void ask(const char* by);

  void follow(viewmodels::AlertViewModel& alert);

  pedal::PedalFilter m_pedal;
  QQmlEngine m_engine;
  QQmlComponent m_main;
  std::unique_ptr<QObject> m_root;  // the window
  QQuickWindow* m_window = nullptr;
  QStringList m_warnings;
};

}  // namespace app::face
