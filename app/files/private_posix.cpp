#include <sys/stat.h>
#include <unistd.h>

#include <QDir>
#include <QFile>

#include "app/files/private.h"

namespace app::files {

void closeToOthers(const QString& path) {
  const QByteArray name = QFile::encodeName(path);
  struct stat found {};
  if (::lstat(name.constData(), &found) != 0 || found.st_uid != ::geteuid()) return;
  const bool folder = S_ISDIR(found.st_mode) && (found.st_mode & S_ISVTX) == 0;
  if (!folder && !S_ISREG(found.st_mode)) return;
  constexpr mode_t kOthers = S_IRWXG | S_IRWXO;
  // By its name: opening and closing the record's file would drop the locks the database library holds on it.
  if ((found.st_mode & kOthers) != 0) (void)::chmod(name.constData(), found.st_mode & 07700);
}

bool makePrivateFolder(const QString& path) {
  const bool was = QDir(path).exists();
  if (!QDir().mkpath(path)) return false;
  if (!was) closeToOthers(path);
  return true;
}

}  // namespace app::files
