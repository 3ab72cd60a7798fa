#include "app/viewmodels/bench/jobs_model.h"

#include <algorithm>

#include "app/convert/text.h"

namespace app::viewmodels {

JobsModel::JobsModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : QAbstractListModel(parent), m_workbench(workbench), m_clock(clock) {
  connect(&workbench, &workbench::Workbench::jobChanged, this,
          [this](const QString& jobId) { m_pictures.forget(convert::fromQt(jobId)); });
}

void JobsModel::refresh() {
  std::vector<Row> rows;
  for (const workbench::JobEntry& entry : m_workbench.jobs()) {
    if (!entry.archived) rows.push_back(rowOf(entry));
  }
  if (rows == m_rows) return;
  beginResetModel();
  m_rows = std::move(rows);
  m_page = std::clamp(m_page, 0, std::max(0, pages() - 1));
  endResetModel();
  emit changed();
}

JobsModel::Row JobsModel::rowOf(const workbench::JobEntry& entry) const {
  return {entry.id, nameOf(entry), standingOf(m_workbench, entry, m_clock.zone())};
}

JobsModel::Row JobsModel::chosenRow() const {
  const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&](const Row& row) { return row.id == m_chosen; });
  return found == m_rows.end() ? Row() : *found;
}

PieceDrawing JobsModel::chosenPicture() const {
  return m_chosen.empty() ? PieceDrawing() : m_pictures.ofJob(m_workbench, m_chosen);
}

int JobsModel::pages() const { return (static_cast<int>(m_rows.size()) + kPageSize - 1) / kPageSize; }

QString JobsModel::place() const { return pages() < 2 ? QString() : tr("page %1 of %2").arg(m_page + 1).arg(pages()); }

int JobsModel::rowCount(const QModelIndex& parent) const {
  if (parent.isValid()) return 0;
  return std::min(kPageSize, static_cast<int>(m_rows.size()) - m_page * kPageSize);
}

QVariant JobsModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const Row& row = m_rows[first() + static_cast<std::size_t>(index.row())];
  switch (role) {
    case Title: return row.title;
    case Act: return row.standing.act;
    case Wait: return row.standing.runs();
    case Window: return row.standing.window;
    case Done: return static_cast<int>(row.standing.done);
    case All: return static_cast<int>(row.standing.all);
    case Picture: return QVariant::fromValue(m_pictures.ofJob(m_workbench, row.id));
    default: return {};
  }
}

QHash<int, QByteArray> JobsModel::roleNames() const {
  return {{Title, "title"}, {Act, "act"}, {Wait, "wait"},      {Window, "window"},
          {Done, "done"},   {All, "all"}, {Picture, "picture"}};
}

void JobsModel::choose(int row) {
  if (row < 0 || row >= rowCount()) return;
  m_chosen = m_rows[first() + static_cast<std::size_t>(row)].id;
  emit chosen(m_chosen);
  emit changed();
}

void JobsModel::turnPage() {
  if (pages() < 2) return;
  beginResetModel();
  m_page = (m_page + 1) % pages();
  endResetModel();
  emit changed();
}

}  // namespace app::viewmodels
