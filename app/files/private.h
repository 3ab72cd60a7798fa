#pragma once
// A maker's data about clients must stay closed to other users of the same machine.
#include <QString>

namespace app::files {

// Removes everybody else's rights to a file or folder that belongs to this user. Anything that is neither, a link, a
// folder many users share (/tmp), and a file system without such rights are left as they are: none of that is an error.
// Opens nothing.
void closeToOthers(const QString& path);

// Makes a folder, and those above it, and closes it to others where it was not there before. Returns whether it exists
// now.
bool makePrivateFolder(const QString& path);

}  // namespace app::files
