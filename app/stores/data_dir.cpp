#include "app/stores/data_dir.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

#include "app/convert/text.h"

namespace app::stores {

QString wantedDataDirectory(const QString& option) {
  const QString wanted = option.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) : option;
  return wanted.isEmpty() ? QString() : QDir::cleanPath(QFileInfo(wanted).absoluteFilePath());
}

core::base::Result<QString, core::base::Message> dataDirectory(const QString& option) {
  using core::base::Message;
  const QString path = wantedDataDirectory(option);
  const QFileInfo info(path);
  if (info.exists() && !info.isDir()) return Message("data.not-a-folder").with("path", convert::fromQt(path));
  if (path.isEmpty() || !QDir().mkpath(path)) {
    return Message("data.cannot-make").with("path", convert::fromQt(path));
  }
  return path;
}

QString recordFile(const QString& dataDirectory) { return dataDirectory + QStringLiteral("/record.sqlite"); }

QString photographsFolder(const QString& dataDirectory) { return dataDirectory + QStringLiteral("/photographs"); }

QString ownTechniques(const QString& dataDirectory) { return dataDirectory + QStringLiteral("/techniques"); }

}  // namespace app::stores
