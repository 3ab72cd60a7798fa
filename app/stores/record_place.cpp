#include "app/stores/record_place.h"

#include <QDateTime>
#include <QFile>
#include <QFileInfo>
#include <QSqlError>
#include <QSqlQuery>
#include <QUuid>
#include <QVariant>

#include "app/convert/text.h"
#include "app/files/private.h"
#include "app/files/unfinished.h"

namespace app::stores {
namespace {

using core::base::Message;

QString savedName() {
  return QStringLiteral("record-saved-%1.sqlite")
      .arg(QDateTime::currentDateTimeUtc().toString(QStringLiteral("yyyyMMdd-HHmmss-zzz")));
}

}  // namespace

QString savedCopies() { return QStringLiteral("record-saved-*.sqlite"); }

void RecordPlace::remember(const QString& path) {
  // Where a link leads the library has its log too.
  const QString real = QFileInfo(path).canonicalFilePath();
  m_path = real.isEmpty() ? path : real;
  m_file = files::identityOf(m_path);
  m_log = files::identityOf(log());
  m_index = files::identityOf(index());
}

Message RecordPlace::look(QSqlDatabase& database) {
  if (!m_lost.id.empty()) return m_lost;
  const auto now = files::identityOf(m_path);
  const bool same = now == m_file;
  if (same && files::identityOf(log()) == m_log) return {};
  Message found = same ? empty(database) : save(database, now.has_value());
  if (found.id != "store.not-saved") m_lost = found;
  return found;
}

// Anything committed from now on would be in a log without a name.
Message RecordPlace::empty(QSqlDatabase& database) {
  const Message place = Message("store.log-gone").with("path", convert::fromQt(m_path));
  QSqlQuery query(database);
  if (query.exec(QStringLiteral("PRAGMA wal_checkpoint(FULL)")) && query.next() && query.value(0).toInt() == 0) {
    return place;
  }
  return Message("store.not-saved")
      .with("path", convert::fromQt(m_path))
      .with("detail", convert::fromQt(query.lastError().text().simplified()));
}

Message RecordPlace::save(QSqlDatabase& database, bool replaced) {
  const std::string place = convert::fromQt(m_path);
  const auto failed = [&](const QString& detail) {
    return Message("store.not-saved").with("path", place).with("detail", convert::fromQt(detail));
  };
  const QString folder = QFileInfo(m_path).absolutePath();
  if (!files::makePrivateFolder(folder)) return failed(folder);
  const auto disk = files::machineDisk();
  files::Unfinished copy(*disk,
                         folder + QStringLiteral("/.saving-") + QUuid::createUuid().toString(QUuid::WithoutBraces));
  if (const auto made = disk->create(copy.path()); !made) return failed(folder);
  {
    QSqlQuery query(database);
    query.prepare(QStringLiteral("VACUUM INTO ?"));
    query.addBindValue(copy.path());
    if (!query.exec()) return failed(query.lastError().text().simplified());
  }
  if (!files::forceToDisk(copy.path())) return failed(copy.path());
  // All that our log holds is in the copy now. Beside another file, or beside the copy, it would be taken for that
  // one's and spoil it.
  const auto logThere = files::identityOf(log());
  if (logThere && logThere == m_log) QFile::remove(log());
  if (const auto there = files::identityOf(index()); there && there == m_index) QFile::remove(index());
  const bool back = !replaced && (!logThere || logThere == m_log);
  const QString name = back ? m_path : folder + u'/' + savedName();
  if (copy.becomes(name) != files::Fault::None) return failed(name);
  if (back) return Message("store.written-back").with("path", place);
  return Message("store.saved-beside").with("path", place).with("copy", convert::fromQt(name));
}

}  // namespace app::stores
