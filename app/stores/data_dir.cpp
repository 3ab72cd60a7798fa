#include "app/stores/data_dir.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

#include "app/convert/text.h"
#include "app/files/private.h"
#include "app/stores/record_place.h"

namespace app::stores {

QString wantedDataDirectory(const QString& option) {
  const QString wanted = option.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) : option;
  return wanted.isEmpty() ? QString() : QDir::cleanPath(QFileInfo(wanted).absoluteFilePath());
}

namespace {

// Files that earlier versions made readable for everybody are corrected.
void closeToOthers(const QString& folder) {
  if (QFileInfo::exists(recordFile(folder))) files::closeToOthers(folder);
  const auto close = [](const QString& where, const QStringList& names) {
    for (const QFileInfo& one : QDir(where).entryInfoList(names, QDir::Files | QDir::Hidden | QDir::NoSymLinks)) {
      files::closeToOthers(one.filePath());
    }
  };
  close(folder, {QFileInfo(recordFile(folder)).fileName() + u'*', savedCopies()});
  files::closeToOthers(photographsFolder(folder));
  close(photographsFolder(folder), {});
}

}  // namespace

core::base::Result<QString, core::base::Message> dataDirectory(const QString& option) {
  using core::base::Message;
  const QString path = wantedDataDirectory(option);
  const QFileInfo info(path);
  if (info.exists() && !info.isDir()) return Message("data.not-a-folder").with("path", convert::fromQt(path));
  if (path.isEmpty() || !files::makePrivateFolder(path)) {
    return Message("data.cannot-make").with("path", convert::fromQt(path));
  }
  closeToOthers(path);
  return path;
}

QString recordFile(const QString& dataDirectory) { return dataDirectory + QStringLiteral("/record.sqlite"); }

QString photographsFolder(const QString& dataDirectory) { return dataDirectory + QStringLiteral("/photographs"); }

QString ownTechniques(const QString& dataDirectory) { return dataDirectory + QStringLiteral("/techniques"); }

}  // namespace app::stores
