#pragma once
// The folder of the data that this program must not lose.
#include <QString>

#include "core/base/message.h"
#include "core/base/result.h"

namespace app::stores {

// The folder given by --data, or the user's own place for this program where `option` is empty; made where it
// does not exist, for its user alone, and put right where it holds a record that others may read. Absolute.
// data.cannot-make {path} where it cannot be made, data.not-a-folder {path} where a file has that name.
core::base::Result<QString, core::base::Message> dataDirectory(const QString& option);

// Returns the same path without making anything.
QString wantedDataDirectory(const QString& option);

QString recordFile(const QString& dataDirectory);
// Beside the record, so that whoever copies the folder has both.
QString photographsFolder(const QString& dataDirectory);
// Returns the folder of this bench's own techniques, which replace those delivered with the program.
QString ownTechniques(const QString& dataDirectory);

}  // namespace app::stores
