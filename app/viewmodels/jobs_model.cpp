#include "app/viewmodels/jobs_model.h"

#include <algorithm>

#include "app/convert/text.h"
#include "app/viewmodels/times.h"
#include "app/words/words.h"

namespace app::viewmodels {

using convert::toQt;
using core::record::BenchPlace;

JobsModel::JobsModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : QAbstractListModel(parent), m_workbench(workbench), m_clock(clock) {}

void JobsModel::refresh() {
  std::vector<Row> rows;
  for (const workbench::JobEntry& entry : m_workbench.jobs()) rows.push_back(rowOf(entry));
  if (rows == m_rows) return;
  beginResetModel();
  m_rows = std::move(rows);
  m_page = std::clamp(m_page, 0, std::max(0, pages() - 1));
  endResetModel();
  emit changed();
}

JobsModel::Row JobsModel::rowOf(const workbench::JobEntry& entry) const {
  Row row;
  row.id = entry.id;
  row.title = toQt(entry.title.empty() ? entry.reference : entry.title);
  if (!entry.trouble.id.empty()) {
    row.where = words::text(entry.trouble, core::units::UnitSystem::Millimetres);
    return row;
  }
  switch (entry.place) {
    case BenchPlace::Kind::Step: row.where = toQt(entry.step); break;
    case BenchPlace::Kind::Waiting: row.where = tr("waits"); break;
    case BenchPlace::Kind::Missed: row.where = tr("missed: %1").arg(toQt(entry.step)); break;
    case BenchPlace::Kind::Finished: row.where = tr("every step is done"); break;
    case BenchPlace::Kind::Stuck: row.where = tr("nothing can be started"); break;
  }
  row.where = tr("%1 of %2 · %3").arg(entry.done).arg(entry.all).arg(row.where);
  if (entry.rests || m_workbench.job(entry.id) == nullptr) return row;
  const core::record::JobAt job = m_workbench.at(entry.id);
  int running = 0;
  const core::record::RunningWait* next = nullptr;
  core::units::Duration soonest;
  for (const auto& [id, run] : job.state().waits) {
    const auto state = job.waitState(run);
    if (!job.matters(run) || state.phase == core::waits::Phase::Over) continue;
    ++running;
    const auto left = state.opens.likely - state.elapsed.time;
    if (next == nullptr || left < soonest) {
      next = &run;
      soonest = left;
    }
  }
  if (next != nullptr) {
    const auto state = job.waitState(*next);
    row.runs = toQt(next->wait->title) + QStringLiteral(", ") +
               leftText(state.opens.early, state.opens.late, state.elapsed.time);
    if (running > 1) row.runs += tr(", %1 more").arg(running - 1);
  }
  return row;
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
