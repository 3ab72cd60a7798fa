#pragma once
// Turns SQLite's errors into messages a maker can act on.
#include <QSqlError>
#include <QString>

#include "core/base/message.h"

namespace app::stores {

// Returns one of store.locked, store.read-only-folder, store.read-only-file, store.not-a-database, store.full with
// `path`; store.damaged, store.cannot-open, store.failed with `path` and SQLite's own text as `detail`.
core::base::Message troubleOf(const QSqlError& error, const QString& path);

}  // namespace app::stores
