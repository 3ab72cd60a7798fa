#pragma once
// The watch over the waits, as the bench shows it: the time, whether the alerts are running, and every trouble that
// could keep the maker from hearing an alert.
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
  Q_PROPERTY(bool living READ living NOTIFY changed FINAL)         // the alerts gave a sign of life recently
  Q_PROPERTY(QString troubles READ troubles NOTIFY changed FINAL)  // a line each, the worst first; "" for none

 public:
  // The troubles are shown in this order.
  enum class Trouble { Record, Unknown, Alerts, Sound, Clock, Sleep, Battery, Sensor };

  explicit WatchViewModel(const clocks::Clock& clock, QObject* parent = nullptr);

  // The bench shows the text as long as the trouble lasts; "" ends it.
  void set(Trouble trouble, const QString& said);
  // Returns the trouble with a wall clock in ms; "" where its time is plausible.
  static QString clockTrouble(std::int64_t utcMilliseconds);
  // The function is called with every refresh; where none is set the alerts are assumed to run.
  void setLiving(std::function<bool()> living) { m_ask = std::move(living); }
  void refresh();

  QString time() const { return m_time; }
  bool living() const { return m_living; }
  QString troubles() const;
  bool has(Trouble trouble) const { return m_troubles.contains(trouble); }

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
