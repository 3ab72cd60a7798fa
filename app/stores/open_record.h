#pragma once
// The one way to a record in a data folder. No code outside this folder depends on the kind of file it is.
#include <QString>
#include <memory>
#include <string>

#include "app/stores/record_lock.h"
#include "core/record/event_store.h"

namespace app::stores {

enum class Opening {
  ToWork,  // alone, until it is closed again
  ToRead,  // beside whoever works with it
};

// The members are in this order so that the file is closed before another program is let in.
struct OpenRecord {
  std::unique_ptr<RecordLock> lock;  // null where it is only read
  std::unique_ptr<core::record::EventStore> store;
  std::string deviceId;  // under which this machine writes into it; "" where it is only read
};

// Errors are the messages of RecordLock::take, SqliteEventStore::open and deviceOf.
core::base::Result<OpenRecord, core::base::Message> openRecord(const QString& dataDirectory,
                                                               Opening opening = Opening::ToWork);

// Returns whether the record is so large that opening it does not read all of it.
bool isReadInPart(const QString& dataDirectory);
// Reads the whole record through, in any thread. Returns the store's trouble, or an empty message.
core::base::Message readThrough(const QString& dataDirectory);

}  // namespace app::stores
