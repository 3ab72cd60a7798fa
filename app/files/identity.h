#pragma once
// Which file it is that a name leads to.
#include <QString>
#include <cstdint>
#include <optional>

namespace app::files {

struct Identity {
  std::uint64_t device = 0, number = 0;
  friend bool operator==(const Identity&, const Identity&) = default;
};

// Links are followed; nothing where the name leads nowhere. The same for a file as long as anybody has it open,
// whatever is done to its name. Where the system tells of no such thing, the same for every file there is.
std::optional<Identity> identityOf(const QString& path);

// Forces what was written to a file to the disk. Returns whether that was done. Not for a file that a database is open
// on: closing it drops the database's locks.
bool forceToDisk(const QString& path);

}  // namespace app::files
