#pragma once
// A store of its own, in a file.
#include <QTemporaryDir>
#include <memory>

#include "app/stores/sqlite_event_store.h"
#include "tests/support/catch.h"

namespace tests {

inline std::unique_ptr<app::stores::SqliteEventStore> openIn(const QTemporaryDir& folder) {
  auto opened = app::stores::SqliteEventStore::open(folder.filePath("record.sqlite"));
  REQUIRE(opened.ok());
  return std::move(opened).value();
}

}  // namespace tests
