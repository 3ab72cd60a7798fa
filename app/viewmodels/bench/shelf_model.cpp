#include "app/viewmodels/bench/shelf_model.h"

#include <algorithm>
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

// As far as any screen shows outlines.
constexpr double kHoursShown = 12;

bool isTestNow(core::waits::Telling telling) {
  return telling == core::waits::Telling::TestNow || telling == core::waits::Telling::TackNow;
}

}  // namespace

ShelfModel::ShelfModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : QAbstractListModel(parent), m_workbench(workbench), m_clock(clock) {}

void ShelfModel::refresh() {
  std::vector<std::pair<core::jobs::TouchTest, Row>> found;
  const auto tags = shortNames(m_workbench.jobs());
  const auto titles = titlesApart(m_workbench.jobs());
  for (const workbench::JobEntry& entry : m_workbench.jobs()) {
    if (entry.rests || m_workbench.job(entry.id) == nullptr) continue;
    const core::jobs::JobAt job = m_workbench.at(entry.id);
    for (const core::jobs::WaitGroup& group : core::jobs::waitGroups(job)) {
      auto test = core::jobs::touchTestOf(job, *group.back());
      // What was touched and dry asks for nothing more; it stands there, ready, until it is used.
      const bool canTest = test.has_value();
      if (!test && job.waitState(*group.back()).foundByTouch) test = {group.back()->id, true, false, {}};
      if (!test) continue;
      found.emplace_back(*std::move(test), rowOf(job, *group.back(), tags.at(entry.id), titles.at(entry.id)));
      found.back().second.canTest = canTest;
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
  // The hours move on even where nothing runs.
  if (rows == m_rows && unknown == m_unknown && rows.empty()) return;
  m_unknown = unknown;
  std::erase_if(m_drawn, [&](const auto& drawn) {
    return std::none_of(rows.begin(), rows.end(), [&](const Row& row) { return row.job == drawn.first; });
  });
  move(std::move(rows));
  makeAxis();
  emit changed();
}

// A row that stays is the same item on the glass, wherever it has come to; of these only what has changed is told.
void ShelfModel::move(std::vector<Row> rows) {
  for (int old = count() - 1; old >= 0; --old) {
    const Row& gone = m_rows[static_cast<std::size_t>(old)];
    if (std::any_of(rows.begin(), rows.end(), [&](const Row& row) { return row.isSame(gone); })) continue;
    beginRemoveRows({}, old, old);
    m_rows.erase(m_rows.begin() + old);
    endRemoveRows();
  }
  for (int at = 0; at < static_cast<int>(rows.size()); ++at) {
    Row& row = rows[static_cast<std::size_t>(at)];
    const auto here = m_rows.begin() + at;
    const auto known = std::find_if(here, m_rows.end(), [&](const Row& one) { return one.isSame(row); });
    if (known == m_rows.end()) {
      beginInsertRows({}, at, at);
      m_rows.insert(here, std::move(row));
      endInsertRows();
      continue;
    }
    if (known != here) {
      const int from = static_cast<int>(known - m_rows.begin());
      beginMoveRows({}, from, from, {}, at);
      std::rotate(here, known, known + 1);
      endMoveRows();
    }
    Row& shown = m_rows[static_cast<std::size_t>(at)];
    if (shown == row) continue;
    shown = std::move(row);
    emit dataChanged(index(at), index(at));
  }
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
    const QString thing = withThing && !row.thing.isEmpty() ? row.thing + QStringLiteral(", ") : QString();
    row.rests = {thing + row.wait};
    if (!thing.isEmpty()) row.rests << row.thing;
    // "bevel dries" is a bevel; what was left out is told on the screen of the waits.
    row.rests << row.wait.section(QLatin1Char(' '), 0, 0) << QString();
    row.rests.removeDuplicates();
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
                                  const QString& piece, const QString& title) {
  Row row;
  row.job = job.state().plan->id;
  if (!run.step->ofShop) row.piece = piece;
  if (!run.step->ofShop) row.title = title;
  row.thing = convert::toQt(run.step->thingName);
  row.wait = convert::toQt(run.wait->title);
  row.technique = convert::toQt(run.step->techniqueTitle);
  row.id = run.id;
  row.startedUtc = run.started.utcMilliseconds;
  row.told = toldWait(job, run, m_clock.zone());
  row.points = outlinePoints(row.told.told, kHoursShown);
  if (!row.told.gone.isEmpty()) row.goneAt = (row.told.told.closes->late - row.told.told.passed).inMinutes() / 60;
  row.wet = wetPiece(m_drawn[row.job], job.state(), run);
  row.lead = row.told.isSolid ? 0 : std::max(0.0, (row.told.told.early - row.told.told.passed).inMinutes() / 60);
  return row;
}

void ShelfModel::setSilent(bool silent) {
  if (m_silent == silent) return;
  m_silent = silent;
  emit changed();
}

void ShelfModel::makeAxis() {
  constexpr std::int64_t kHour = 3'600'000;
  const std::int64_t now = m_clock.now().utcMilliseconds;
  const QDateTime here = local(now, m_clock.zone());
  // The clock's hours, wherever the zone puts them.
  const std::int64_t sinceHour = here.time().msecsSinceStartOfDay() % kHour;
  m_hourPlaces.clear();
  m_hourNames.clear();
  for (std::int64_t at = now - sinceHour + kHour; at - now <= kHoursShown * kHour; at += kHour) {
    m_hourPlaces << static_cast<double>(at - now) / kHour;
    m_hourNames << local(at, m_clock.zone()).toString(QStringLiteral("H:mm"));
  }
  const auto first = std::min_element(m_rows.begin(), m_rows.end(), [](const Row& a, const Row& b) {
    return std::pair(!a.isBeyond(), a.lead) < std::pair(!b.isBeyond(), b.lead);
  });
  m_beyond = first == m_rows.end() || !first->isBeyond() ? QString() : first->told.time;
}

QString ShelfModel::nextBrief() const {
  if (m_rows.empty()) return {};
  const Row& next = m_rows.front();
  return next.told.brief + QLatin1Char(' ') + (next.piece.isEmpty() ? next.rests.value(1) : next.piece);
}

QString ShelfModel::nextLine() const {
  if (m_rows.empty()) return {};
  const Row& next = m_rows.front();
  const QString whose = next.piece.isEmpty() ? QString() : next.piece + QStringLiteral(", ");
  return next.told.brief + QLatin1Char(' ') + whose + next.rests.front();
}

int ShelfModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : count(); }

QVariant ShelfModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= count()) return {};
  return cell(m_rows[static_cast<std::size_t>(index.row())], role);
}

QVariant ShelfModel::cell(const Row& row, int role) {
  switch (role) {
    case Name: return row.name;
    case Brief: return row.told.brief;
    case Sentence: return row.told.sentence;
    case Piece: return row.piece;
    case Rests: return row.rests;
    case Window: return row.told.isWindow;
    case Solid: return row.told.isSolid;
    case Closed: return row.told.isClosed;
    case Guessed: return row.told.told.telling == core::waits::Telling::About;
    case Look: return isTestNow(row.told.told.telling);
    case Points: return QVariant::fromValue(row.points);
    case Lead: return row.lead;
    case Beyond: return row.isBeyond();
    case Title: return row.title;
    case GoneAt: return row.goneAt;
    case Drawing: return QVariant::fromValue(row.wet.drawing);
    case Wet: return row.wet.wet;
    default: return {};
  }
}

QHash<int, QByteArray> ShelfModel::roleNames() const { return roles(); }

QHash<int, QByteArray> ShelfModel::roles() {
  return {{Name, "name"},       {Brief, "brief"}, {Sentence, "sentence"}, {Piece, "piece"},     {Rests, "rests"},
          {Window, "window"},   {Solid, "solid"}, {Closed, "closed"},     {Guessed, "guessed"}, {Look, "look"},
          {Points, "points"},   {Lead, "lead"},   {Beyond, "beyond"},     {Title, "title"},     {GoneAt, "goneAt"},
          {Drawing, "drawing"}, {Wet, "wet"}};
}

}  // namespace app::viewmodels
