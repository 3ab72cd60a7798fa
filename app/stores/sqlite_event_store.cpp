#include "app/stores/sqlite_event_store.h"

#include <QDateTime>
#include <QFileInfo>
#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>
#include <utility>

#include "app/convert/content_hash.h"
#include "app/convert/text.h"
#include "app/convert/uuid.h"
#include "app/files/disk.h"
#include "app/stores/database_file.h"
#include "app/stores/schema.h"
#include "app/stores/store_trouble.h"

namespace app::stores {
namespace {

using core::base::Message;
using core::base::Result;
using core::record::Done;
using core::record::Event;
using core::record::StoredText;
using core::record::StoreError;

constexpr char kEventColumns[] =
    "event_id, device_id, device_seq, hlc, intent_id, stream, type, version, occurred, recorded, zone, boot_id, "
    "boottime_ns, synced, payload";

constexpr int kEventColumnCount = 15;

// Goes from one stream to the next by the index and never over the events of one: a record holds a hundred thousand
// events of some hundred streams.
constexpr char kEachStream[] =
    "WITH RECURSIVE each(name) AS (SELECT min(stream) FROM events UNION ALL "
    "SELECT (SELECT min(stream) FROM events WHERE stream > name) FROM each WHERE name IS NOT NULL) ";

// A null string would be stored as NULL.
QVariant bound(const std::string& text) {
  const QString value = convert::toQt(text);
  return value.isNull() ? QString(QLatin1String("")) : value;
}

QVariant boundBytes(const std::string& bytes) {
  const QByteArray value = convert::toBytes(bytes);
  return value.isNull() ? QByteArray("") : value;
}

QVariant bound(std::int64_t number) { return QVariant::fromValue<qlonglong>(number); }

// A statement that cannot be prepared leaves its error in the query; executing it all the same would hide that.
bool run(QSqlQuery& query, const QString& statement, const QVariantList& values) {
  if (!query.prepare(statement)) return false;
  for (const QVariant& value : values) query.addBindValue(value);
  return query.exec();
}

std::string textAt(const QSqlQuery& query, int column) { return convert::fromQt(query.value(column).toString()); }

core::waits::ClockReading readingAt(const QSqlQuery& query, int first) {
  return {query.value(first).toLongLong(), textAt(query, first + 1), query.value(first + 2).toLongLong(),
          query.value(first + 3).toLongLong() != 0};
}

// Returns nothing where the payload is no JSON or the clock is malformed: then the row was not written by this program,
// or not whole.
std::optional<Event> eventAt(const QSqlQuery& query) {
  core::base::ParsedJson payload = core::base::parseJson(textAt(query, 14));
  if (!payload.readable) return std::nullopt;
  // Read for another time than was written it would silently stand elsewhere in the order.
  const std::string clock = textAt(query, 3);
  if (core::record::text(core::record::parseHlc(clock)) != clock) return std::nullopt;
  Event event;
  event.eventId = textAt(query, 0);
  event.deviceId = textAt(query, 1);
  event.deviceSequence = query.value(2).toLongLong();
  event.hlc = core::record::parseHlc(clock);
  event.intentId = textAt(query, 4);
  event.stream = textAt(query, 5);
  event.type = textAt(query, 6);
  event.version = query.value(7).toInt();
  event.occurredUtc = query.value(8).toLongLong();
  event.recordedUtc = query.value(9).toLongLong();
  event.zone = textAt(query, 10);
  event.bootId = textAt(query, 11);
  event.boottimeNanoseconds = query.value(12).toLongLong();
  event.synced = query.value(13).toLongLong() != 0;
  event.payload = std::move(payload.root);
  return event;
}

}  // namespace

SqliteEventStore::SqliteEventStore(QString path, QString connection)
    : m_path(std::move(path)),
      m_connection(std::move(connection)),
      m_database(QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_connection)) {}

SqliteEventStore::~SqliteEventStore() {
  m_database.close();
  m_database = QSqlDatabase();
  QSqlDatabase::removeDatabase(m_connection);
}

Result<std::unique_ptr<SqliteEventStore>, StoreError> SqliteEventStore::open(const QString& path) {
  if (Message trouble = troubleWithFile(path); !trouble.id.empty()) return trouble;
  if (!QSqlDatabase::isDriverAvailable(QStringLiteral("QSQLITE"))) return Message("store.no-driver");
  // The connection's name is the process's own affair; it only has to be one that no other store has.
  std::unique_ptr<SqliteEventStore> store(
      new SqliteEventStore(path, QStringLiteral("record-") + convert::toQt(convert::newUuid(0))));
  if (Message trouble = store->prepareFile(); !trouble.id.empty()) return trouble;
  return store;
}

Message SqliteEventStore::trouble(const QSqlError& error) const { return troubleOf(error, m_path); }

Message SqliteEventStore::damaged() const { return Message("store.damaged").with("path", convert::fromQt(m_path)); }

template <typename Write>
Message SqliteEventStore::inTransaction(Write write) {
  // Before, so that nothing is written that will not be confirmed; and after, because it may have gone meanwhile.
  if (Message found = m_place.look(m_database); !found.id.empty()) return found;
  if (Message problem = commit(write); !problem.id.empty()) return problem;
  return m_place.look(m_database);
}

template <typename Write>
Message SqliteEventStore::commit(Write write) {
  QSqlQuery query(m_database);
  // Immediate: the lock is had at the start or not at all, never refused half-way.
  if (!query.exec(QStringLiteral("BEGIN IMMEDIATE"))) return trouble(query.lastError());
  Message problem;
  if (!write(query)) {
    problem = trouble(query.lastError());
  } else {
    query.finish();
    if (query.exec(QStringLiteral("COMMIT"))) return {};
    problem = trouble(query.lastError());
  }
  query.finish();
  query.exec(QStringLiteral("ROLLBACK"));
  return problem;
}

Message SqliteEventStore::prepareFile() {
  // A file that the library makes itself is readable for everybody; its log and index inherit the rights of an existing
  // file. The library itself reports a place where no file can be made.
  if (!QFileInfo::exists(m_path)) {
    if (const auto made = files::machineDisk()->create(m_path); made) (void)made.value()->finish();
  }
  m_database.setDatabaseName(m_path);
  m_database.setConnectOptions(QStringLiteral("QSQLITE_BUSY_TIMEOUT=%1").arg(kBusyMilliseconds));
  if (!m_database.open()) return trouble(m_database.lastError());
  QSqlQuery query(m_database);
  if (!query.exec(QStringLiteral("PRAGMA synchronous = FULL"))) return trouble(query.lastError());
  if (Message problem = bringUpToDate(); !problem.id.empty()) return problem;
  // The log is there from the first write on.
  m_place.remember(m_path);
  return readFormerDevice();
}

Message SqliteEventStore::bringUpToDate() {
  const std::string place = convert::fromQt(m_path);
  QSqlQuery query(m_database);
  // Asked again through the library: the newest header may still be in the write-ahead log.
  if (!query.exec(QStringLiteral("SELECT application_id, user_version, (SELECT count(*) FROM sqlite_schema) "
                                 "FROM pragma_application_id, pragma_user_version")) ||
      !query.next()) {
    return trouble(query.lastError());
  }
  const int application = query.value(0).toInt();
  const int version = query.value(1).toInt();
  const bool empty = query.value(2).toInt() == 0;
  query.finish();
  if (version > kSchemaVersion && application == kApplicationId) return newerMessage(place, version);
  const bool fresh = empty && version == 0 && (application == 0 || application == kApplicationId);
  const bool ours = application == kApplicationId && version >= 1 && version <= kSchemaVersion;
  if (!fresh && !ours) return Message("store.other-program").with("path", place);

  if (!query.exec(QStringLiteral("PRAGMA journal_mode = WAL"))) return trouble(query.lastError());
  query.finish();
  if (Message problem = readThrough(); !problem.id.empty()) return problem;
  m_made = fresh;
  // A record that cannot be written is reported when it is opened, and not at the first act.
  return commit([&](QSqlQuery& write) {
    if (version < kSchemaVersion && !migrate(write, version)) return false;
    return write.exec(QStringLiteral("DELETE FROM bench WHERE false"));
  });
}

// A large record takes longer to read through than to open. Then only its length is held against what it says of
// itself, and each page is looked at when it is read; the rest is for checkWhole.
Message SqliteEventStore::readThrough() {
  QSqlQuery query(m_database);
  const qint64 size = QFileInfo(m_path).size();
  if (size > kReadThrough) {
    if (!query.exec(QStringLiteral("PRAGMA cell_size_check = ON"))) return trouble(query.lastError());
    query.finish();
    if (QFileInfo(m_path + QStringLiteral("-wal")).size() > 0) return {};
    if (!query.exec(QStringLiteral("SELECT page_count * page_size FROM pragma_page_count, pragma_page_size")) ||
        !query.next()) {
      return trouble(query.lastError());
    }
    return query.value(0).toLongLong() > size ? damaged() : Message();
  }
  if (!query.exec(QStringLiteral("PRAGMA quick_check(1)")) || !query.next()) return trouble(query.lastError());
  return query.value(0).toString() == QLatin1String("ok") ? Message() : damaged();
}

Message SqliteEventStore::checkWhole(const QString& path) {
  const QString connection = QStringLiteral("check-") + convert::toQt(convert::newUuid(0));
  Message problem;
  {
    QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), connection);
    database.setDatabaseName(path);
    database.setConnectOptions(QStringLiteral("QSQLITE_OPEN_READONLY;QSQLITE_BUSY_TIMEOUT=%1").arg(kBusyMilliseconds));
    QSqlQuery query(database.open() ? QSqlQuery(database) : QSqlQuery());
    if (!database.isOpen()) {
      problem = troubleOf(database.lastError(), path);
    } else if (!query.exec(QStringLiteral("PRAGMA quick_check(1)")) || !query.next()) {
      problem = troubleOf(query.lastError(), path);
    } else if (query.value(0).toString() != QLatin1String("ok")) {
      problem = Message("store.damaged").with("path", convert::fromQt(path));
    }
  }
  QSqlDatabase::removeDatabase(connection);
  return problem;
}

Message SqliteEventStore::readFormerDevice() {
  QSqlQuery query(m_database);
  if (!query.exec(QStringLiteral("SELECT device_id FROM bench WHERE only = 1"))) return trouble(query.lastError());
  if (query.next()) m_formerDevice = textAt(query, 0);
  return {};
}

// Where it stays it is taken out the next time.
void SqliteEventStore::forgetFormerDevice() {
  static_cast<void>(inTransaction([](QSqlQuery& query) { return query.exec(QStringLiteral("DELETE FROM bench")); }));
}

// One that is there stays, unless its bytes are no longer those its hash was made of and these are.
bool SqliteEventStore::keepText(QSqlQuery& query, const StoredText& text) const {
  const QVariantList values = {bound(text.kind), bound(text.name), boundBytes(text.body), bound(text.hash)};
  if (!run(query,
           QStringLiteral("INSERT INTO texts(kind, name, body, hash) VALUES(?, ?, ?, ?) ON CONFLICT(hash) DO NOTHING"),
           values)) {
    return false;
  }
  if (query.numRowsAffected() > 0) return true;
  if (!run(query, QStringLiteral("SELECT body FROM texts WHERE hash = ?"), {bound(text.hash)}) || !query.next()) {
    return false;
  }
  const std::string there = convert::fromBytes(query.value(0).toByteArray());
  query.finish();
  if (there == text.body || convert::contentHash(there) == text.hash || convert::contentHash(text.body) != text.hash) {
    return true;
  }
  return run(query, QStringLiteral("UPDATE texts SET kind = ?, name = ?, body = ? WHERE hash = ?"), values);
}

bool SqliteEventStore::insertEvent(QSqlQuery& query, const Event& event) const {
  query.addBindValue(bound(event.eventId));
  query.addBindValue(bound(event.deviceId));
  query.addBindValue(bound(event.deviceSequence));
  query.addBindValue(bound(core::record::text(event.hlc)));
  query.addBindValue(bound(event.intentId));
  query.addBindValue(bound(event.stream));
  query.addBindValue(bound(event.type));
  query.addBindValue(bound(std::int64_t{event.version}));
  query.addBindValue(bound(event.occurredUtc));
  query.addBindValue(bound(event.recordedUtc));
  query.addBindValue(bound(event.zone));
  query.addBindValue(bound(event.bootId));
  query.addBindValue(bound(event.boottimeNanoseconds));
  query.addBindValue(bound(std::int64_t{event.synced ? 1 : 0}));
  query.addBindValue(bound(core::base::writeJson(event.payload, 0)));
  return query.exec();
}

Result<Done, StoreError> SqliteEventStore::append(const std::vector<Event>& events,
                                                  const std::vector<StoredText>& texts) {
  Message problem = inTransaction([&](QSqlQuery& query) {
    for (const StoredText& text : texts) {
      if (!keepText(query, text)) return false;
    }
    if (!query.prepare(QStringLiteral("INSERT INTO events(%1) VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) "
                                      "ON CONFLICT(event_id) DO NOTHING")
                           .arg(QLatin1String(kEventColumns)))) {
      return false;
    }
    for (const Event& event : events) {
      if (!insertEvent(query, event)) return false;
    }
    return true;
  });
  if (!problem.id.empty()) return problem;
  return Done{};
}

Result<std::vector<Event>, StoreError> SqliteEventStore::load(const std::string& stream) {
  QSqlQuery query(m_database);
  query.setForwardOnly(true);
  if (!run(query,
           QStringLiteral("SELECT %1 FROM events WHERE stream = ? ORDER BY hlc, device_id, device_seq")
               .arg(QLatin1String(kEventColumns)),
           {bound(stream)})) {
    return trouble(query.lastError());
  }
  std::vector<Event> events;
  while (query.next()) {
    std::optional<Event> event = eventAt(query);
    if (!event) return damaged();
    events.push_back(std::move(*event));
  }
  if (query.lastError().isValid()) return trouble(query.lastError());
  return events;
}

Result<core::record::Feed, StoreError> SqliteEventStore::since(const std::string& cursor, std::size_t most) {
  QSqlQuery query(m_database);
  query.setForwardOnly(true);
  // Rows are numbered as they come in and none is ever taken out.
  if (!run(query,
           QStringLiteral("SELECT %1, rowid FROM events WHERE rowid > ? ORDER BY rowid LIMIT ?")
               .arg(QLatin1String(kEventColumns)),
           {convert::toQt(cursor).toLongLong(), static_cast<qint64>(most)})) {
    return trouble(query.lastError());
  }
  core::record::Feed feed{{}, cursor};
  while (query.next()) {
    std::optional<Event> event = eventAt(query);
    if (!event) return damaged();
    feed.events.push_back(std::move(*event));
    feed.cursor = textAt(query, kEventColumnCount);
  }
  if (query.lastError().isValid()) return trouble(query.lastError());
  return feed;
}

Result<std::vector<std::string>, StoreError> SqliteEventStore::streams() {
  QSqlQuery query(m_database);
  query.setForwardOnly(true);
  if (!query.exec(QLatin1String(kEachStream) + QStringLiteral("SELECT name FROM each WHERE name IS NOT NULL"))) {
    return trouble(query.lastError());
  }
  std::vector<std::string> streams;
  while (query.next()) streams.push_back(textAt(query, 0));
  if (query.lastError().isValid()) return trouble(query.lastError());
  return streams;
}

Result<std::optional<StoredText>, StoreError> SqliteEventStore::text(const std::string& hash) {
  QSqlQuery query(m_database);
  if (!run(query, QStringLiteral("SELECT hash, kind, name, body FROM texts WHERE hash = ?"), {bound(hash)})) {
    return trouble(query.lastError());
  }
  if (!query.next()) {
    if (query.lastError().isValid()) return trouble(query.lastError());
    return std::optional<StoredText>();
  }
  return std::optional<StoredText>(
      {textAt(query, 0), textAt(query, 1), textAt(query, 2), convert::fromBytes(query.value(3).toByteArray())});
}

Result<std::vector<core::record::StreamHead>, StoreError> SqliteEventStore::heads() {
  QSqlQuery query(m_database);
  query.setForwardOnly(true);
  // Rows are numbered as they come in and none is ever taken out.
  if (!query.exec(QLatin1String(kEachStream) +
                  QStringLiteral("SELECT name, (SELECT event_id FROM events WHERE rowid = (SELECT max(rowid) FROM "
                                 "events WHERE stream = name)) FROM each WHERE name IS NOT NULL"))) {
    return trouble(query.lastError());
  }
  std::vector<core::record::StreamHead> heads;
  while (query.next()) heads.push_back({textAt(query, 0), textAt(query, 1)});
  if (query.lastError().isValid()) return trouble(query.lastError());
  return heads;
}

Result<std::optional<Event>, StoreError> SqliteEventStore::find(const std::string& eventId) {
  QSqlQuery query(m_database);
  if (!run(query, QStringLiteral("SELECT %1 FROM events WHERE event_id = ?").arg(QLatin1String(kEventColumns)),
           {bound(eventId)})) {
    return trouble(query.lastError());
  }
  if (!query.next()) {
    if (query.lastError().isValid()) return trouble(query.lastError());
    return std::optional<Event>();
  }
  std::optional<Event> event = eventAt(query);
  if (!event) return damaged();
  return event;
}

Result<std::string, StoreError> SqliteEventStore::written(const std::string& deviceId, std::int64_t deviceSequence) {
  QSqlQuery query(m_database);
  if (!run(query, QStringLiteral("SELECT event_id FROM events WHERE device_id = ? AND device_seq = ?"),
           {bound(deviceId), bound(deviceSequence)})) {
    return trouble(query.lastError());
  }
  if (query.next()) return textAt(query, 0);
  if (query.lastError().isValid()) return trouble(query.lastError());
  return std::string();
}

Result<std::string, StoreError> SqliteEventStore::newestIntentOf(const std::string& deviceId) {
  QSqlQuery query(m_database);
  if (!run(query,
           QStringLiteral(
               "SELECT intent_id FROM events WHERE device_id = ? AND device_seq <= ? AND (stream GLOB 'job/*' "
               "OR stream GLOB 'bench/*') ORDER BY device_seq DESC LIMIT 1"),
           {bound(deviceId), bound(core::record::kLastOwnSequence)})) {
    return trouble(query.lastError());
  }
  if (query.next()) return textAt(query, 0);
  if (query.lastError().isValid()) return trouble(query.lastError());
  return std::string();
}

Result<std::vector<core::record::Summary>, StoreError> SqliteEventStore::summaries() {
  QSqlQuery query(m_database);
  query.setForwardOnly(true);
  if (!query.exec(QStringLiteral("SELECT stream, stamp, body FROM summaries"))) return trouble(query.lastError());
  std::vector<core::record::Summary> summaries;
  while (query.next()) summaries.push_back({textAt(query, 0), textAt(query, 1), textAt(query, 2), ""});
  if (query.lastError().isValid()) return trouble(query.lastError());
  return summaries;
}

Result<std::vector<core::record::Summary>, StoreError> SqliteEventStore::summaryDetails() {
  QSqlQuery query(m_database);
  query.setForwardOnly(true);
  if (!query.exec(QStringLiteral("SELECT stream, detail FROM summary_details"))) return trouble(query.lastError());
  std::vector<core::record::Summary> details;
  while (query.next()) details.push_back({textAt(query, 0), "", "", textAt(query, 1)});
  if (query.lastError().isValid()) return trouble(query.lastError());
  return details;
}

Result<Done, StoreError> SqliteEventStore::keepSummaries(const std::vector<core::record::Summary>& summaries) {
  Message problem = inTransaction([&](QSqlQuery& query) {
    if (!query.prepare(QStringLiteral("INSERT OR REPLACE INTO summaries(stream, stamp, body) VALUES(?, ?, ?)"))) {
      return false;
    }
    for (const core::record::Summary& summary : summaries) {
      query.addBindValue(bound(summary.stream));
      query.addBindValue(bound(summary.stamp));
      query.addBindValue(bound(summary.body));
      if (!query.exec()) return false;
    }
    if (!query.prepare(QStringLiteral("INSERT OR REPLACE INTO summary_details(stream, detail) VALUES(?, ?)"))) {
      return false;
    }
    for (const core::record::Summary& summary : summaries) {
      query.addBindValue(bound(summary.stream));
      query.addBindValue(bound(summary.detail));
      if (!query.exec()) return false;
    }
    return true;
  });
  if (!problem.id.empty()) return problem;
  return Done{};
}

Result<SqliteEventStore::Position, StoreError> SqliteEventStore::position(const std::string& deviceId) {
  QSqlQuery query(m_database);
  // Only well-formed clocks are used: one damaged row is no reason to begin at zero.
  static const QString kClock = QStringLiteral("[0-9]").repeated(16) + u'-' + QStringLiteral("[0-9]").repeated(6);
  if (!run(query,
           QStringLiteral(
               "SELECT coalesce((SELECT max(device_seq) FROM events WHERE device_id = ? AND device_seq <= ?), 0), "
               "coalesce((SELECT hlc FROM events WHERE hlc GLOB ? AND hlc <= ? ORDER BY hlc DESC LIMIT 1), '')"),
           {bound(deviceId), bound(core::record::kLastOwnSequence), kClock,
            bound(core::record::text({core::record::kMostMilliseconds, core::record::kMostCounts}))}) ||
      !query.next()) {
    return trouble(query.lastError());
  }
  return Position{query.value(0).toLongLong(), core::record::parseHlc(textAt(query, 1))};
}

Result<Done, StoreError> SqliteEventStore::logClock(const std::string& deviceId, const std::string& kind,
                                                    const core::waits::ClockReading& reading) {
  Message problem = inTransaction([&](QSqlQuery& query) {
    // The earlier heartbeats of a boot add nothing to the newest, unless the wall clock was set back in between or is
    // no longer steered.
    return run(query,
               QStringLiteral("DELETE FROM clock_log WHERE number = (SELECT max(number) FROM clock_log WHERE "
                              "device_id = ?) AND kind = 'heartbeat' AND ? = 'heartbeat' AND boot_id = ? AND "
                              "utc <= ? AND boottime_ns <= ? AND synced <= ?"),
               {bound(deviceId), bound(kind), bound(reading.bootId), bound(reading.utcMilliseconds),
                bound(reading.boottimeNanoseconds), bound(std::int64_t{reading.synced ? 1 : 0})}) &&
           run(query,
               QStringLiteral("INSERT INTO clock_log(device_id, kind, utc, boot_id, boottime_ns, synced) "
                              "VALUES(?, ?, ?, ?, ?, ?)"),
               {bound(deviceId), bound(kind), bound(reading.utcMilliseconds), bound(reading.bootId),
                bound(reading.boottimeNanoseconds), bound(std::int64_t{reading.synced ? 1 : 0})});
  });
  if (!problem.id.empty()) return problem;
  return Done{};
}

Result<core::waits::ClockLog, StoreError> SqliteEventStore::clockLog(const std::string& deviceId) {
  QSqlQuery query(m_database);
  query.setForwardOnly(true);
  if (!run(
          query,
          QStringLiteral("SELECT utc, boot_id, boottime_ns, synced FROM clock_log WHERE device_id = ? ORDER BY number"),
          {bound(deviceId)})) {
    return trouble(query.lastError());
  }
  core::waits::ClockLog log;
  while (query.next()) log.heartbeats.push_back(readingAt(query, 0));
  if (query.lastError().isValid()) return trouble(query.lastError());
  return log;
}

}  // namespace app::stores
