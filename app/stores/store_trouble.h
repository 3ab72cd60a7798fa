#pragma once
// What SQLite says when something goes wrong, as the messages a maker can do something about.
#include <QSqlError>
#include <QString>

#include "core/base/message.h"

namespace app::stores {

// One of: store.locked, store.read-only-folder, store.read-only-file, store.not-a-database, store.full with `path`;
// store.damaged, store.cannot-open, store.failed with `path` and what SQLite says of it as `detail`.
core::base::Message troubleOf(const QSqlError& error, const QString& path);

}  // namespace app::stores
