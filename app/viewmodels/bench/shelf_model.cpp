#include "app/viewmodels/bench/shelf_model.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>

#include "app/convert/text.h"
#include "app/viewmodels/names.h"
#include "app/viewmodels/standing.h"
#include "app/viewmodels/times.h"
#include "core/base/text.h"
#include "core/jobs/wait_groups.h"

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

// The word of a title that tells jobs apart on a shelf: the first that is no article.
QString wordOf(const workbench::JobEntry& job) {
  static const QStringList kArticles = {QStringLiteral("a"), QStringLiteral("an"), QStringLiteral("the")};
  const QStringList words = pieceName(job.title).split(QLatin1Char(' '), Qt::SkipEmptyParts);
  for (const QString& word : words) {
    if (!kArticles.contains(word.toLower())) return capitalised(word);
  }
  return words.isEmpty() ? convert::toQt(job.reference) : words.front();
}

// By job; pieces of one word are told apart by their references, or by their places among the jobs.
std::map<std::string, QString> tagsOf(const std::vector<workbench::JobEntry>& jobs) {
  std::map<QString, int> uses;
  for (const auto& job : jobs) ++uses[wordOf(job)];
  std::map<std::string, QString> tags;
  std::map<QString, int> met;
  for (const auto& job : jobs) {
    QString tag = wordOf(job);
    if (uses[tag] > 1) {
      const int number = ++met[tag];
      tag += QLatin1Char(' ') + (job.reference.empty() ? QString::number(number) : convert::toQt(job.reference));
    }
    tags[job.id] = tag;
  }
  return tags;
}

}  // namespace

ShelfModel::ShelfModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : QAbstractListModel(parent), m_workbench(workbench), m_clock(clock) {}

void ShelfModel::refresh() {
  std::vector<std::pair<core::jobs::TouchTest, Row>> found;
  const auto tags = tagsOf(m_workbench.jobs());
  for (const workbench::JobEntry& entry : m_workbench.jobs()) {
    if (entry.rests || m_workbench.job(entry.id) == nullptr) continue;
    const core::jobs::JobAt job = m_workbench.at(entry.id);
    for (const core::jobs::WaitGroup& group : core::jobs::waitGroups(job)) {
      auto test = core::jobs::touchTestOf(job, *group.back());
      if (!test) continue;
      found.emplace_back(*std::move(test), rowOf(job, *group.back(), tags.at(entry.id)));
      // Waits begun together are one line; their things are many.
      if (group.size() > 1) found.back().second.thing = tr("all %1").arg(group.size());
    }
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const auto& a, const auto& b) { return core::jobs::comesFirst(a.first, b.first); });
  std::vector<Row> rows;
  for (auto& one : found) rows.push_back(std::move(one.second));
  nameRows(rows);
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

// A jar of the shop is shown once, however many jobs wait for it. A wait is named by its piece and title, and by its
// thing or technique where another one has the same name.
void ShelfModel::nameRows(std::vector<Row>& rows) {
  std::set<std::pair<std::string, std::int64_t>> jars;
  std::erase_if(rows,
                [&](const Row& row) { return row.piece.isEmpty() && !jars.emplace(row.id, row.startedUtc).second; });
  const auto called = [](const Row& row, bool withThing, bool withTechnique) {
    QString name = withThing && !row.thing.isEmpty() ? row.thing + QStringLiteral(", ") + row.wait : row.wait;
    if (withTechnique) name += QStringLiteral(" (%1)").arg(row.technique);
    return row.piece.isEmpty() ? capitalised(name) : row.piece + QStringLiteral(": ") + name;
  };
  for (Row& row : rows) {
    const auto alone = [&](bool withThing, bool withTechnique) {
      return std::count_if(rows.begin(), rows.end(), [&](const Row& other) {
               return called(other, withThing, withTechnique) == called(row, withThing, withTechnique);
             }) == 1;
    };
    const bool withThing = !alone(false, false);
    row.name = called(row, withThing, withThing && !alone(true, false));
    row.brief = called(row, withThing, false);
  }
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

ShelfModel::Row ShelfModel::rowOf(const core::jobs::JobAt& job, const core::jobs::RunningWait& run,
                                  const QString& piece) const {
  const core::waits::WaitState state = job.waitState(run);
  // To the minute: what is nearer than that is said in words.
  const auto left = [&](Duration at) { return std::round((at - state.elapsed.time).inMinutes()); };
  Row row;
  if (!run.step->ofShop) row.piece = piece;
  row.thing = convert::toQt(run.step->thingName);
  row.wait = convert::toQt(run.wait->title);
  row.technique = convert::toQt(run.step->techniqueTitle);
  row.id = run.id;
  row.startedUtc = run.started.utcMilliseconds;
  row.fromMinutes = left(state.opens.likely);
  row.toMinutes = state.closes ? left(state.closes->likely) : left(state.opens.late);
  row.open = state.holds() && state.phase != core::waits::Phase::Closed;
  row.late = state.phase == core::waits::Phase::Closed;
  row.look = state.phase == core::waits::Phase::Waiting && state.elapsed.time >= state.lookAt;
  // The dots stand for the next thing to happen: opening, or the closing once it is open.
  const core::units::Span& next = row.open && state.closes ? *state.closes : state.opens;
  for (int i = 0; i < kDots; ++i) {
    row.dotMinutes.push_back(left(core::units::quantile(next, std::clamp((i + 0.5) / kDots, 0.02, 0.98))));
  }
  if (row.late) {
    row.said = tr("likely closed");
  } else if (row.open && state.closes) {
    const QString remains = openText(state.closes->early, state.closes->late, state.elapsed.time);
    // An open time is called open already.
    row.said = run.wait->kind == core::craft::WaitKind::Open ? remains : tr("open, %1").arg(remains);
  } else if (row.open || row.look) {
    row.said = tr("test now");
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
  return m_rows.empty() ? QString() : m_rows.front().brief + QStringLiteral(", ") + m_rows.front().said;
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
