#include "app/stores/data_dir.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

#include "app/convert/text.h"

namespace app::stores {

core::base::Result<QString, core::base::Message> dataDirectory(const QString& option) {
  using core::base::Message;
  const QString wanted = option.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) : option;
  const QString path = QDir::cleanPath(QFileInfo(wanted).absoluteFilePath());
  const QFileInfo info(path);
  if (info.exists() && !info.isDir()) return Message("data.not-a-folder").with("path", convert::fromQt(path));
  if (wanted.isEmpty() || !QDir().mkpath(path)) {
    return Message("data.cannot-make").with("path", convert::fromQt(path));
  }
  return path;
}

QString recordFile(const QString& dataDirectory) { return dataDirectory + QStringLiteral("/record.sqlite"); }

QString photographsFolder(const QString& dataDirectory) { return dataDirectory + QStringLiteral("/photographs"); }

QString ownTechniques(const QString& dataDirectory) { return dataDirectory + QStringLiteral("/techniques"); }

}  // namespace app::stores
