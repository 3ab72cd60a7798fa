#include "app/viewmodels/bench/places_model.h"

#include <algorithm>
#include <cmath>

#include "app/viewmodels/ahead.h"
#include "app/viewmodels/names.h"
#include "app/viewmodels/standing.h"
#include "app/viewmodels/times.h"
#include "core/jobs/agenda.h"

namespace app::viewmodels {

PlacesModel::PlacesModel(workbench::Workbench& workbench, const clocks::Clock& clock, const ShelfModel& shelf,
                         QObject* parent)
    : QAbstractListModel(parent),
      m_workbench(workbench),
      m_clock(clock),
      m_shelf(shelf),
      m_look([this](const core::intents::Intent& intent) { ask(intent); }) {}

void PlacesModel::refresh(const std::string& jobId) {
  m_job = jobId;
  std::vector<Row> rows;
  std::vector<Row> pieces;
  for (const workbench::JobEntry& entry : m_workbench.jobs()) {
    const bool isDone = entry.place == core::jobs::BenchPlace::Kind::Finished;
    if (entry.id == m_job || entry.archived || isDone || !entry.trouble.id.empty()) continue;
    const bool waits = std::any_of(m_shelf.rows().begin(), m_shelf.rows().end(), [&](const ShelfModel::Row& row) {
      return row.job == entry.id && !row.piece.isEmpty();
    });
    if (entry.id == m_left) {
      rows.push_back(pieceRow(entry));
      rows.back().isReturn = true;
    } else if (!waits) {
      pieces.push_back(pieceRow(entry));
    }
  }
  for (const ShelfModel::Row& row : m_shelf.rows()) rows.push_back({row, {}, true, false});
  rows.insert(rows.end(), pieces.begin(), pieces.end());
  // The keys of a page stay the same items: a finger may be on one.
  const int before = rowCount();
  const int page = std::clamp(m_page, 0, std::max(0, (static_cast<int>(rows.size()) - 1) / kPageSize));
  const auto left = static_cast<int>(rows.size()) - page * kPageSize;
  const int after = std::clamp(left, 0, kPageSize);
  if (after > before) beginInsertRows({}, before, after - 1);
  if (after < before) beginRemoveRows({}, after, before - 1);
  m_rows = std::move(rows);
  m_page = page;
  if (after > before) endInsertRows();
  if (after < before) endRemoveRows();
  if (const int kept = std::min(before, after); kept > 0) emit dataChanged(index(0), index(kept - 1));
  showTest();
  if (m_lookedAt) showAhead();
  emit changed();
}

PlacesModel::Row PlacesModel::pieceRow(const workbench::JobEntry& entry) {
  Row row;
  row.shown.job = entry.id;
  row.shown.title = row.shown.piece = pieceName(nameOf(entry).toStdString());
  row.act = standingOf(m_workbench, entry, m_clock.zone()).act;
  // One at rest is folded for its picture only where it is looked at, and where there are few.
  constexpr std::size_t kFew = 12;
  if (!m_lookedAt || (entry.rests && m_workbench.jobs().size() > kFew)) return row;
  if (const auto* state = m_workbench.job(entry.id)) row.shown.wet.drawing = pieceOf(m_drawn[entry.id], *state);
  return row;
}

void PlacesModel::showAhead() {
  m_piece.clear();
  m_ahead.clear();
  m_today.clear();
  if (m_workbench.job(m_job) == nullptr) return;
  const core::jobs::JobAt job = m_workbench.at(m_job);
  m_piece = pieceName(job.state().plan->design.job.title);
  const core::jobs::BenchPlace place = core::jobs::benchPlace(job);
  if (place.kind == core::jobs::BenchPlace::Kind::Finished) {
    m_ahead = tr("every step is done");
    return;
  }
  const Ahead ahead = aheadOf(core::jobs::agendaOf(job), job.now().utcMilliseconds, m_clock.zone());
  m_ahead = ahead.ready;
  m_today = ahead.today;
}

void PlacesModel::ask(const core::intents::Intent& intent) {
  const std::string job = m_testJob;
  const core::base::Message refusal = m_workbench.submit(core::intents::OfJob{job, intent});
  if (!refusal.id.empty()) {
    emit refused(words::text(refusal, core::units::UnitSystem::Millimetres));
    return;
  }
  const auto* look = std::get_if<core::intents::LookAt>(&intent);
  showTest();
  // What was found opens the way at that piece; "not yet" leaves the maker where he was.
  if (look != nullptr && look->verdict != core::intents::Verdict::NotYet) emit goTo(job);
}

void PlacesModel::showTest() {
  const auto* state = m_testWait.empty() ? nullptr : m_workbench.job(m_testJob);
  if (state == nullptr) {
    m_look.show(nullptr, m_clock.zone());
    return;
  }
  const core::jobs::JobAt job = m_workbench.at(m_testJob);
  m_look.show(&job, m_clock.zone(), m_testWait);
}

QString PlacesModel::place() const { return pages() < 2 ? QString() : tr("%1 of %2").arg(m_page + 1).arg(pages()); }

int PlacesModel::rowCount(const QModelIndex& parent) const {
  if (parent.isValid()) return 0;
  return std::clamp(static_cast<int>(m_rows.size()) - m_page * kPageSize, 0, kPageSize);
}

QVariant PlacesModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const Row& row = m_rows[first() + static_cast<std::size_t>(index.row())];
  switch (role) {
    case IsWait: return row.isWait;
    case IsReturn: return row.isReturn;
    case ShelfModel::Brief: return row.isWait ? row.shown.told.brief : row.act;
    default: return ShelfModel::cell(row.shown, role);
  }
}

QHash<int, QByteArray> PlacesModel::roleNames() const {
  QHash<int, QByteArray> names = ShelfModel::roles();
  names.insert(IsWait, "isWait");
  names.insert(IsReturn, "isReturn");
  return names;
}

bool PlacesModel::choose(int row) {
  if (row < 0 || row >= rowCount()) return false;
  const Row chosen = m_rows[first() + static_cast<std::size_t>(row)];
  if (!chosen.isWait || !chosen.shown.canTest) {
    emit goTo(chosen.shown.job);
    return false;
  }
  m_testJob = chosen.shown.job;
  m_testWait = chosen.shown.id;
  showTest();
  return true;
}

void PlacesModel::turnPage() {
  if (pages() < 2) return;
  beginResetModel();
  m_page = (m_page + 1) % pages();
  endResetModel();
  emit changed();
}

void PlacesModel::enter() {
  m_lookedAt = true;
  if (m_page > 0) {
    beginResetModel();
    m_page = 0;
    endResetModel();
  }
  refresh(m_job);
}

void PlacesModel::leave() { m_lookedAt = false; }

}  // namespace app::viewmodels
