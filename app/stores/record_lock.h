#pragma once
// Two programs on one record would write under one device's numbers: whoever comes second is told, and writes nothing.
#include <QString>
#include <memory>

#include "core/base/message.h"
#include "core/base/result.h"

namespace app::stores {

// Held until it goes, or until its program ends in whatever way. What the file beside the record says is only who: a
// file that a dead program left, or that came with a copy from another machine, holds nobody up. Where the place cannot
// be written to, or knows no locks, nothing is held: the store says what is wrong there.
class RecordLock {
 public:
  // store.in-use {path}, or store.in-use-by {path} {process} {host}; store.lock-not-a-file {path}.
  static core::base::Result<std::unique_ptr<RecordLock>, core::base::Message> take(const QString& recordFile);

  ~RecordLock();
  RecordLock(const RecordLock&) = delete;
  RecordLock& operator=(const RecordLock&) = delete;

 private:
  struct Private;
  explicit RecordLock(std::unique_ptr<Private> held);
  std::unique_ptr<Private> d;
};

}  // namespace app::stores
