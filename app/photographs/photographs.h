#pragma once
// The files of photographs, in a folder beside the record: each under the SHA-256 of its bytes, so that the record
// names exactly the stored bytes and one picture is there once. A file is written under another name, forced to the
// disk, renamed, and the folder forced too; only then may an event name it. The maker's own file is never touched.
//
// Usable from any thread, and meant for one beside the interface: a large picture takes a second to copy and to show.
#include <QImage>
#include <QSize>
#include <QString>
#include <functional>
#include <memory>
#include <set>
#include <string>
#include <vector>

#include "app/files/disk.h"
#include "core/base/message.h"
#include "core/base/result.h"

namespace app::photographs {

struct Kept {
  std::string hash;  // lower-case hex SHA-256
  std::int64_t bytes = 0;
  std::string type;           // "jpeg", "png" or "webp"
  int width = 0, height = 0;  // pixels, as stored
};

class Photographs {
 public:
  // The folder is made with the first photograph.
  explicit Photographs(QString folder, std::shared_ptr<files::Disk> disk = files::machineDisk());

  const QString& folder() const { return m_folder; }

  // Copies the file in. Where it returns a message nothing was stored and nothing is left behind:
  //   photograph.missing, .is-folder, .not-a-file, .no-permission, .unreadable   {path}
  //   photograph.empty                          0 bytes
  //   photograph.too-large {most}               of megabytes
  //   photograph.not-a-picture                  by its content, whatever its name
  //   photograph.other-type {type}              a picture of a type that is not kept
  //   photograph.too-many-pixels {width} {height} {most}    by its head, before anything is decoded
  //   photograph.cut-short, photograph.damaged  its end is missing; its parts do not fit together
  //   photograph.changed-meanwhile              it was written to while it was copied
  //   photograph.disk-full, photograph.cannot-keep {path}, photograph.folder {path}
  core::base::Result<Kept, core::base::Message> keep(const QString& path) const;

  // Returns the picture scaled to fit, never enlarged, turned as its camera recorded. Decodes scaled where the format
  // can. photograph.gone, photograph.altered (its bytes are others now), photograph.cannot-show {detail},
  // photograph.too-large-to-show {width} {height}.
  core::base::Result<QImage, core::base::Message> thumbnail(const std::string& hash, QSize atMost) const;
  // The file of that hash; "" where there is none.
  QString file(const std::string& hash) const;
  // Checks that it is there and that its bytes are those that were stored. Returns a message of `thumbnail`, or an
  // empty one. Reads the whole file.
  core::base::Message trouble(const std::string& hash) const;

  // Removes the remains of copies that were cut off, and nothing else. Call once, before the first `keep`. Returns how
  // many files it removed.
  int sweep() const;
  // Stored files that none of these hashes names, and their size. They stay until their removal is requested.
  struct Unused {
    std::vector<std::string> hashes;
    std::int64_t bytes = 0;
  };
  Unused unused(const std::set<std::string>& named) const;

 private:
  struct Copied;
  core::base::Message copy(files::Source& source, files::Target& target, Copied& copied) const;

  QString m_folder;
  std::shared_ptr<files::Disk> m_disk;
};

}  // namespace app::photographs
