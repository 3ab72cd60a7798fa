#include "app/stores/open_record.h"

#include "app/stores/data_dir.h"

namespace app::stores {

core::base::Result<OpenRecord, core::base::Message> openRecord(const QString& dataDirectory) {
  const QString file = recordFile(dataDirectory);
  auto lock = RecordLock::take(file);
  if (!lock) return lock.error();
  auto store = SqliteEventStore::open(file);
  if (!store) return store.error();
  return OpenRecord{std::move(lock).value(), std::move(store).value()};
}

}  // namespace app::stores
