#include "app/stores/database_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QtEndian>

#include "app/convert/text.h"
#include "app/stores/data_dir.h"
#include "app/stores/record_place.h"
#include "app/stores/schema.h"

namespace app::stores {
namespace {

using core::base::Message;

// The database header (sqlite.org/fileformat2.html, section 1.3): 100 bytes, numbers big-endian.
constexpr qint64 kHeaderBytes = 100;
constexpr char kMagic[] = "SQLite format 3";
constexpr int kPageSizeAt = 16;
constexpr int kUserVersionAt = 60;
constexpr int kApplicationIdAt = 68;

qint64 pageSize(const QByteArray& header) {
  const auto stored = qFromBigEndian<quint16>(header.constData() + kPageSizeAt);
  return stored == 1 ? 65536 : stored;
}

// A file whose last page is cut short. With a log or journal beside it the file may be behind, and the library
// makes it whole from that.
bool endsInsideAPage(const QString& path, qint64 bytes, qint64 page) {
  const bool mended = QFileInfo(path + "-wal").size() > 0 || QFileInfo(path + "-journal").size() > 0;
  return page > 0 && bytes % page != 0 && !mended;
}

// Returns something that only a record in earlier use leaves beside it: a log, which the library would throw away over
// a file of no bytes; photographs that it names; copies saved of it. "" where there is none.
QString leftBy(const QString& path) {
  if (QFileInfo(path + QStringLiteral("-wal")).size() > 0) return path + QStringLiteral("-wal");
  const QDir folder(QFileInfo(path).absolutePath());
  const QStringList saved = folder.entryList({savedCopies()}, QDir::Files, QDir::Name);
  if (!saved.isEmpty()) return folder.filePath(saved.last());
  const QString photographs = photographsFolder(folder.path());
  return QDir(photographs).entryList(QDir::Files).isEmpty() ? QString() : photographs;
}

// A first start, or a record that was lost: nothing is begun over the second.
Message troubleWithNothing(const QString& path) {
  const QString beside = leftBy(path);
  if (beside.isEmpty()) return {};
  return Message("store.lost-before").with("path", convert::fromQt(path)).with("beside", convert::fromQt(beside));
}

}  // namespace

Message troubleWithFile(const QString& path) {
  const std::string place = convert::fromQt(path);
  const QFileInfo info(path);
  if (info.isDir()) return Message("store.is-directory").with("path", place);
  if (!QFileInfo(info.absolutePath()).isDir()) return Message("store.folder-missing").with("path", place);
  if (!info.exists() && info.isSymLink()) return Message("store.not-a-file").with("path", place);
  if (!info.exists()) return troubleWithNothing(path);
  if (!info.isFile()) return Message("store.not-a-file").with("path", place);

  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) {
    return Message("store.unreadable").with("path", place).with("detail", convert::fromQt(file.errorString()));
  }
  if (file.size() == 0) return troubleWithNothing(path);
  // The library would wait for ever at a pipe.
  for (const char* suffix : {"-journal", "-wal", "-shm"}) {
    const QFileInfo beside(path + QLatin1String(suffix));
    if ((beside.exists() || beside.isSymLink()) && !beside.isFile()) {
      return Message("store.not-a-file").with("path", convert::fromQt(beside.filePath()));
    }
  }
  const QByteArray header = file.read(kHeaderBytes);
  if (!header.startsWith(QByteArray(kMagic, qMin<qsizetype>(sizeof kMagic, header.size())))) {
    return Message("store.not-a-database").with("path", place);
  }
  if (header.size() < kHeaderBytes) return Message("store.damaged").with("path", place);
  const auto application = qFromBigEndian<qint32>(header.constData() + kApplicationIdAt);
  const auto version = qFromBigEndian<qint32>(header.constData() + kUserVersionAt);
  if (application != 0 && application != kApplicationId) return Message("store.other-program").with("path", place);
  if (version > kSchemaVersion) return newerMessage(place, version);
  if (endsInsideAPage(path, file.size(), pageSize(header))) return Message("store.damaged").with("path", place);
  return {};
}

}  // namespace app::stores
