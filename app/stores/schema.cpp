#include "app/stores/schema.h"

#include <QStringList>
#include <vector>

#include "app/stores/database_file.h"
#include "core/base/check.h"

namespace app::stores {
namespace {

// STRICT, so that a column holds the kind it names or the write fails. Bodies of texts are blobs: what was taken
// in comes back byte for byte, and its hash with it.
const QStringList& version1() {
  static const QStringList statements = {
      QStringLiteral("CREATE TABLE events("
                     "event_id TEXT NOT NULL PRIMARY KEY, device_id TEXT NOT NULL, device_seq INTEGER NOT NULL, "
                     "hlc TEXT NOT NULL, intent_id TEXT NOT NULL, stream TEXT NOT NULL, type TEXT NOT NULL, "
                     "version INTEGER NOT NULL, occurred INTEGER NOT NULL, recorded INTEGER NOT NULL, "
                     "zone TEXT NOT NULL, boot_id TEXT NOT NULL, boottime_ns INTEGER NOT NULL, "
                     "synced INTEGER NOT NULL, payload TEXT NOT NULL) STRICT"),
      QStringLiteral("CREATE UNIQUE INDEX events_device ON events(device_id, device_seq)"),
      QStringLiteral("CREATE INDEX events_stream ON events(stream)"),
      QStringLiteral("CREATE INDEX events_order ON events(hlc, device_id, device_seq)"),
      QStringLiteral("CREATE TABLE texts("
                     "hash TEXT NOT NULL PRIMARY KEY, kind TEXT NOT NULL, name TEXT NOT NULL, body BLOB NOT NULL) "
                     "STRICT"),
      QStringLiteral("CREATE TABLE clock_log("
                     "number INTEGER PRIMARY KEY, device_id TEXT NOT NULL, kind TEXT NOT NULL, "
                     "utc INTEGER NOT NULL, boot_id TEXT NOT NULL, boottime_ns INTEGER NOT NULL, "
                     "synced INTEGER NOT NULL) STRICT"),
      QStringLiteral("CREATE INDEX clock_log_device ON clock_log(device_id, number)"),
      QStringLiteral("CREATE TABLE bench("
                     "only INTEGER PRIMARY KEY CHECK(only = 1), device_id TEXT NOT NULL) STRICT"),
  };
  return statements;
}

// Tables that only make opening quick and may be dropped whole at any time.
const QStringList& version2() {
  static const QStringList statements = {
      QStringLiteral("CREATE TABLE summaries("
                     "stream TEXT NOT NULL PRIMARY KEY, stamp TEXT NOT NULL, body TEXT NOT NULL) STRICT"),
      QStringLiteral("CREATE TABLE summary_details(stream TEXT NOT NULL PRIMARY KEY, detail TEXT NOT NULL) STRICT"),
  };
  return statements;
}

bool runAll(QSqlQuery& query, const QStringList& statements) {
  for (const QString& statement : statements) {
    if (!query.exec(statement)) return false;
  }
  return true;
}

}  // namespace

core::base::Message newerMessage(const std::string& path, int found) {
  return core::base::Message("store.newer")
      .with("path", path)
      .with("found", std::int64_t{found})
      .with("known", std::int64_t{kSchemaVersion});
}

bool migrate(QSqlQuery& query, int from) {
  ENSURE(from >= 0 && from <= kSchemaVersion);
  const std::vector<QStringList> ladder = {version1(), version2()};
  for (auto version = static_cast<std::size_t>(from); version < ladder.size(); ++version) {
    if (!runAll(query, ladder[version])) return false;
  }
  return runAll(query, {QStringLiteral("PRAGMA application_id = %1").arg(kApplicationId),
                        QStringLiteral("PRAGMA user_version = %1").arg(kSchemaVersion)});
}

}  // namespace app::stores
