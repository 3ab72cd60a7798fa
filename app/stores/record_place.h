#pragma once
// Checks that the open record is still the file its name leads to. When the file is removed or replaced while the bench
// runs, the bench would go on writing into a file that is lost when it ends.
#include <QSqlDatabase>
#include <QString>
#include <optional>

#include "app/files/identity.h"
#include "core/base/message.h"

namespace app::stores {

class RecordPlace {
 public:
  // Remembers a file that is open, with the log it writes to. Call once.
  void remember(const QString& path);

  // Returns an empty message as long as file and log are where they were. Otherwise the open record is saved first, and
  // from then on this returns what was found and where it was saved:
  //   store.written-back {path}           the file was gone, and is there again with all that was recorded
  //   store.saved-beside {path} {copy}    another file is there; all that was recorded is in the copy
  //   store.log-gone {path}               the log was gone; all that was recorded is in the file
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

// Returns the name pattern of copies saved beside a record: "record-saved-*.sqlite".
QString savedCopies();

}  // namespace app::stores
