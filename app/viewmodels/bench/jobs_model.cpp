#include "app/viewmodels/bench/jobs_model.h"

#include <algorithm>

#include "app/viewmodels/standing.h"

namespace app::viewmodels {

JobsModel::JobsModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : QAbstractListModel(parent), m_workbench(workbench), m_clock(clock) {}

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
  const Standing standing = standingOf(m_workbench, entry, m_clock.zone());
  return {entry.id, nameOf(entry), standing.where, standing.runs};
}

JobsModel::Row JobsModel::chosenRow() const {
  const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&](const Row& row) { return row.id == m_chosen; });
  return found == m_rows.end() ? Row() : *found;
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
    case Where: return row.where;
    case Runs: return row.runs;
    default: return {};
  }
}

QHash<int, QByteArray> JobsModel::roleNames() const { return {{Title, "title"}, {Where, "where"}, {Runs, "runs"}}; }

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
