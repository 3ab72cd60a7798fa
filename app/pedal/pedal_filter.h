#pragma once
// Pedals arrive as keys of a keyboard: this takes them out of the window's key events and tells what was meant.
#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

#include "app/pedal/pedal_keys.h"

namespace app::pedal {

class PedalFilter : public QObject {
  Q_OBJECT

 public:
  explicit PedalFilter(QObject* parent = nullptr);

  // Whether the alert fills the screen: Enter means Heard then, and the first press is guarded.
  void setAlertUp(bool up);

 signals:
  void forward();
  void back();
  void heard();
  // Any pedal went down: somebody is there, and what a blade held back may come.
  void stirred();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void tell(std::optional<PedalAct> act);

  PedalKeys m_keys;
  QElapsedTimer m_clock;
  QTimer m_hold;
  bool m_alertUp = false;
};

}  // namespace app::pedal
