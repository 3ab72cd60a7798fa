#include "app/viewmodels/pieces_model.h"

#include <QDate>
#include <QDateTime>
#include <QLocale>
#include <QTimeZone>
#include <algorithm>

#include "app/convert/text.h"
#include "app/viewmodels/standing.h"
#include "core/sheets/piece.h"

namespace app::viewmodels {

using convert::toQt;
using core::base::Value;

namespace {

QString textAt(const Value& document, const char* key) {
  const Value* value = document.find(key);
  return value != nullptr && value->kind() == Value::Kind::Text ? toQt(value->asText()) : QString();
}

// "26-041 · Harbour library"
QString together(const QString& reference, const QString& client) {
  if (reference.isEmpty() || client.isEmpty()) return reference + client;
  return reference + QStringLiteral(" · ") + client;
}

PieceDrawing drawn(const core::design::Design& design) {
  PieceDrawing drawing;
  drawing.piece =
      std::make_shared<const core::sheets::Drawing>(core::sheets::drawPiece(design, core::sheets::Side::Face));
  drawing.tints = designing::tintsOf(design);
  return drawing;
}

}  // namespace

PiecesModel::PiecesModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : QAbstractListModel(parent), m_workbench(workbench), m_clock(clock) {
  connect(&workbench, &workbench::Workbench::designsChanged, this, [this] {
    for (const auto* design : m_workbench.designs().all()) m_pictures.erase(design->id);
    refresh();
  });
  connect(&workbench, &workbench::Workbench::jobChanged, this,
          [this](const QString& jobId) { m_pictures.erase(convert::fromQt(jobId)); });
}

void PiecesModel::refresh() {
  std::vector<Row> rows;
  for (const core::record::Drafted* design : m_workbench.designs().all()) {
    if (design->jobs.empty()) rows.push_back(rowOf(*design));
  }
  for (const workbench::JobEntry& entry : m_workbench.jobs()) rows.push_back(rowOf(entry));
  if (rows == m_rows) return;
  m_rows = std::move(rows);
  showSought();
}

void PiecesModel::showSought() {
  beginResetModel();
  m_shown.clear();
  const QStringList words = m_sought.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  for (std::size_t i = 0; i < m_rows.size(); ++i) {
    const QString text = m_rows[i].title + QLatin1Char(' ') + m_rows[i].of;
    const bool all = std::all_of(words.begin(), words.end(),
                                 [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
    if (all) m_shown.push_back(i);
  }
  endResetModel();
  emit changed();
}

// A date that is none is shown as it was written.
void PiecesModel::setDue(Row& row, const std::string& written) const {
  const QTimeZone zone(QByteArray::fromStdString(m_clock.zone()));
  const QDate today =
      QDateTime::fromMSecsSinceEpoch(m_clock.now().utcMilliseconds, zone.isValid() ? zone : QTimeZone::utc()).date();
  const QDate due = QDate::fromString(toQt(written), Qt::ISODate);
  if (!due.isValid()) {
    row.due = toQt(written);
    return;
  }
  const QString day = QLocale().toString(due, QLocale::ShortFormat);
  const qint64 days = today.daysTo(due);
  row.late = days < 0;
  row.due = days < 0 ? tr("was due %1").arg(day) : days == 0 ? tr("due today") : tr("due %1").arg(day);
}

PiecesModel::Row PiecesModel::rowOf(const core::record::Drafted& design) const {
  Row row;
  row.id = design.id;
  row.atDesk = true;
  row.title = textAt(design.document, "title");
  if (row.title.isEmpty()) row.title = tr("A piece without a title yet");
  row.of = together(textAt(design.document, "reference"), textAt(design.document, "client"));
  row.where = tr("being designed");
  setDue(row, convert::fromQt(textAt(design.document, "due")));
  return row;
}

PiecesModel::Row PiecesModel::rowOf(const workbench::JobEntry& entry) const {
  Row row;
  row.id = entry.id;
  row.title = toQt(entry.title.empty() ? entry.reference : entry.title);
  const Standing standing = standingOf(m_workbench, entry);
  row.where = standing.where;
  row.runs = standing.runs;
  row.of = toQt(entry.reference);
  if (const auto* state = m_workbench.job(entry.id)) {
    const auto& job = state->design->job;
    row.of = together(toQt(job.reference), toQt(job.client));
    setDue(row, job.due);
  }
  return row;
}

PiecesModel::Row PiecesModel::chosenRow() const {
  const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&](const Row& row) { return row.id == m_chosen; });
  return found == m_rows.end() ? Row() : *found;
}

const PieceDrawing& PiecesModel::pictureOf(const Row& row) const {
  const auto found = m_pictures.find(row.id);
  if (found != m_pictures.end()) return found->second;
  PieceDrawing& drawing = m_pictures[row.id];
  if (row.atDesk) {
    const auto* design = m_workbench.designs().find(row.id);
    const auto read = design == nullptr ? core::design::ReadDesign() : core::design::readDesign(design->text());
    if (read.design) drawing = drawn(*read.design);
  } else if (const auto* state = m_workbench.job(row.id)) {
    drawing = drawn(*state->design);
  }
  return drawing;
}

PieceDrawing PiecesModel::chosenPicture() const { return m_chosen.empty() ? PieceDrawing() : pictureOf(chosenRow()); }

QVariant PiecesModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const Row& row = m_rows[m_shown[static_cast<std::size_t>(index.row())]];
  switch (role) {
    case Title: return row.title;
    case Of: return row.of;
    case Where: return row.where;
    case Runs: return row.runs;
    case Due: return row.due;
    case Late: return row.late;
    case AtDesk: return row.atDesk;
    case Picture: return QVariant::fromValue(pictureOf(row));
    default: return {};
  }
}

QHash<int, QByteArray> PiecesModel::roleNames() const {
  return {{Title, "title"}, {Of, "of"},     {Where, "where"},   {Runs, "runs"},
          {Due, "due"},     {Late, "late"}, {AtDesk, "atDesk"}, {Picture, "picture"}};
}

void PiecesModel::seek(const QString& words) {
  if (words == m_sought) return;
  m_sought = words;
  showSought();
}

void PiecesModel::choose(int row) {
  if (row < 0 || row >= rowCount()) return;
  const Row& piece = m_rows[m_shown[static_cast<std::size_t>(row)]];
  m_chosen = piece.id;
  if (!piece.atDesk) emit chosen(m_chosen);
  emit changed();
}

}  // namespace app::viewmodels
