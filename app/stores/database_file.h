#pragma once
// Checks the file before the database library touches it, so that a fault is reported without a byte written.
#include <QString>

#include "core/base/message.h"

namespace app::stores {

// Marks our files among all SQLite files (PRAGMA application_id): "MntW".
inline constexpr int kApplicationId = 0x4D6E7457;

// An empty message where there is no file yet, or one worth opening. Otherwise store.folder-missing,
// store.is-directory, store.not-a-file, store.unreadable, store.not-a-database, store.other-program, store.newer or
// store.damaged; store.lost-before {path} {beside} where there is no file, or one of no bytes, and yet something beside
// it that only a record in use leaves.
core::base::Message troubleWithFile(const QString& path);

}  // namespace app::stores
