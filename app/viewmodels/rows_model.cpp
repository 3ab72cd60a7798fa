#include "app/viewmodels/rows_model.h"

#include <QDateTime>
#include <QFileInfo>
#include <QLocale>

namespace app::viewmodels {

void RowsModel::show(std::vector<Row> rows) {
  if (rows == m_rows) return;
  if (rows.size() != m_rows.size()) {
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
    emit countChanged();
    return;
  }
  m_rows = std::move(rows);
  emit dataChanged(index(0), index(count() - 1));
}

QVariant RowsModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= count()) return {};
  const Row& row = m_rows[static_cast<std::size_t>(index.row())];
  switch (role) {
    case Title: return row.title;
    case Of: return row.of;
    case Value: return row.value;
    case Note: return row.note;
    case Problem: return row.problem;
    case Chosen: return row.chosen;
    case Act: return row.act;
    case Picture: return row.picture;
    case Missing: return row.missing;
    case Notice: return row.notice;
    case Sample: return QVariant::fromValue(row.sample);
    default: return {};
  }
}

QHash<int, QByteArray> RowsModel::roleNames() const {
  return {{Title, "title"},     {Of, "of"},         {Value, "value"},  {Note, "note"},
          {Problem, "problem"}, {Chosen, "chosen"}, {Act, "act"},      {Picture, "picture"},
          {Missing, "missing"}, {Notice, "notice"}, {Sample, "sample"}};
}

std::vector<RowsModel::Row> rowsOfFiles(const QStringList& paths) {
  std::vector<RowsModel::Row> rows;
  for (const QString& path : paths) {
    const QFileInfo info(path);
    RowsModel::Row row;
    row.title = info.fileName();
    row.note = info.absolutePath();
    row.value = QLocale().toString(info.lastModified(), QLocale::ShortFormat);
    rows.push_back(std::move(row));
  }
  return rows;
}

}  // namespace app::viewmodels
