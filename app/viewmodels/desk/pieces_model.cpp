#include "app/viewmodels/desk/pieces_model.h"

#include <QDate>
#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QRegularExpression>
#include <QTimeZone>
#include <algorithm>
#include <cstdlib>

#include "app/convert/text.h"
#include "app/files/whole_file.h"
#include "app/viewmodels/desk/piece_outlook.h"
#include "app/viewmodels/standing.h"
#include "app/viewmodels/times.h"
#include "app/words/words.h"
#include "app/workbench/job_search.h"
#include "core/base/long_json.h"
#include "core/base/text.h"
#include "core/jobs/one_piece.h"
#include "core/record/record_file.h"

namespace app::viewmodels {

using convert::toQt;
using core::base::Message;
using core::base::Value;

namespace {

QString textAt(const Value& document, const char* key) {
  const Value* value = document.find(key);
  return value != nullptr && value->kind() == Value::Kind::Text ? toQt(value->asText()) : QString();
}

// ":7:12" of a file that is no JSON from there on, ":/mount/boards/1" of what was read; "" for the whole.
QString placeOf(const core::base::Problem& problem) {
  if (problem.line != 0) return QStringLiteral(":%1:%2").arg(problem.line).arg(problem.column);
  return problem.pointer.empty() ? QString() : QLatin1Char(':') + toQt(problem.pointer);
}

// A piece's own file is written anew; another's, or whatever else has the name, stays as it is.
// A link is another's too, wherever it leads. "" where a thousand names are taken.
QString freePath(const QString& stem, const std::string& jobId) {
  constexpr int kMostOfOneName = 1000;
  for (int number = 1; number < kMostOfOneName; ++number) {
    const QString end = number == 1 ? QString() : QStringLiteral("-%1").arg(number);
    const QString path = stem + end + QStringLiteral(".record.json");
    const QFileInfo there(path);
    if (there.isSymLink()) continue;
    if (!there.exists()) return path;
    const auto text = files::readWhole(path, core::record::kMaximumRecordBytes);
    if (!text) continue;
    const auto parsed = core::base::parseJson(text.value(), core::record::kMaximumRecordBytes);
    if (parsed.root.kind() == Value::Kind::Object && textAt(parsed.root, "job") == toQt(jobId)) return path;
  }
  return {};
}

}  // namespace

PiecesModel::PiecesModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : QAbstractListModel(parent), m_workbench(workbench), m_clock(clock) {
  connect(&workbench, &workbench::Workbench::designsChanged, this, [this] {
    for (const auto* design : m_workbench.designs().all()) m_pictures.forget(design->id);
    refresh();
  });
  connect(&workbench, &workbench::Workbench::jobChanged, this, [this](const QString& jobId) {
    m_pictures.forget(convert::fromQt(jobId));
    m_aheadChanged = true;
  });
}

void PiecesModel::refresh() {
  std::vector<Row> rows;
  int designs = 0;
  int away = 0;
  for (const core::drafts::Drafted* design : m_workbench.designs().all()) {
    if (!design->jobs.empty()) continue;
    ++designs;
    Row row = rowOf(*design);
    away += row.away ? 1 : 0;
    if (m_awayShown == row.away && matches(row)) rows.push_back(std::move(row));
  }
  const auto& entries = m_workbench.jobs();
  const auto shelf = m_awayShown ? workbench::Shelf::PutAway : workbench::Shelf::Bench;
  for (const workbench::JobEntry* entry : workbench::searched(entries, convert::fromQt(m_sought), shelf)) {
    rows.push_back(rowOf(*entry));
  }
  away += static_cast<int>(
      std::count_if(entries.begin(), entries.end(), [](const workbench::JobEntry& entry) { return entry.archived; }));
  const int all = designs + static_cast<int>(entries.size());
  lookAhead();
  if (rows == m_rows && all == m_all && away == m_away) return;
  m_largest = {};
  for (const Row& row : rows) m_largest = m_largest.expandedTo(row.size);
  beginResetModel();
  m_rows = std::move(rows);
  m_all = all;
  m_away = away;
  endResetModel();
  emit changed();
}

// As jobs are searched for.
bool PiecesModel::matches(const Row& row) const {
  workbench::JobEntry entry;
  entry.title = convert::fromQt(row.title);
  entry.reference = convert::fromQt(row.reference);
  entry.client = convert::fromQt(row.client);
  return !workbench::searched({entry}, convert::fromQt(m_sought), workbench::Shelf::Both).empty();
}

// A date that is none is shown as it was written.
void PiecesModel::setDue(Row& row, const std::string& written) const {
  const QDate today = local(m_clock.now().utcMilliseconds, m_clock.zone()).date();
  const QDate due = QDate::fromString(toQt(written), Qt::ISODate);
  if (!due.isValid()) {
    row.due = toQt(written);
    return;
  }
  const qint64 days = today.daysTo(due);
  // As it is said: with its year only where that is not plain.
  constexpr qint64 kPlain = 300;
  const QString day =
      QLocale().toString(due, std::abs(days) < kPlain ? QStringLiteral("d MMM") : QStringLiteral("d MMM yyyy"));
  row.late = days < 0;
  row.due = days < 0 ? tr("was due %1").arg(day) : days == 0 ? tr("due today") : tr("due %1").arg(day);
}

PiecesModel::Row PiecesModel::rowOf(const core::drafts::Drafted& design) const {
  Row row;
  row.id = design.id;
  row.atDesk = true;
  row.away = design.putAway;
  row.title = textAt(design.document, "title");
  if (row.title.isEmpty()) row.title = tr("A piece without a title yet");
  row.reference = textAt(design.document, "reference");
  row.client = textAt(design.document, "client");
  const auto& piece = m_pictures.ofDesign(m_workbench, design.id).piece;
  row.act = piece ? tr("drawn, not begun") : tr("not drawn yet");
  if (piece) row.size = {piece->width, piece->height};
  setDue(row, convert::fromQt(textAt(design.document, "due")));
  return row;
}

PiecesModel::Row PiecesModel::rowOf(const workbench::JobEntry& entry) const {
  Row row;
  row.id = entry.id;
  row.title = nameOf(entry);
  const Standing standing = standingOf(m_workbench, entry, m_clock.zone());
  row.act = standing.act;
  row.wait = standing.runs();
  row.window = standing.window;
  row.done = static_cast<int>(standing.done);
  row.all = static_cast<int>(standing.all);
  row.size = {entry.width, entry.height};
  row.reference = toQt(entry.reference);
  row.client = toQt(entry.client);
  row.away = entry.archived;
  setDue(row, entry.due);
  return row;
}

QString PiecesModel::Row::of() const {
  return reference.isEmpty() || client.isEmpty() ? reference + client : reference + QStringLiteral(" · ") + client;
}

PiecesModel::Row PiecesModel::chosenRow() const {
  const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&](const Row& row) { return row.id == m_chosen; });
  if (found != m_rows.end()) return *found;
  // Put away, or no longer among what is searched for.
  if (const auto* design = m_workbench.designs().find(m_chosen); design != nullptr && design->jobs.empty())
    return rowOf(*design);
  const auto& entries = m_workbench.jobs();
  const auto entry = std::find_if(entries.begin(), entries.end(), [&](const auto& one) { return one.id == m_chosen; });
  return entry == entries.end() ? Row() : rowOf(*entry);
}

const PieceDrawing& PiecesModel::pictureOf(const Row& row) const {
  return row.atDesk ? m_pictures.ofDesign(m_workbench, row.id) : m_pictures.ofJob(m_workbench, row.id);
}

void PiecesModel::setOnBench(const std::string& jobId) {
  if (jobId == m_onBench) return;
  m_onBench = jobId;
  if (count() > 0) emit dataChanged(index(0), index(count() - 1), {OnBench});
}

// Changes with everything that is counted of stock.
std::string PiecesModel::stockStamp() const {
  const auto last = [](const auto& acts) {
    return std::to_string(acts.size()) + (acts.empty() ? std::string() : acts.back().intentId);
  };
  return last(m_workbench.shop().onHand.acts) + ' ' + last(m_workbench.shop().stock.acts);
}

// What is to be bought is found anew where the piece or the stock is another: sheets are planned for it.
void PiecesModel::lookForWants() {
  const auto* draft = m_workbench.designs().find(m_chosen);
  const auto* state = chosenDesign() || m_chosen.empty() ? nullptr : m_workbench.job(m_chosen);
  const std::string of = m_chosen + ' ' + stockStamp() + (chosenDesign() ? draft->text() : std::string());
  const auto design = state == nullptr ? nullptr : state->design;
  if (of == m_wantsOf && design == m_wantsDesign) return;
  m_wantsOf = of;
  m_wantsDesign = design;
  if (design) {
    m_wants.show(wantsOf(m_chosen, *design, m_workbench.shop()));
  } else {
    const auto read = chosenDesign() ? core::design::readDesign(draft->text()) : core::design::ReadDesign();
    m_wants.show(read.design ? wantsOf("", *read.design, m_workbench.shop()) : std::vector<RowsModel::Row>());
  }
}

void PiecesModel::lookAhead() {
  constexpr std::int64_t kMinute = 60'000;
  lookForWants();
  if (chosenDesign() || m_chosen.empty() || m_workbench.job(m_chosen) == nullptr) {
    m_ready.clear();
    m_hands.clear();
    m_today.show({});
    m_waits.show({});
    return;
  }
  const std::int64_t minute = m_clock.now().utcMilliseconds / kMinute;
  if (!m_aheadChanged && minute == m_aheadMinute) return;
  m_aheadChanged = false;
  m_aheadMinute = minute;
  const core::jobs::JobAt job = m_workbench.at(m_chosen);
  PieceOutlook outlook = outlookOf(job, m_clock.zone());
  m_ready = outlook.ready;
  m_hands = outlook.hands;
  m_today.show(std::move(outlook.today));
  m_waits.show(waitsOf(job, m_clock.zone()));
  emit changed();
}

PieceDrawing PiecesModel::chosenPicture() const { return m_chosen.empty() ? PieceDrawing() : pictureOf(chosenRow()); }

QVariant PiecesModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const Row& row = m_rows[static_cast<std::size_t>(index.row())];
  switch (role) {
    case Title: return row.title;
    case Of: return row.of();
    case Act: return row.act;
    case Wait: return row.wait;
    case Window: return row.window;
    case Done: return row.done;
    case All: return row.all;
    case Due: return row.due;
    case Late: return row.late;
    case AtDesk: return row.atDesk;
    case OnBench: return !row.atDesk && row.id == m_onBench;
    case Picture: return QVariant::fromValue(pictureOf(row));
    case Across: return row.size.width();
    case Down: return row.size.height();
    default: return {};
  }
}

QHash<int, QByteArray> PiecesModel::roleNames() const {
  return {{Title, "title"},     {Of, "of"},           {Act, "act"},           {Wait, "wait"},       {Window, "window"},
          {Done, "done"},       {All, "all"},         {Due, "due"},           {Late, "late"},       {AtDesk, "atDesk"},
          {OnBench, "onBench"}, {Picture, "picture"}, {Across, "pieceWidth"}, {Down, "pieceHeight"}};
}

void PiecesModel::seek(const QString& words) {
  if (words == m_sought) return;
  m_sought = words;
  refresh();
}

void PiecesModel::showAway(bool away) {
  m_awayShown = away;
  refresh();
  emit changed();
}

void PiecesModel::choose(int row) {
  if (row < 0 || row >= rowCount()) return;
  const Row& piece = m_rows[static_cast<std::size_t>(row)];
  m_chosen = piece.id;
  m_said.clear();
  m_aheadChanged = true;
  if (!piece.atDesk) emit chosen(m_chosen);
  lookAhead();
  emit changed();
}

void PiecesModel::setHandOver(const QString& folder, std::function<QStringList()> found) {
  m_folder = folder;
  m_find = std::move(found);
}

void PiecesModel::tell(const QString& said, bool refused) {
  m_said = said;
  m_refused = refused;
  m_aheadChanged = true;
  refresh();
  emit changed();
}

void PiecesModel::tell(const Message& refused, const QString& done) {
  tell(refused.id.empty() ? done : words::text(refused, m_workbench.settings().units), !refused.id.empty());
}

void PiecesModel::putAway() {
  const bool design = chosenDesign();
  tell(design ? m_workbench.submit(core::intents::OfDesign{m_chosen, core::intents::PutDesignAway{}})
              : m_workbench.submit(core::intents::OfJob{m_chosen, core::intents::PutAway{}}),
       tr("Put away. It is found under Put away."));
}

void PiecesModel::bringBack() {
  const bool design = chosenDesign();
  tell(design ? m_workbench.submit(core::intents::OfDesign{m_chosen, core::intents::BringDesignBack{}})
              : m_workbench.submit(core::intents::OfJob{m_chosen, core::intents::BringBack{}}),
       design ? tr("Back among the pieces.") : tr("On the bench again."));
}

bool PiecesModel::onceMore() {
  const auto taken = m_workbench.duplicate(m_chosen);
  if (taken.jobId.empty()) {
    tell(taken.refusals.empty() ? tr("This piece cannot be taken in once more.")
                                : words::text(taken.refusals.front(), m_workbench.settings().units),
         true);
    return false;
  }
  QStringList notes;
  for (const Message& note : taken.notes) notes << words::text(note, m_workbench.settings().units);
  m_chosen = taken.jobId;
  emit chosen(m_chosen);
  tell(notes.join(QLatin1Char(' ')), false);
  return true;
}

void PiecesModel::handOver() {
  const auto record = m_workbench.handOn(m_chosen);
  if (!record) return tell(record.error(), QString());
  if (m_folder.isEmpty()) return tell(tr("This piece cannot be written to a file."), true);
  const Row row = chosenRow();
  const QString name = row.reference.isEmpty() ? row.title : row.reference;
  const QString path = writeRecord(name, m_chosen, record.value());
  if (path.isEmpty()) return;
  const auto* state = m_workbench.job(m_chosen);
  const int count = state == nullptr ? 1 : state->design->job.count;
  for (int number = 1; count > 1 && number <= count; ++number) {
    const auto alone = m_workbench.handOn(m_chosen, number);
    if (!alone) return tell(alone.error(), QString());
    const QString ofOne = name + QStringLiteral("-%1-of-%2").arg(number).arg(count);
    if (writeRecord(ofOne, core::jobs::idOfPiece(m_chosen, number), alone.value()).isEmpty()) return;
  }
  tell(count > 1 ? tr("Written to %1; beside it each of the %2 pieces alone.").arg(path).arg(count)
                 : tr("Written to %1.").arg(path),
       false);
}

// Returns the path, or "" where it could not be written, and tells why.
QString PiecesModel::writeRecord(QString name, const std::string& jobId, const std::string& record) {
  // A name that every file system takes.
  name.replace(QRegularExpression(QStringLiteral("[^\\w-]+"), QRegularExpression::UseUnicodePropertiesOption),
               QStringLiteral("-"));
  QDir().mkpath(m_folder);
  const QString path = freePath(m_folder + QLatin1Char('/') + name, jobId);
  if (path.isEmpty()) {
    tell(tr("%1 holds other files of this name already.").arg(m_folder), true);
    return {};
  }
  const auto failed = files::writeWhole(path, record);
  if (!failed) return path;
  tell(tr("%1: %2.").arg(path, words::text(*failed, m_workbench.settings().units)), true);
  return {};
}

void PiecesModel::findFiles() {
  m_paths = m_find ? m_find() : QStringList();
  std::vector<RowsModel::Row> rows;
  for (const QString& path : m_paths) {
    const QFileInfo info(path);
    RowsModel::Row row;
    row.title = info.fileName();
    row.note = info.absolutePath();
    rows.push_back(std::move(row));
  }
  m_files.show(std::move(rows));
  m_said.clear();
  emit changed();
}

void PiecesModel::takeIn(int row) {
  if (row < 0 || row >= m_paths.size()) return;
  const QString name = QFileInfo(m_paths[row]).fileName();
  const auto units = m_workbench.settings().units;
  const auto read = files::readWhole(m_paths[row], core::record::kMaximumRecordBytes);
  if (!read) return tell(tr("%1: %2.").arg(name, words::text(read.error(), units)), true);
  const std::string& text = read.value();
  const auto firstOf = [&](const auto& problems, const auto& refusals) {
    for (const auto& problem : problems) {
      if (problem.severity == core::base::Severity::Error)
        return tr("%1: %2").arg(name + placeOf(problem), words::text(problem.message, units));
    }
    return refusals.empty() ? tr("%1 is no job file.").arg(name) : words::text(refusals.front(), units);
  };
  const bool record = core::record::isRecordFile(text);
  std::string job;
  QString done;
  if (record) {
    const auto imported = m_workbench.importJob(text);
    if (imported.jobId.empty()) return tell(firstOf(imported.problems, imported.refusals), true);
    job = imported.jobId;
    done = imported.mended > 0   ? tr("What was damaged or missing of it was put right.")
           : imported.added == 0 ? tr("All of it is here already.")
                                 : tr("Taken in with its record.");
  } else {
    const auto taken = m_workbench.takeIn(text);
    if (taken.jobId.empty()) return tell(firstOf(taken.problems, taken.refusals), true);
    job = taken.jobId;
    done = taken.already ? tr("It is on the bench already.") : tr("Taken in.");
  }
  m_chosen = job;
  emit chosen(m_chosen);
  tell(done, false);
}

}  // namespace app::viewmodels
