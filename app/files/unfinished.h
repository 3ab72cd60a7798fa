#pragma once
// A file under another name until it is known to be good: gone with this object, unless it was renamed.
#include <QString>

#include "app/files/disk.h"

namespace app::files {

class Unfinished {
 public:
  Unfinished(Disk& disk, QString path) : m_disk(disk), m_path(std::move(path)) {}
  ~Unfinished();
  Unfinished(const Unfinished&) = delete;
  Unfinished& operator=(const Unfinished&) = delete;

  const QString& path() const { return m_path; }
  // Does as Disk::rename.
  Fault becomes(const QString& path);

 private:
  Disk& m_disk;
  QString m_path;
};

}  // namespace app::files
