#include "app/stores/open_record.h"

#include <QFileInfo>

#include "app/stores/data_dir.h"
#include "app/stores/device.h"
#include "app/stores/sqlite_event_store.h"

namespace app::stores {

core::base::Result<OpenRecord, core::base::Message> openRecord(const QString& dataDirectory, Opening opening) {
  const QString file = recordFile(dataDirectory);
  OpenRecord record;
  if (opening == Opening::ToWork) {
    auto lock = RecordLock::take(file);
    if (!lock) return lock.error();
    record.lock = std::move(lock).value();
  }
  auto opened = SqliteEventStore::open(file);
  if (!opened) return opened.error();
  std::unique_ptr<SqliteEventStore> store = std::move(opened).value();
  if (opening == Opening::ToWork) {
    const std::string former = store->formerDevice();
    auto device = deviceOf(dataDirectory, former, store->made());
    if (!device) return device.error();
    // From now on it is the folder's: a copy of the record alone must not be written under it on another machine.
    if (!former.empty()) store->forgetFormerDevice();
    record.deviceId = std::move(device).value();
  }
  record.store = std::move(store);
  return record;
}

bool isReadInPart(const QString& dataDirectory) {
  return QFileInfo(recordFile(dataDirectory)).size() > SqliteEventStore::kReadThrough;
}

core::base::Message readThrough(const QString& dataDirectory) {
  return SqliteEventStore::checkWhole(recordFile(dataDirectory));
}

}  // namespace app::stores
