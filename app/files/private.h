#pragma once
// What a maker keeps of clients is nobody else's who uses the same machine.
#include <QString>

namespace app::files {

// Takes from everybody but its user the right to a file or folder, where it belongs to this user. What is no file and
// no folder, a link, a folder many users share (/tmp), and a file system that knows no such rights are left as they
// are: none of that is an error. Opens nothing.
void closeToOthers(const QString& path);

// Makes a folder, and those above it, and closes it to others where it was not there before. Whether it is there now.
bool makePrivateFolder(const QString& path);

}  // namespace app::files
