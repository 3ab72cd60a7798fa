#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QFile>

#include "app/files/identity.h"

namespace app::files {

std::optional<Identity> identityOf(const QString& path) {
  struct stat found {};
  if (::stat(QFile::encodeName(path).constData(), &found) != 0) return std::nullopt;
  return Identity{static_cast<std::uint64_t>(found.st_dev), static_cast<std::uint64_t>(found.st_ino)};
}

bool forceToDisk(const QString& path) {
  const int file = ::open(QFile::encodeName(path).constData(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC);
  if (file < 0) return false;
  const bool forced = ::fsync(file) == 0;
  return ::close(file) == 0 && forced;
}

}  // namespace app::files
