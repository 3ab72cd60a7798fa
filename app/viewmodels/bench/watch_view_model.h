#pragma once
// The watch that is kept over the waits, as the bench shows it: the time, whether the alerts are alive, and all that
// stands between a maker and an alert that is heard.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <functional>
#include <map>

#include "app/clocks/clock.h"

namespace app::viewmodels {

class WatchViewModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(QString time READ time NOTIFY changed FINAL)          // of the zone's clock, "14:05"
  Q_PROPERTY(bool living READ living NOTIFY changed FINAL)         // the alerts gave a sign of life just now
  Q_PROPERTY(QString troubles READ troubles NOTIFY changed FINAL)  // a line each, the worst first; "" for none

 public:
  // In the order in which they are shown.
  enum class Trouble { Record, Unknown, Alerts, Sound, Clock, Sleep, Battery, Sensor };

  explicit WatchViewModel(const clocks::Clock& clock, QObject* parent = nullptr);

  // Said on the bench as long as it lasts; "" ends it.
  void set(Trouble trouble, const QString& said);
  // What is to be said of a wall clock, ms; "" where it can be believed.
  static QString clockTrouble(std::int64_t utcMilliseconds);
  // Asked with every refresh; where none is set the alerts are taken to live.
  void setLiving(std::function<bool()> living) { m_ask = std::move(living); }
  void refresh();

  QString time() const { return m_time; }
  bool living() const { return m_living; }
  QString troubles() const;

 signals:
  void changed();

 private:
  const clocks::Clock& m_clock;
  std::function<bool()> m_ask;
  std::map<Trouble, QString> m_troubles;
  QString m_time;
  bool m_living = true;
};

}  // namespace app::viewmodels
