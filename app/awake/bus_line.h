#pragma once
// One connection to a message bus, opened beside this thread, and the signals heard on it.
#include <QDBusConnection>
#include <QDBusMessage>
#include <QObject>
#include <QStringList>
#include <memory>
#include <vector>

namespace app::awake {

class BusLine : public QObject {
  Q_OBJECT

 public:
  struct Signal {
    QString path;  // "" for any
    QString interface;
    QString name;
    QStringList arguments = {};  // the first ones it must have; none for any
  };

  BusLine(QString addresses, std::vector<Signal> signalsHeard);
  ~BusLine() override;

  // Does nothing while it is open or being opened. changed() reports the outcome.
  void open();
  bool opening() const { return m_opening; }
  // Null while it is not open.
  const QDBusConnection* connection() const;

 signals:
  // It was opened, could not be opened, or was cut.
  void changed();
  void heard(const QDBusMessage& signal);

 private:
  struct Open;
  void take(std::shared_ptr<Open> open);

  QString m_addresses;
  std::vector<Signal> m_signals;
  bool m_opening = false;
  std::shared_ptr<Open> m_open;
};

}  // namespace app::awake
