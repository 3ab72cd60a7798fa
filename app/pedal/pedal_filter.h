#pragma once
// Pedals arrive as keys of a keyboard: this takes them out of the window's key events and reports their meaning. It
// also keeps a palm or a sleeve (three contacts and more) away from the screen.
#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

#include <optional>

#include "app/pedal/pedal_keys.h"

namespace app::pedal {

class PedalFilter : public QObject {
  Q_OBJECT

 public:
  static constexpr int kPalmContacts = 3;

  explicit PedalFilter(QObject* parent = nullptr);

  // An alert took the screen: the first press now was meant for what stood there before.
  void alertAppeared();
  // Sets whether an alert is shown: Enter then means Heard.
  void setAlertUp(bool up);
  // Somebody writes into a text: the keys are letters then, unless an alert is up.
  void setWriting(bool writing) { m_writing = writing; }

  bool eventFilter(QObject* watched, QEvent* event) override;

 signals:
  void forward();
  void back();
  void done();         // Enter where no alert is up
  void acknowledge();  // Heard
  void noticed();      // any sign of somebody: a key, a touch
  void pressed();      // a pedal went down, with or without an act

 private:
  void tell(std::optional<PedalAct> act, Pedal pedal);

  PedalKeys m_keys;
  QElapsedTimer m_clock;
  QTimer m_hold;
  bool m_alertUp = false;
  bool m_writing = false;
};

}  // namespace app::pedal
