#include "app/viewmodels/desk/record_view_model.h"

#include <QDateTime>
#include <QLocale>
#include <algorithm>

#include "app/aside/aside.h"
#include "app/convert/text.h"
#include "app/pages/care.h"
#include "app/viewmodels/names.h"
#include "app/viewmodels/times.h"
#include "app/words/words.h"

namespace app::viewmodels {

using convert::fromQt;
using convert::toQt;
using core::base::Message;
using core::jobs::TimelineEntry;
using core::record::TimelineKind;

namespace {

QString roomText(const core::jobs::RoomThen& then) {
  const QString room = RecordViewModel::tr("%1 °C, %2 %")
                           .arg(then.room.temperature.inCelsius(), 0, 'f', 1)
                           .arg(then.room.humidity.inPercent(), 0, 'f', 0);
  switch (then.from) {
    case core::jobs::RoomThen::From::Entered: return RecordViewModel::tr("%1 entered").arg(room);
    case core::jobs::RoomThen::From::Sensor: return RecordViewModel::tr("%1 by the sensor").arg(room);
    case core::jobs::RoomThen::From::Planned: return RecordViewModel::tr("%1 planned").arg(room);
  }
  return room;
}

QString batchText(const core::jobs::BatchThen& batch) {
  return batch.known ? RecordViewModel::tr("with batch %1, %2").arg(batch.mark).arg(toQt(batch.name))
                     : RecordViewModel::tr("with a batch that is not on record");
}

}  // namespace

RecordViewModel::RecordViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : QObject(parent), m_workbench(workbench), m_clock(clock) {
  connect(&workbench, &workbench::Workbench::jobChanged, this, [this](const QString& jobId) {
    if (fromQt(jobId) == m_job) refresh();
  });
}

void RecordViewModel::open(const std::string& jobId) {
  m_job = jobId;
  m_page = Page::Happened;
  m_chosen.clear();
  m_pictureTrouble.clear();
  m_refusal.clear();
  refresh();
}

void RecordViewModel::refresh() {
  if (m_workbench.job(m_job) == nullptr) return;
  switch (m_page) {
    case Page::Happened: showHappened(); break;
    case Page::ForClient: showCare(core::sheets::CareFor::Client); break;
    case Page::ForConservator: showCare(core::sheets::CareFor::Conservator); break;
  }
  showBatches();
  emit changed();
}

QString RecordViewModel::title() const {
  const auto* state = m_workbench.job(m_job);
  return state == nullptr ? QString() : toQt(state->design->job.title);
}

// Takes the beginning of each step that was done into the entry of its being done. What was undone, and a step still in
// hand, stay as they are.
void RecordViewModel::joinBeginnings() {
  m_begunUtc.clear();
  std::map<std::string, std::string> done;  // step -> the event of its being done
  std::erase_if(m_timeline, [&](const TimelineEntry& entry) {
    if (!entry.takenBackBy.empty() || !entry.timeKnown) return false;
    if (entry.kind == TimelineKind::Done) done[entry.step] = entry.eventId;
    if (entry.kind != TimelineKind::Begun) return false;
    const auto found = done.find(entry.step);
    if (found == done.end()) return false;
    m_begunUtc.emplace(found->second, entry.occurredUtc);
    done.erase(found);
    return true;
  });
}

// A step done needs no more words than its name.
QString RecordViewModel::titleOf(const TimelineEntry& entry) const {
  const auto& state = *m_workbench.job(m_job);
  const auto* step = entry.kind == TimelineKind::Done ? state.plan->workflow.find(entry.step) : nullptr;
  return step == nullptr ? words::text(entry.what, state.design->job.units) : actName(*step);
}

// "10:02 to 10:31"; a step begun on another day names it.
QString RecordViewModel::timeOf(const TimelineEntry& entry) const {
  const QString done = local(entry.occurredUtc, entry.zone).toString(QStringLiteral("H:mm"));
  const auto begun = m_begunUtc.find(entry.eventId);
  if (begun == m_begunUtc.end()) return done;
  const QString from = clockTime(begun->second, entry.occurredUtc, entry.zone);
  return from == done ? done : tr("%1 to %2").arg(from, done);
}

void RecordViewModel::showHappened() {
  m_timeline = m_workbench.timeline(m_job, core::jobs::Order::NewestFirst);
  joinBeginnings();
  std::vector<RowsModel::Row> rows;
  QString above;
  for (auto at = m_timeline.begin(); at != m_timeline.end(); ++at) {
    const TimelineEntry& entry = *at;
    const QDateTime time = local(entry.occurredUtc, entry.zone);
    const QString day = QLocale().toString(time.date(), QStringLiteral("dddd d MMMM yyyy"));
    QStringList notes;
    // The room is said where it was another than before.
    const auto before = std::next(at);
    const QString room = entry.room ? roomText(*entry.room) : QString();
    const bool same = before != m_timeline.end() && before->room && roomText(*before->room) == room;
    if (!room.isEmpty() && !same) notes << room;
    for (const auto& batch : entry.batches) notes << batchText(batch);
    QStringList but;
    if (!entry.takenBackBy.empty()) but << tr("undone");
    if (!entry.correctedBy.empty()) but << tr("put right later");
    RowsModel::Row row;
    row.title = titleOf(entry);
    row.of = day == above || !entry.timeKnown ? QString() : day;
    row.value = entry.timeKnown ? timeOf(entry) : tr("clock wrong");
    row.note = notes.join(tr(" · "));
    row.problem = but.join(tr(" · "));
    row.chosen = entry.eventId == m_chosen;
    row.picture = toQt(entry.hash);
    rows.push_back(std::move(row));
    if (entry.timeKnown) above = day;
  }
  m_rows.show(std::move(rows));
}

void RecordViewModel::showCare(core::sheets::CareFor kind) {
  const auto* state = m_workbench.job(m_job);
  const auto timeline = m_workbench.timeline(m_job, core::jobs::Order::OldestFirst);
  const auto units = state->design->job.units;
  const core::sheets::CareWords careWords = pages::careWords();
  const auto sheet = core::sheets::careSheet(
      kind, {*state, m_workbench.shop(), timeline, m_workbench.jobText(m_job), units, careWords});
  std::vector<RowsModel::Row> rows;
  for (const auto& section : sheet.sections) {
    bool first = true;
    for (const auto& line : section.lines) {
      QStringList values;
      for (const Message& value : line.values) values << words::text(value, units);
      RowsModel::Row row;
      row.title = words::text(line.label, units);
      row.of = first ? words::text(section.title, units) : QString();
      row.note = values.join(QLatin1Char('\n'));
      row.value = pages::careKnown(line);
      rows.push_back(std::move(row));
      first = false;
    }
  }
  m_rows.show(std::move(rows));
}

void RecordViewModel::showBatches() {
  std::vector<RowsModel::Row> rows;
  m_batchIds.clear();
  const auto* state = m_workbench.job(m_job);
  if (chosenStep() && state != nullptr) {
    const auto linked = state->beside.batches.find(chosen()->step);
    for (const auto& batch : m_workbench.shop().stock.batches) {
      const bool with = linked != state->beside.batches.end() &&
                        std::find(linked->second.begin(), linked->second.end(), batch.id) != linked->second.end();
      if (batch.usedUpUtc && !with) continue;
      m_batchIds.push_back(batch.id);
      RowsModel::Row row;
      row.title = tr("%1 · %2").arg(batch.mark).arg(toQt(batch.entry.name));
      row.chosen = with;
      rows.push_back(std::move(row));
    }
  }
  m_batches.show(std::move(rows));
}

const TimelineEntry* RecordViewModel::chosen() const {
  const auto found = std::find_if(m_timeline.begin(), m_timeline.end(),
                                  [&](const TimelineEntry& entry) { return entry.eventId == m_chosen; });
  return m_chosen.empty() || found == m_timeline.end() || m_page != Page::Happened ? nullptr : &*found;
}

QString RecordViewModel::chosenTitle() const { return chosen() == nullptr ? QString() : titleOf(*chosen()); }

QString RecordViewModel::chosenPicture() const { return chosen() == nullptr ? QString() : toQt(chosen()->hash); }

bool RecordViewModel::chosenStep() const {
  return chosen() != nullptr && chosen()->kind == TimelineKind::Done && chosen()->takenBackBy.empty();
}

bool RecordViewModel::chosenRemovable() const {
  const auto* state = m_workbench.job(m_job);
  if (chosen() == nullptr || state == nullptr) return false;
  return state->beside.note(chosen()->note) != nullptr || state->beside.photograph(chosen()->photograph) != nullptr;
}

bool RecordViewModel::chosenElsewhere() const {
  return chosen() != nullptr && chosen()->kind == TimelineKind::Elsewhere;
}

void RecordViewModel::useFromElsewhere() {
  if (!chosenElsewhere()) return;
  told(m_workbench.submit(
      core::intents::OfJob{m_job, core::intents::AcceptPreparation{chosen()->step, chosen()->deviceId}}));
}

void RecordViewModel::look(Page page) {
  m_page = page;
  m_refusal.clear();
  m_pictureTrouble.clear();
  refresh();
}

void RecordViewModel::choose(int row) {
  if (m_page != Page::Happened || row < 0 || row >= static_cast<int>(m_timeline.size())) return;
  m_chosen = m_timeline[static_cast<std::size_t>(row)].eventId;
  m_pictureTrouble.clear();
  m_refusal.clear();
  refresh();
}

bool RecordViewModel::addNote(const QString& text) {
  if (text.trimmed().isEmpty()) return false;
  // The note belongs to the chosen step, or else to the piece as a whole.
  const std::string step = chosenStep() ? chosen()->step : "";
  const Message refused = m_workbench.submit(core::intents::OfJob{m_job, core::intents::AddNote{fromQt(text), step}});
  told(refused);
  return refused.id.empty();
}

QString RecordViewModel::chosenText() const {
  const auto* state = m_workbench.job(m_job);
  if (chosen() == nullptr || state == nullptr) return {};
  if (const auto* note = state->beside.note(chosen()->note)) return toQt(note->text);
  const auto* photograph = state->beside.photograph(chosen()->photograph);
  return photograph == nullptr ? QString() : toQt(photograph->caption);
}

bool RecordViewModel::changeText(const QString& text) {
  const auto* state = m_workbench.job(m_job);
  if (!chosenWritten() || state == nullptr) return false;
  core::intents::Intent intent = core::intents::ChangeCaption{chosen()->photograph, fromQt(text)};
  if (state->beside.note(chosen()->note) != nullptr) intent = core::intents::ChangeNote{chosen()->note, fromQt(text)};
  const Message refused = m_workbench.submit(core::intents::OfJob{m_job, intent});
  told(refused);
  return refused.id.empty();
}

void RecordViewModel::findPictures() {
  m_files = m_find ? m_find() : QStringList();
  m_pictures.show(rowsOfFiles(m_files));
  m_refusal.clear();
  emit changed();
}

void RecordViewModel::keepPicture(int row) {
  if (row >= 0 && row < m_files.size()) keepPhotograph(m_files[row]);
}

void RecordViewModel::keepPhotograph(const QString& path) {
  const auto* photographs = m_workbench.photographs();
  if (photographs == nullptr) {
    told(Message("photograph.no-folder"));
    return;
  }
  ++m_copying;
  const std::string step = chosenStep() ? chosen()->step : "";
  // Its own copies: what is closed meanwhile may not pull the ground from under it.
  aside::aside(this, [this, folder = *photographs, file = path, job = m_job, step]() -> aside::Told {
    auto kept = folder.keep(file);
    return [this, kept = std::move(kept), job, step] {
      --m_copying;
      told(kept ? m_workbench.photograph(job, kept.value(), "", step) : kept.error());
    };
  });
  emit changed();
}

void RecordViewModel::explainPicture() {
  const auto* photographs = m_workbench.photographs();
  const std::string hash = fromQt(chosenPicture());
  if (photographs == nullptr || hash.empty()) return;
  aside::aside(this, [this, folder = *photographs, hash]() -> aside::Told {
    constexpr QSize kAny(512, 512);
    auto shown = folder.thumbnail(hash, kAny);
    return [this, shown = std::move(shown), hash] {
      if (shown || fromQt(chosenPicture()) != hash) return;
      m_pictureTrouble = words::text(shown.error(), m_workbench.settings().units);
      emit changed();
    };
  });
}

void RecordViewModel::turnBatch(int row) {
  const auto* state = m_workbench.job(m_job);
  if (!chosenStep() || state == nullptr || row < 0 || row >= static_cast<int>(m_batchIds.size())) return;
  const std::string& step = chosen()->step;
  const auto linked = state->beside.batches.find(step);
  std::vector<std::string> batches =
      linked == state->beside.batches.end() ? std::vector<std::string>() : linked->second;
  const std::string& batch = m_batchIds[static_cast<std::size_t>(row)];
  if (std::erase(batches, batch) == 0) batches.push_back(batch);
  told(m_workbench.submit(core::intents::OfJob{m_job, core::intents::LinkBatches{step, batches}}));
}

void RecordViewModel::remove() {
  const auto* state = m_workbench.job(m_job);
  if (!chosenRemovable()) return;
  if (state->beside.note(chosen()->note) != nullptr) {
    told(m_workbench.submit(core::intents::OfJob{m_job, core::intents::RemoveNote{chosen()->note}}));
  } else {
    told(m_workbench.submit(core::intents::OfJob{m_job, core::intents::RemovePhotograph{chosen()->photograph}}));
  }
}

void RecordViewModel::told(const Message& refused) {
  m_refusal = refused.id.empty() ? QString() : words::text(refused, m_workbench.settings().units);
  refresh();
  emit changed();
}

}  // namespace app::viewmodels
