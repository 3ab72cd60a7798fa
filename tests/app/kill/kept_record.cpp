#include "tests/app/kill/kept_record.h"

#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>

namespace kill_loop {
namespace {

void readEvents(QSqlQuery& query, KeptRecord& record) {
  std::map<std::string, std::size_t> places;
  std::int64_t expected = 1;
  while (query.next()) {
    record.countHasNoGap = record.countHasNoGap && query.value(0).toLongLong() == expected++;
    const std::string intent = query.value(1).toString().toStdString();
    const std::string type = query.value(2).toString().toStdString();
    const auto [place, isNew] = places.emplace(intent, record.acts.size());
    if (isNew) record.acts.push_back({intent, {}});
    record.acts[place->second].types.push_back(type);
    if (type != "StepDone") continue;
    const QJsonObject payload = QJsonDocument::fromJson(query.value(4).toString().toUtf8()).object();
    record.doneAt[payload["step"].toString().toStdString()] = query.value(3).toLongLong();
  }
}

KeptRecord readOpen(QSqlDatabase& database, std::string& error) {
  KeptRecord record;
  QSqlQuery query(database);
  const auto ask = [&](const char* statement) {
    if (query.exec(QString::fromLatin1(statement))) return true;
    error = query.lastError().text().toStdString();
    return false;
  };
  if (!ask("PRAGMA integrity_check") || !query.next()) return record;
  record.integrity = query.value(0).toString().toStdString();
  if (!ask("SELECT count(*) FROM sqlite_schema WHERE name = 'events'") || !query.next()) return record;
  if (query.value(0).toInt() == 0) return record;
  if (ask("SELECT device_seq, intent_id, type, boottime_ns, payload FROM events ORDER BY device_seq")) {
    readEvents(query, record);
  }
  return record;
}

}  // namespace

KeptRecord readRecord(const QString& path, std::string& error) {
  KeptRecord record;
  record.integrity = "ok";
  if (!QFileInfo::exists(path)) return record;
  {
    QSqlDatabase database = QSqlDatabase::addDatabase("QSQLITE", "judge");
    database.setDatabaseName(path);
    if (database.open()) {
      record = readOpen(database, error);
    } else {
      error = database.lastError().text().toStdString();
    }
  }
  QSqlDatabase::removeDatabase("judge");
  return record;
}

}  // namespace kill_loop
