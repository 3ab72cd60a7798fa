#pragma once
// Reports that the time zone of this machine was changed.
#include <QByteArray>
#include <QFileSystemWatcher>
#include <QObject>
#include <QStringList>
#include <QTimer>

namespace app::clocks {

// /etc/localtime and /etc/timezone; files that are not there are waited for.
QStringList systemZoneFiles();

class ZoneWatch : public QObject {
  Q_OBJECT

 public:
  explicit ZoneWatch(const QStringList& files, QObject* parent = nullptr);

 signals:
  // One of the files leads elsewhere or has another content. A change made of several steps within a tenth of a second
  // is reported once.
  void changed();

 private:
  void watch();
  void look();
  QByteArray state() const;

  QStringList m_files;
  QByteArray m_state;
  QFileSystemWatcher m_watcher;
  QTimer m_settled;
};

}  // namespace app::clocks
