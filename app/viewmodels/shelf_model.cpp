#include "app/viewmodels/shelf_model.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "app/convert/text.h"
#include "app/viewmodels/names.h"
#include "app/viewmodels/standing.h"
#include "app/viewmodels/times.h"
#include "core/base/text.h"

namespace app::viewmodels {
namespace {

using core::units::Duration;

// Below this the axis is nearly even, above it each doubling takes the same room.
constexpr double kEvenMinutes = 8;
constexpr int kDots = 20;

struct Tick {
  double minutes;
  const char* name;
};
constexpr std::array kTicks = {Tick{5, "5 min"},  Tick{30, "½ h"},   Tick{120, "2 h"},   Tick{480, "8 h"},
                               Tick{1440, "1 d"}, Tick{4320, "3 d"}, Tick{20160, "2 wk"}};

// The part of a title that tells jobs apart on a shelf: up to the first comma.
QString tagOf(const workbench::JobEntry& job) {
  const QString title = convert::toQt(job.title);
  const QString head = title.section(QLatin1Char(','), 0, 0);
  const QString firstWords = head.section(QLatin1Char(' '), 0, 0);
  return firstWords.isEmpty() ? convert::toQt(job.reference) : firstWords;
}

}  // namespace

ShelfModel::ShelfModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : QAbstractListModel(parent), m_workbench(workbench), m_clock(clock) {}

void ShelfModel::refresh() {
  std::vector<Row> rows;
  for (const workbench::JobEntry& entry : m_workbench.jobs()) {
    if (entry.rests || m_workbench.job(entry.id) == nullptr) continue;
    const core::record::JobAt job = m_workbench.at(entry.id);
    for (const auto& [id, run] : job.state().waits) {
      if (!job.matters(run) || job.waitState(run).phase == core::waits::Phase::Over) continue;
      rows.push_back(rowOf(job, run, tagOf(entry)));
    }
  }
  std::stable_sort(rows.begin(), rows.end(), [](const Row& a, const Row& b) { return a.nextMinutes < b.nextMinutes; });
  const QString unknown = whatIsUnknown();
  if (rows == m_rows && unknown == m_unknown) return;
  m_unknown = unknown;
  // Rows that stay are moved where they are; what is made anew flickers and costs.
  const bool same =
      rows.size() == m_rows.size() &&
      std::equal(rows.begin(), rows.end(), m_rows.begin(), [](const Row& a, const Row& b) { return a.name == b.name; });
  if (!same) beginResetModel();
  m_rows = std::move(rows);
  makeAxis();
  if (!same) {
    endResetModel();
  } else if (count() > 0) {
    emit dataChanged(index(0), index(count() - 1));
  }
  emit changed();
}

QString ShelfModel::whatIsUnknown() const {
  constexpr qsizetype kMostNames = 3;
  const core::base::Message& unread = m_workbench.unread();
  if (core::base::startsWith(unread.id, "store.in-use") || unread.id == "store.locked")
    return tr("What dries is not known: another program works with the record.");
  if (!unread.id.empty()) return tr("What dries is not known: the record cannot be read.");
  if (m_doubted) return tr("What dries is not known: the record is damaged.");
  QStringList names;
  for (const workbench::JobEntry& entry : m_workbench.jobs()) {
    if (!entry.trouble.id.empty() && !entry.archived) names << nameOf(entry);
  }
  if (names.isEmpty()) return {};
  const QString shown = names.mid(0, kMostNames).join(QStringLiteral(", "));
  if (names.size() <= kMostNames) return tr("Not known what dries of: %1").arg(shown);
  return tr("Not known what dries of: %1 and %2 more").arg(shown).arg(names.size() - kMostNames);
}

ShelfModel::Row ShelfModel::rowOf(const core::record::JobAt& job, const core::record::RunningWait& run,
                                  const QString& tag) const {
  const core::waits::WaitState state = job.waitState(run);
  // To the minute: what is nearer than that is said in words.
  const auto left = [&](Duration at) { return std::round((at - state.elapsed.time).inMinutes()); };
  Row row;
  row.name = tag + QStringLiteral(": ") + convert::toQt(run.wait->title);
  row.fromMinutes = left(state.opens.likely);
  row.toMinutes = state.closes ? left(state.closes->likely) : left(state.opens.late);
  row.open = state.holds() && state.phase != core::waits::Phase::Closed;
  row.late = state.phase == core::waits::Phase::Closed;
  row.look = state.phase == core::waits::Phase::Waiting && state.elapsed.time >= state.lookAt;
  row.nextMinutes = row.open || row.fromMinutes <= 0 ? row.toMinutes : row.fromMinutes;
  // The dots stand for the next thing to happen: opening, or the closing once it is open.
  const core::units::Span& next = row.open && state.closes ? *state.closes : state.opens;
  for (int i = 0; i < kDots; ++i) {
    row.dotMinutes.push_back(left(core::units::quantile(next, std::clamp((i + 0.5) / kDots, 0.02, 0.98))));
  }
  if (row.late) {
    row.said = tr("missed");
  } else if (row.open && state.closes) {
    row.said = tr("open, %1").arg(leftText(state.closes->early, state.closes->late, state.elapsed.time));
  } else if (row.open) {
    row.said = tr("test by touch");
  } else if (row.look) {
    row.said = tr("worth a look, %1").arg(leftText(state.opens.early, state.opens.late, state.elapsed.time));
  } else {
    row.said = leftText(state.opens.early, state.opens.late, state.elapsed.time);
  }
  return row;
}

void ShelfModel::makeAxis() {
  m_horizon = 30;
  for (const Row& row : m_rows) {
    m_horizon = std::max({m_horizon, row.toMinutes, row.dotMinutes.empty() ? 0 : row.dotMinutes.back()});
  }
  m_tickNames.clear();
  m_tickPlaces.clear();
  for (const Tick& tick : kTicks) {
    if (tick.minutes > m_horizon) break;
    // A tick that would crowd the one before gives way.
    if (!m_tickPlaces.isEmpty() && place(tick.minutes) - m_tickPlaces.back() < 0.2) continue;
    m_tickNames << tr(tick.name);
    m_tickPlaces << place(tick.minutes);
  }
}

double ShelfModel::place(double minutes) const {
  return std::log1p(std::clamp(minutes, 0.0, m_horizon) / kEvenMinutes) / std::log1p(m_horizon / kEvenMinutes);
}

QString ShelfModel::nextLine() const {
  return m_rows.empty() ? QString() : m_rows.front().name + QStringLiteral(", ") + m_rows.front().said;
}

int ShelfModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : count(); }

QVariant ShelfModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= count()) return {};
  const Row& row = m_rows[static_cast<std::size_t>(index.row())];
  switch (role) {
    case Name: return row.name;
    case Said: return row.said;
    case From: return place(row.fromMinutes);
    case To: return place(row.toMinutes);
    case Dots: {
      QList<double> dots;
      for (const double minutes : row.dotMinutes) dots << place(minutes);
      return QVariant::fromValue(dots);
    }
    case Open: return row.open;
    case Late: return row.late;
    case Look: return row.look;
    default: return {};
  }
}

QHash<int, QByteArray> ShelfModel::roleNames() const {
  return {{Name, "name"}, {Said, "said"}, {From, "from"}, {To, "to"},
          {Dots, "dots"}, {Open, "open"}, {Late, "late"}, {Look, "look"}};
}

}  // namespace app::viewmodels
