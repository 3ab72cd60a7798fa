#pragma once
// The record in one SQLite file: write-ahead log, every commit forced to the disk, one transaction an append. Never
// deletes or replaces the maker's file; where it cannot be used, returns why and leaves it as it is. Where the file was
// removed or replaced while it was open, nothing is confirmed any more: every write returns what RecordPlace found.
#include <QSqlDatabase>
#include <QString>
#include <memory>
#include <string>

#include "app/stores/record_place.h"
#include "core/record/event_store.h"

class QSqlQuery;

namespace app::stores {

// Belongs to the thread that opened it.
class SqliteEventStore : public core::record::EventStore {
 public:
  // A record up to this size is read through when it is opened; checkWhole does so for any, beside the work.
  static constexpr qint64 kReadThrough = 8 * 1024 * 1024;
  // Reads a whole record through by a connection of its own, in any thread. Returns the store's trouble, or an empty
  // message.
  static core::base::Message checkWhole(const QString& path);

  // How long a locked file is waited for before store.locked is returned.
  static constexpr int kBusyMilliseconds = 2000;

  // Makes the file where there is none, brings an older one up to date. The errors are those of
  // troubleWithFile and troubleOf, and store.no-driver.
  static core::base::Result<std::unique_ptr<SqliteEventStore>, core::record::StoreError> open(const QString& path);

  ~SqliteEventStore() override;
  SqliteEventStore(const SqliteEventStore&) = delete;
  SqliteEventStore& operator=(const SqliteEventStore&) = delete;

  // Returns whether the record was made by this opening.
  bool made() const { return m_made; }
  // The device a record of an earlier version named as its own; "" where it names none.
  const std::string& formerDevice() const { return m_formerDevice; }
  void forgetFormerDevice();

  core::base::Result<core::record::Done, core::record::StoreError> append(
      const std::vector<core::record::Event>& events, const std::vector<core::record::StoredText>& texts) override;
  core::base::Result<core::record::Feed, core::record::StoreError> since(const std::string& cursor,
                                                                         std::size_t most) override;
  core::base::Result<std::vector<core::record::Event>, core::record::StoreError> load(
      const std::string& stream) override;
  core::base::Result<std::vector<std::string>, core::record::StoreError> streams() override;
  core::base::Result<std::optional<core::record::StoredText>, core::record::StoreError> text(
      const std::string& hash) override;
  core::base::Result<std::vector<core::record::StreamHead>, core::record::StoreError> heads() override;
  core::base::Result<std::optional<core::record::Event>, core::record::StoreError> find(
      const std::string& eventId) override;
  core::base::Result<std::string, core::record::StoreError> written(const std::string& deviceId,
                                                                    std::int64_t deviceSequence) override;
  core::base::Result<std::string, core::record::StoreError> newestIntentOf(const std::string& deviceId) override;
  core::base::Result<std::vector<core::record::Summary>, core::record::StoreError> summaries() override;
  core::base::Result<std::vector<core::record::Summary>, core::record::StoreError> summaryDetails() override;
  core::base::Result<core::record::Done, core::record::StoreError> keepSummaries(
      const std::vector<core::record::Summary>& summaries) override;
  core::base::Result<Position, core::record::StoreError> position(const std::string& deviceId) override;
  // Heartbeats that follow each other in one boot share one row, that of the newest.
  core::base::Result<core::record::Done, core::record::StoreError> logClock(
      const std::string& deviceId, const std::string& kind, const core::waits::ClockReading& reading) override;
  core::base::Result<core::waits::ClockLog, core::record::StoreError> clockLog(const std::string& deviceId) override;

 private:
  SqliteEventStore(QString path, QString connection);
  core::base::Message prepareFile();
  core::base::Message bringUpToDate();
  core::base::Message readThrough();
  core::base::Message readFormerDevice();
  core::base::Message damaged() const;
  bool insertEvent(QSqlQuery& query, const core::record::Event& event) const;
  bool keepText(QSqlQuery& query, const core::record::StoredText& text) const;
  core::base::Message trouble(const QSqlError& error) const;
  // Runs `write` between BEGIN IMMEDIATE and COMMIT; rolls back where either fails.
  template <typename Write>
  core::base::Message inTransaction(Write write);
  template <typename Write>
  core::base::Message commit(Write write);

  QString m_path;
  QString m_connection;
  QSqlDatabase m_database;
  std::string m_formerDevice;
  bool m_made = false;
  RecordPlace m_place;
};

}  // namespace app::stores
