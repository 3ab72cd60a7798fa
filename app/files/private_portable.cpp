// Where there is no POSIX a user's own folders are closed to others by the system.
#include <QDir>

#include "app/files/private.h"

namespace app::files {

void closeToOthers(const QString&) {}

bool makePrivateFolder(const QString& path) { return QDir().mkpath(path); }

}  // namespace app::files
