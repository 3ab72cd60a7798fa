#pragma once
// The one way in which files a person names are read and written. Neither ever waits for whoever holds the other end of
// a pipe, and neither touches what is no ordinary file.
#include <QString>
#include <cstddef>
#include <optional>
#include <string>

#include "core/base/message.h"
#include "core/base/result.h"

namespace app::files {

// Returns the whole file; of one longer than `most` bytes the first `most` and one more, so that the reader of the text
// reports that it is too large. Links are followed.
//   file.missing, file.is-folder, file.not-a-file (a pipe, a device), file.no-permission, file.unreadable
core::base::Result<std::string, core::base::Message> readWhole(const QString& path, std::size_t most);

// Writes a new file, or takes the place of the one of that name, in one go: a reader sees the old bytes or the new
// ones, and when this returns nothing they are on the disk. A link of that name is replaced, never followed; anything
// that is neither a file nor a link stays. Returns nothing where it was written, else
//   file.not-a-file, file.disk-full, file.cannot-write
std::optional<core::base::Message> writeWhole(const QString& path, const std::string& bytes);

}  // namespace app::files
