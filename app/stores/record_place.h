#pragma once
// Whether the record that is open is still the one its name leads to. Who takes the file away or puts another in its
// place while the bench runs leaves it writing into a file that is gone with it.
#include <QSqlDatabase>
#include <QString>
#include <optional>

#include "app/files/identity.h"
#include "core/base/message.h"

namespace app::stores {

class RecordPlace {
 public:
  // Of a file that is open, with the log it writes to. Call once.
  void remember(const QString& path);

  // An empty message as long as file and log are where they were. Otherwise what is open is saved first, and this says
  // for good what was found and where it was saved:
  //   store.written-back {path}           the file was gone, and is there again with all that was kept
  //   store.saved-beside {path} {copy}    another file is there; all that was kept is in the copy
  //   store.log-gone {path}               the log was gone; all that was kept is in the file
  //   store.not-saved {path} {detail}     nothing could be saved: tried again with the next call
  core::base::Message look(QSqlDatabase& database);

 private:
  core::base::Message save(QSqlDatabase& database, bool replaced);
  core::base::Message empty(QSqlDatabase& database);
  QString log() const { return m_path + QStringLiteral("-wal"); }
  QString index() const { return m_path + QStringLiteral("-shm"); }

  QString m_path;
  std::optional<files::Identity> m_file, m_log, m_index;
  core::base::Message m_lost;
};

// How copies saved beside a record are called: "record-saved-*.sqlite".
QString savedCopies();

}  // namespace app::stores
