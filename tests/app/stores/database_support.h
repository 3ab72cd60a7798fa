#pragma once
// What the tests of the record's file do to it behind the store's back.
#include <QFile>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QString>
#include <QVariant>
#include <string>

#include "app/stores/sqlite_event_store.h"
#include "tests/support/catch.h"
#include "tests/support/events.h"

namespace tests {

// Another program's connection to a database file.
class OtherConnection {
 public:
  explicit OtherConnection(const QString& path) : m_name(QStringLiteral("other-") + QString::number(s_count++)) {
    m_database = QSqlDatabase::addDatabase("QSQLITE", m_name);
    m_database.setDatabaseName(path);
    REQUIRE(m_database.open());
  }
  ~OtherConnection() {
    m_database.close();
    m_database = QSqlDatabase();
    QSqlDatabase::removeDatabase(m_name);
  }
  void run(const QString& statement) {
    QSqlQuery query(m_database);
    const bool done = query.exec(statement);
    INFO(statement.toStdString() << ": " << query.lastError().text().toStdString());
    REQUIRE(done);
  }
  // First column of every row, one a line.
  std::string ask(const QString& statement) {
    QSqlQuery query(m_database);
    REQUIRE(query.exec(statement));
    std::string lines;
    while (query.next()) lines += query.value(0).toString().toStdString() + "\n";
    return lines;
  }

 private:
  static inline int s_count = 0;
  QString m_name;
  QSqlDatabase m_database;
};

inline QByteArray bytesOf(const QString& path) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

inline void writeBytes(const QString& path, const QByteArray& bytes) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
  REQUIRE(file.write(bytes) == bytes.size());
}

// The id of what opening says, "" where it opens.
inline std::string troubleAt(const QString& path) {
  const auto opened = app::stores::SqliteEventStore::open(path);
  return opened ? "" : opened.error().id;
}

// A record of some pages, closed.
inline void makeRecord(const QString& path) {
  auto opened = app::stores::SqliteEventStore::open(path);
  REQUIRE(opened.ok());
  for (int act = 1; act <= 12; ++act) {
    const std::string number = std::to_string(act);
    REQUIRE(opened.value()
                ->append({event("tablet", 2 * act, 1000 * act), event("tablet", 2 * act + 1, 1000 * act)},
                         {{"hash-" + number, "technique", "name", std::string(700, 'x') + number}})
                .ok());
    REQUIRE(opened.value()->logClock("tablet", "heartbeat", {1000 * act, "boot-" + number, 5, true}).ok());
  }
}

}  // namespace tests
