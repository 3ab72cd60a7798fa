#include "app/viewmodels/desk/design_view_model.h"

#include <algorithm>

#include "app/convert/text.h"
#include "app/designing/reading.h"
#include "app/designing/techniques.h"
#include "app/designing/usual.h"
#include "app/viewmodels/ahead.h"
#include "app/viewmodels/names.h"
#include "app/viewmodels/times.h"
#include "app/words/words.h"
#include "core/base/text.h"
#include "core/jobs/agenda.h"
#include "core/materials/cutting_list.h"
#include "core/sheets/piece.h"
#include "core/sheets/section.h"
#include "core/supply/shortage.h"
#include "core/workflow/compose.h"
#include "core/workflow/notices.h"

namespace app::viewmodels {

using convert::fromQt;
using convert::toQt;
using core::base::Message;
using core::base::Value;
using core::units::UnitSystem;
using designing::Field;

namespace {

// Another piece of the same design does not share the work and its papers, which this removes.
Value withoutTheWork(const Value& document) {
  Value rest = Value::object();
  for (const auto& [key, value] : document.members()) {
    if (key == "title" || key == "reference" || key == "due") continue;
    rest.set(key, key == "artwork" ? Value::object() : value);
  }
  return rest;
}

// The names of boards and papers in stock, each once.
designing::AtHand atHandIn(const core::shop::ShopStock& stock) {
  designing::AtHand atHand;
  for (const auto& item : stock.items) {
    const bool board = item.entry.kind == core::intents::StockKind::Board;
    if (!board && item.entry.kind != core::intents::StockKind::Paper) continue;
    auto& names = board ? atHand.boards : atHand.papers;
    if (std::find(names.begin(), names.end(), item.entry.name) == names.end()) names.push_back(item.entry.name);
  }
  return atHand;
}

}  // namespace

DesignViewModel::DesignViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent)
    : FormViewModel(parent), m_workbench(workbench), m_clock(clock) {
  connect(&workbench, &workbench::Workbench::designsChanged, this, &DesignViewModel::refresh);
  connect(&workbench, &workbench::Workbench::shopChanged, this, [this] {
    m_weighedFor.clear();
    m_weigh.start();
  });
  constexpr int kMoment = 150;  // ms
  m_weigh.setSingleShot(true);
  m_weigh.setInterval(kMoment);
  connect(&m_weigh, &QTimer::timeout, this, [this] {
    seekMend();
    if (m_weighedFor != revision()) {
      weighStock();
    } else {
      emit changed();
    }
  });
}

bool DesignViewModel::beginFresh() { return begun(designing::freshDesign(m_workbench.settings().units), ""); }

bool DesignViewModel::beginAgain(const QString& pieceId) {
  const std::string job = fromQt(pieceId);
  if (const auto* design = m_workbench.designs().find(job)) return begun(withoutTheWork(design->document), job);
  const auto parsed = core::base::parseJson(m_workbench.jobText(job));
  return parsed.readable && begun(withoutTheWork(parsed.root), job);
}

bool DesignViewModel::sameAgain() { return drafted() != nullptr && begun(withoutTheWork(drafted()->document), m_id); }

bool DesignViewModel::begun(const Value& document, const std::string& from) {
  const std::string id = m_workbench.newId();
  const Message refused = m_workbench.submit(core::intents::OfDesign{id, core::intents::BeginDesign{document, from}});
  if (!refused.id.empty()) {
    told(refused);
    return false;
  }
  return open(id);
}

bool DesignViewModel::open(const std::string& designId) {
  m_id = designId;
  m_drawing = {};
  restart(m_workbench.settings().units);
  refresh();
  return drafted() != nullptr;
}

QString DesignViewModel::title() const {
  const Value* title = drafted() == nullptr ? nullptr : drafted()->document.find("title");
  const bool named = title != nullptr && title->kind() == Value::Kind::Text && !title->asText().empty();
  return named ? toQt(title->asText()) : tr("A piece without a title yet");
}

QString DesignViewModel::about() const {
  if (drafted() == nullptr) return {};
  QStringList said;
  for (const char* key : {"reference", "client"}) {
    const Value* value = drafted()->document.find(key);
    if (value != nullptr && value->kind() == Value::Kind::Text && !value->asText().empty())
      said << toQt(value->asText());
  }
  return said.join(QLatin1Char(' '));
}

QString DesignViewModel::benchReason() const {
  if (!m_refusal.isEmpty() && entering() == Entering::Nothing) return m_refusal;
  if (complete()) return {};
  QStringList missing;
  for (const designing::Section& one : shown()) missing += one.missing();
  missing.removeDuplicates();
  if (!missing.isEmpty()) return tr("Still to enter: %1.").arg(missing.join(tr(", ")));
  QStringList places;
  for (const designing::Section& one : shown()) {
    if (!one.allProblems().isEmpty()) places << one.name;
  }
  return places.isEmpty() ? words::capitalised(state())
                          : tr("%1: %2").arg(words::capitalised(state()), places.join(tr(", ")));
}

QString DesignViewModel::caption() const {
  switch (m_view) {
    case View::Face: return tr("face up");
    case View::Back: return tr("back up");
    case View::Section: return tr("cut through at the left");
    case View::Steps:
    case View::Measures: return {};
  }
  return {};
}

bool DesignViewModel::canUndo() const { return drafted() != nullptr && !drafted()->lastChange.empty(); }

bool DesignViewModel::canRedo() const { return drafted() != nullptr && !drafted()->lastUndo.empty(); }

QString DesignViewModel::state() const {
  if (drafted() != nullptr && drafted()->spoilt) return tr("only to be looked at");
  int wrong = static_cast<int>(m_against.size());
  for (const auto& problem : m_read.problems.sorted()) {
    if (problem.severity == core::base::Severity::Error) ++wrong;
  }
  if (complete()) return {};
  return wrong == 1 ? tr("one thing to settle") : tr("%1 things to settle").arg(wrong);
}

void DesignViewModel::undo() { told(m_workbench.submit(core::intents::OfDesign{m_id, core::intents::UndoChange{}})); }

void DesignViewModel::redo() { told(m_workbench.submit(core::intents::OfDesign{m_id, core::intents::RedoChange{}})); }

void DesignViewModel::look(View view) {
  m_view = view;
  m_held.reset();
  draw(m_read);
  emit changed();
}

bool DesignViewModel::toBench() {
  const auto taken = m_workbench.takeDesign(m_id);
  if (!taken.jobId.empty() && taken.refusals.empty()) {
    emit onBench(taken.jobId);
    return true;
  }
  QStringList why;
  for (const Message& refusal : taken.refusals) why << words::text(refusal, units());
  if (why.isEmpty()) why << state();
  m_refusal = convert::lines(why);
  emit changed();
  return false;
}

void DesignViewModel::refresh() {
  if (drafted() == nullptr) return;
  m_held.reset();
  m_dragged.clear();
  m_read = designing::readForNow(drafted()->document);
  // Measures are told in the design's own units, whatever they are keyed in.
  const UnitSystem told = designing::unitsOf(drafted()->document).value_or(units());
  m_ways.emplace(drafted()->document, m_workbench.library().catalogue, told);
  reckon();
  auto sections = designing::sectionsOf(drafted()->document, m_read, m_workbench.settings().units,
                                        atHandIn(m_workbench.shop().stock));
  sections.push_back(designing::techniqueSection(drafted()->document, m_workbench.library().catalogue,
                                                 m_composed ? &*m_composed : nullptr));
  for (const auto& against : m_against) {
    designing::place(sections, against.problem, designing::reasonText(against, told));
  }
  tellNotices(sections);
  show(std::move(sections));
  findConflict();
  m_weigh.start();
  showSteps();
  showMeasures();
  draw(m_read);
  emit changed();
}

Message DesignViewModel::put(const Value& patch) {
  const Value whole = drafted() == nullptr ? patch : designing::inTheUnitsOf(drafted()->document, patch);
  return m_workbench.submit(core::intents::OfDesign{m_id, core::intents::ChangeDesign{whole}});
}

FormViewModel::Answer DesignViewModel::answerOf(const designing::Option& option) {
  const designing::Way way = m_ways->of(option.patch);
  if (!way.barred.isEmpty()) return {way.patch, {}, way.barred};
  // For a technique the text is the total of the piece made with it.
  if (section() + 1 == shown().size()) return {way.patch, tollText(way), {}};
  if (way.with.isEmpty()) return {way.patch, option.why, {}};
  return {
      way.patch, option.why.isEmpty() ? tr("with %1").arg(way.with) : tr("%1 · with %2").arg(option.why, way.with), {}};
}

FormViewModel::Answer DesignViewModel::answerOfAct(const Field& act) {
  const designing::Way way = m_ways->ofAct(act);
  return {way.patch, {}, way.barred};
}

QDate DesignViewModel::today() const { return local(m_clock.now().utcMilliseconds, m_clock.zone()).date(); }

// While the design does not hold together the last drawing that did stays, and what stands against it is marked there.
void DesignViewModel::draw(const core::design::ReadDesign& read) {
  m_drawing.worked = field() == nullptr ? std::string() : field()->element;
  m_drawing.wrong.clear();
  for (const designing::Section& each : shown()) {
    for (const Field& one : each.fields) {
      if (!one.problems.isEmpty() && !one.element.empty()) m_drawing.wrong.push_back(one.element);
    }
  }
  if (!read.design) return;
  using core::sheets::Drawing;
  using core::sheets::Side;
  const auto& design = *read.design;
  const std::string hand = placeInHand();
  const Side side = m_view == View::Back ? Side::Back : Side::Face;
  // Under a finger the drawing has to follow at once: only the measure that is dragged is told then.
  if (!m_held) {
    m_chains.show(m_view == View::Section ? core::sheets::sectionChainsOf(design, hand)
                                          : core::sheets::chainsOf(design, side, hand));
  }
  Drawing drawing = m_view == View::Section ? core::sheets::drawSection(design) : core::sheets::drawPiece(design, side);
  m_drawing.seen = QRectF(0, 0, drawing.width, drawing.height);
  if (m_held) {
    const auto& face = design.layout.boards.front().faceAt;
    m_drawing.seen = m_held->seen.translated(QPointF(face.left, face.top) - m_held->window);
    m_drawing.worked = m_held->handle.element;
  }
  m_drawing.piece = std::make_shared<const Drawing>(std::move(drawing));
}

// The field being edited; without one what the section shown is about.
std::string DesignViewModel::placeInHand() const {
  if (field() != nullptr && !field()->pointer.empty()) return field()->pointer;
  if (shown().empty()) return "";
  for (const Field& one : shown()[section()].fields) {
    if (one.pointer.empty()) continue;
    const auto steps = core::base::split(one.pointer, '/');
    // The choice of how borders are given, and the like, are of the whole mount.
    if (steps.size() > 2 && steps[1] == "mount") return steps[2] == "borders" ? "/mount/borders" : "";
    if (steps.size() > 2 && steps[1] != "artwork" && steps[1] != "package") return '/' + steps[1] + '/' + steps[2];
    return steps.size() > 1 && steps[1] == "artwork" ? "/artwork" : "";
  }
  return "";
}

// Another after every change, and only then.
std::string DesignViewModel::revision() const {
  return drafted() == nullptr ? m_id : m_id + drafted()->lastChange + drafted()->lastUndo;
}

// Errors go before what is only to be looked at, and the section shown before the others.
void DesignViewModel::findConflict() {
  m_conflict = {};
  std::vector<Conflict> all;
  for (std::size_t i = 0; i < shown().size(); ++i) {
    const designing::Section& one = shown()[i];
    for (const QString& said : one.problems) all.push_back({one.name, said, i, -1, false, 0});
    for (std::size_t k = 0; k < one.fields.size(); ++k) {
      for (const QString& said : one.fields[k].problems) {
        all.push_back({one.name, said, i, static_cast<int>(k), false, 0});
      }
      if (!one.fields[k].look) continue;
      for (const QString& said : one.fields[k].notices) {
        all.push_back({one.name, said, i, static_cast<int>(k), true, 0});
      }
    }
  }
  if (all.empty()) {
    m_mend.reset();
    m_soughtFor.clear();
    return;
  }
  const auto rank = [&](const Conflict& one) { return (one.notice ? 2 : 0) + (one.section == section() ? 0 : 1); };
  m_conflict =
      *std::min_element(all.begin(), all.end(), [&](const auto& a, const auto& b) { return rank(a) < rank(b); });
  m_conflict.more = static_cast<int>(all.size()) - 1;
  const QString wanted = toQt(revision()) + m_conflict.place + m_conflict.said;
  if (wanted == m_soughtFor) return;
  m_mend.reset();
  m_soughtFor.clear();
}

// Trying what would settle it may take longer than a frame, so that it is sought a moment after the last change.
void DesignViewModel::seekMend() {
  const QString wanted = toQt(revision()) + m_conflict.place + m_conflict.said;
  if (wanted == m_soughtFor) return;
  m_soughtFor = wanted;
  m_mend.reset();
  if (m_conflict.said.isEmpty() || m_conflict.section >= shown().size() || !m_ways) return;
  const auto& fields = shown()[m_conflict.section].fields;
  if (m_conflict.notice) {
    const Field& field = fields[static_cast<std::size_t>(m_conflict.field)];
    const auto offers = field.offers && !field.mend.isEmpty() ? field.offers() : std::vector<designing::Option>();
    if (!offers.empty())
      m_mend = designing::Mend{field.mend, offers.front().patch, words::capitalised(offers.front().label)};
    return;
  }
  std::vector<const Field*> places;
  if (m_conflict.field >= 0) places.push_back(&fields[static_cast<std::size_t>(m_conflict.field)]);
  for (const Field& one : fields) {
    if (places.empty() || places.front() != &one) places.push_back(&one);
  }
  m_mend = m_ways->mend(m_conflict.said, places);
}

void DesignViewModel::mend() {
  if (m_mend) change(designing::Mend(*m_mend).patch);
}

void DesignViewModel::goToConflict() {
  const Conflict to = m_conflict;
  chooseSection(static_cast<int>(to.section));
  if (to.field >= 0) chooseField(to.field);
}

bool DesignViewModel::grab(QPointF at, double reach) {
  m_held.reset();
  if (m_view != View::Face || !m_read.design || drafted() == nullptr || drafted()->spoilt) return false;
  const auto handles = designing::dragHandles(drafted()->document, *m_read.design);
  const designing::DragHandle* handle = designing::handleAt(handles, at, reach);
  if (handle == nullptr) return false;
  const auto& face = m_read.design->layout.boards.front().faceAt;
  m_held = Held{*handle, at, m_drawing.seen, {face.left, face.top}, {}};
  m_refusal.clear();
  drag(at);
  return true;
}

void DesignViewModel::drag(QPointF to) {
  if (!m_held || !m_read.design) return;
  // The piece is drawn from its corner: what the window has moved there is not the hand's.
  const QPointF window = m_drawing.seen.topLeft() - m_held->seen.topLeft();
  const QPointF moved = to - window;
  m_held->measure = designing::draggedMeasure(m_held->handle, m_held->from, moved, m_read.design->job.units);
  m_dragged = tr("%1: %2").arg(capitalised(m_held->handle.label), toQt(m_held->measure));
  const auto patched = core::base::patched(
      drafted()->document, designing::putAt(drafted()->document, m_held->handle.pointer, Value::text(m_held->measure)));
  if (patched) {
    core::drafts::Drafted meant;
    meant.document = patched.value();
    draw(core::design::readDesign(meant.text()));
  }
  emit changed();
}

void DesignViewModel::letGo() {
  if (!m_held) return;
  const Held held = *m_held;
  m_held.reset();
  m_dragged.clear();
  const Value* now = core::base::at(drafted()->document, held.handle.pointer);
  if (held.measure.empty() || (now != nullptr && now->asText() == held.measure)) {
    draw(m_read);
    emit changed();
    return;
  }
  change(designing::putAt(drafted()->document, held.handle.pointer, Value::text(held.measure)));
}

QString DesignViewModel::tollText(const core::workflow::Agenda& agenda, const core::workflow::Bench& bench) const {
  QString said = tr("%1 steps · %2").arg(agenda.steps().size()).arg(viewmodels::aheadText(agenda));
  if (bench.room) {
    said += tr(" · at %1 °C, %2 %")
                .arg(QString::number(bench.room->temperature.inCelsius(), 'g', 3),
                     QString::number(bench.room->humidity.inPercent(), 'g', 3));
  }
  for (const Message& why : agenda.byTouch()) said += QLatin1Char('\n') + words::text(why, units());
  return said;
}

void DesignViewModel::reckon() {
  m_comesTo.clear();
  m_composed.reset();
  m_agenda.reset();
  m_against.clear();
  if (!m_read.design) return;
  auto workflow = core::workflow::compose(*m_read.design, m_workbench.library().catalogue, words::thingWords());
  if (!workflow) {
    m_against = std::move(workflow).error();
    m_comesTo = designing::reasonText(m_against.front(), units());
    return;
  }
  m_composed = std::move(workflow).value();
  const core::workflow::Bench bench = core::jobs::benchFor(m_read.design->job, m_workbench.shop());
  m_agenda.emplace(*m_composed, bench);
  m_comesTo = tollText(*m_agenda, bench);
}

// What has no field, as the room, is told with what the piece comes to.
void DesignViewModel::tellNotices(std::vector<designing::Section>& sections) {
  if (!m_composed) return;
  const auto room = core::jobs::benchFor(m_read.design->job, m_workbench.shop()).room;
  for (const auto& notice : core::workflow::noticesOf(*m_read.design, *m_composed, m_workbench.library().catalogue,
                                                      words::thingWords(), room)) {
    const QString said = words::text(notice.message, units());
    if (!designing::note(sections, notice, said)) m_comesTo += QLatin1Char('\n') + words::capitalised(said);
  }
}

void DesignViewModel::weighStock() {
  m_weighedFor = revision();
  QStringList lacks;
  if (m_read.design) {
    const auto pieces = core::materials::cuttingList(m_read.design->job, m_read.design->layout);
    const auto shortage = core::supply::shortageOf("", *m_read.design, m_workbench.shop());
    for (const auto& line : shortage.lines) {
      if (!line.lack || *line.lack <= 0) continue;
      const auto piece = std::find_if(pieces.begin(), pieces.end(), [&](const auto& one) { return one.id == line.id; });
      const QString what = piece == pieces.end() ? toQt(line.of.empty() ? line.id : line.of) : words::pieceName(*piece);
      const bool counted = line.piece || line.kind == core::materials::AmountKind::Leaf;
      lacks << (counted ? tr("%1 of %2") : tr("%1 ml of %2")).arg(toQt(core::base::fixedNumber(*line.lack, 0)), what);
    }
  }
  m_lacks = lacks.isEmpty() ? QString() : tr("Missing: %1").arg(lacks.join(tr(", ")));
  emit changed();
}

// Returns the total of the piece made that way, or what is still missing.
QString DesignViewModel::tollText(const designing::Way& way) const {
  if (!way.comes) return way.wanting;
  const core::workflow::Bench bench = core::jobs::benchFor(way.comes->design.job, m_workbench.shop());
  return tollText(core::workflow::Agenda(way.comes->workflow, bench), bench);
}

// Steps of one technique that follow each other are one line.
void DesignViewModel::showSteps() {
  std::vector<RowsModel::Row> rows;
  if (m_composed) {
    const auto& steps = m_composed->steps;
    for (std::size_t i = 0; i < steps.size();) {
      core::units::Duration hands;
      QStringList waits;
      std::size_t end = i;
      for (; end < steps.size() && steps[end].technique == steps[i].technique; ++end) {
        hands = hands + steps[end].work.likely;
        for (const auto& wait : steps[end].waits) {
          // For a window that is open at once only its length is useful.
          const auto& here = m_agenda->of(wait);
          const bool atOnce = here.closes && here.opens.late.inMilliseconds() == 0;
          const QString one = tr("%1 %2").arg(toQt(wait.title), words::span(atOnce ? *here.closes : here.opens));
          if (!waits.contains(one)) waits << one;
        }
      }
      const std::size_t count = end - i;
      rows.push_back({toQt(steps[i].techniqueTitle),
                      {},
                      count == 1 ? tr("1 step · %1").arg(words::duration(hands))
                                 : tr("%1 steps · %2").arg(count).arg(words::duration(hands)),
                      waits.join(tr(" · ")),
                      {},
                      false,
                      false});
      i = end;
    }
  }
  m_stepRows.show(std::move(rows));
}

// Part by part, each measure with what it is taken from and whether it was entered.
void DesignViewModel::showMeasures() {
  std::vector<RowsModel::Row> rows;
  if (m_read.design) {
    QString above;
    for (const auto& figure : m_read.design->figures.all()) {
      // "top board, sight width": the part, and what of it.
      const QString label = words::figureLabel(figure);
      const qsizetype comma = label.indexOf(QLatin1String(", "));
      const bool parted = !figure.element.empty() && comma > 0;
      const QString part = parted ? capitalised(label.left(comma)) : tr("The whole piece");
      const QString from = words::figureDatum(figure);
      const QString origin = figure.made ? tr("as made") : figure.entered ? tr("entered") : tr("computed");
      rows.push_back({parted ? label.mid(comma + 2) : label,
                      part == above ? QString() : part,
                      toQt(figure.display),
                      from.isEmpty() ? origin : tr("%1 · %2").arg(from, origin),
                      {},
                      figure.entered,
                      false});
      above = part;
    }
  }
  m_measureRows.show(std::move(rows));
}

}  // namespace app::viewmodels
