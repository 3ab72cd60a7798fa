#pragma once
// The identity of the file that a name leads to.
#include <QString>
#include <cstdint>
#include <optional>

namespace app::files {

struct Identity {
  std::uint64_t device = 0, number = 0;
  friend bool operator==(const Identity&, const Identity&) = default;
};

// Follows links and returns nothing where the name leads nowhere. The identity of a file is constant as long as any
// program has it open, even when the name changes. On a system without identities, it is the same for every existing
// file.
std::optional<Identity> identityOf(const QString& path);

// Forces what was written to a file to the disk. Returns whether that was done. Must not be called for a file that a
// database is open on: closing it drops the database's locks.
bool forceToDisk(const QString& path);

}  // namespace app::files
