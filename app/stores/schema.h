#pragma once
// The tables and how an older file is brought up to them, step by step, each in the caller's transaction.
#include <QSqlQuery>
#include <string>

#include "core/base/message.h"

namespace app::stores {

inline constexpr int kSchemaVersion = 2;

// store.newer {path} {found} {known}
core::base::Message newerMessage(const std::string& path, int found);

// Requires an open transaction and a `from` of 0 (no tables yet) to kSchemaVersion. Where it returns false the
// query holds the error, and the transaction is to be rolled back.
bool migrate(QSqlQuery& query, int from);

}  // namespace app::stores
