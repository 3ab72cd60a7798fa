#pragma once
// The few calls by which files are copied, so that a disk that fails can be put in its place in tests.
#include <QString>
#include <cstdint>
#include <memory>
#include <string>

#include "core/base/message.h"
#include "core/base/result.h"

namespace app::files {

// Shows whether a file is still the one that was begun: some member changes when the file is written to.
struct FileState {
  std::int64_t bytes = 0;
  std::int64_t modifiedNanoseconds = 0;
  std::int64_t changedNanoseconds = 0;
  friend bool operator==(const FileState&, const FileState&) = default;
};

// The reason why a call failed. Full: no room, over a quota or over a limit on the size of files.
enum class Fault { None, Missing, Folder, NotAFile, NoPermission, Full, Failed };

class Source {
 public:
  virtual ~Source() = default;
  // Where it cannot be read any more, returns a state that differs from the file's.
  virtual FileState state() = 0;
  // Bytes read into `buffer`, 0 at the end, less than 0 where reading failed.
  virtual std::int64_t read(char* buffer, std::int64_t most) = 0;
};

class Target {
 public:
  virtual ~Target() = default;
  // Writes all or returns why not.
  virtual Fault write(const char* bytes, std::int64_t count) = 0;
  // Forces the file to the disk, then closes it.
  virtual Fault finish() = 0;
};

class Disk {
 public:
  virtual ~Disk() = default;
  template <typename Opened>
  using Open = core::base::Result<std::unique_ptr<Opened>, Fault>;

  // Never waits: a pipe, a device or a folder is refused, whatever its name. Symbolic links are followed.
  virtual Open<Source> openSource(const QString& path) = 0;
  // A new file that nobody but its user may read; Failed where anything of that name is there, a link that leads
  // nowhere too.
  virtual Open<Target> create(const QString& path) = 0;
  // Takes the place of a file of that name in one go, and forces the folder to the disk. A link is replaced itself, not
  // the file it leads to.
  virtual Fault rename(const QString& from, const QString& to) = 0;
  virtual void remove(const QString& path) = 0;
};

// Returns the disk of this machine.
std::unique_ptr<Disk> machineDisk();

}  // namespace app::files
