#pragma once
// Two programs on one record would write under one device's numbers: the second one gets an error and writes nothing.
#include <QString>
#include <memory>

#include "core/base/message.h"
#include "core/base/result.h"

namespace app::stores {

// The lock is held until this object is destroyed or its program ends in any way. The file beside the record only names
// the holder: a file that a dead program left, or that was copied from another machine, blocks nobody. Where the place
// cannot be written to, or has no locks, nothing is held: the store reports what is wrong there.
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
