#pragma once
// The record in a data folder, for whoever alone works with it.
#include <QString>
#include <memory>

#include "app/stores/record_lock.h"
#include "app/stores/sqlite_event_store.h"

namespace app::stores {

// In this order, so that the file is closed before another program is let in.
struct OpenRecord {
  std::unique_ptr<RecordLock> lock;
  std::unique_ptr<SqliteEventStore> store;
};

// The messages of RecordLock::take and SqliteEventStore::open.
core::base::Result<OpenRecord, core::base::Message> openRecord(const QString& dataDirectory);

}  // namespace app::stores
