#include <QFileInfo>
#include <QLockFile>

#include "app/convert/text.h"
#include "app/stores/record_lock.h"

namespace app::stores {

using core::base::Message;

struct RecordLock::Private {
  explicit Private(const QString& path) : file(path) {
    // A lock whose program has died is taken over; age alone says nothing, a bench stands open for weeks.
    file.setStaleLockTime(0);
  }
  QLockFile file;
};

RecordLock::RecordLock(std::unique_ptr<Private> held) : d(std::move(held)) {}

RecordLock::~RecordLock() = default;

core::base::Result<std::unique_ptr<RecordLock>, Message> RecordLock::take(const QString& recordFile) {
  auto held = std::make_unique<Private>(recordFile + QStringLiteral(".lock"));
  if (!held->file.tryLock(0) && held->file.error() == QLockFile::LockFailedError) {
    return Message("store.in-use").with("path", convert::fromQt(QFileInfo(recordFile).absolutePath()));
  }
  return std::unique_ptr<RecordLock>(new RecordLock(std::move(held)));
}

}  // namespace app::stores
