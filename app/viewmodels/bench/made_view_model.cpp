#include "app/viewmodels/bench/made_view_model.h"

#include <algorithm>
#include <cmath>

#include "app/convert/text.h"
#include "app/viewmodels/names.h"
#include "app/words/words.h"
#include "core/decisions/made_changes.h"
#include "core/sheets/card.h"
#include "core/sheets/piece.h"
#include "core/units/length_entry.h"

namespace app::viewmodels {

using convert::toQt;
using core::design::Figure;
using core::units::Length;
using core::units::Rounding;
using core::units::UnitSystem;

namespace {

Length nearest(double millimetres) { return Length::nanometres(std::llround(millimetres * 1e6)); }

}  // namespace

MadeViewModel::MadeViewModel(workbench::Workbench& workbench, QObject* parent)
    : QObject(parent), m_workbench(workbench) {}

void MadeViewModel::show(const std::string& jobId, const std::vector<const core::workflow::WorkflowStep*>& steps) {
  std::string act;
  for (const auto* step : steps) act += step->id + '\n';
  if (jobId != m_jobId || act != m_act) {
    m_jobId = jobId;
    m_act = act;
    m_figures.clear();
    for (const auto* step : steps) {
      for (const std::string& figure : step->asMade) {
        const bool known =
            std::any_of(m_figures.begin(), m_figures.end(), [&](const Measured& one) { return one.figure == figure; });
        if (!known && core::design::isPinnable(figure)) m_figures.push_back({figure, step->id});
      }
    }
    open();
    return;
  }
  refresh();
}

void MadeViewModel::open() {
  m_index = 0;
  m_over = false;
  m_value.reset();
  m_entry = NumberEntry(jobUnits());
  m_refusal.clear();
  m_question.clear();
  m_before = state() == nullptr ? nullptr : state()->design;
  refresh();
}

UnitSystem MadeViewModel::jobUnits() const {
  return state() == nullptr ? UnitSystem::Millimetres : state()->plan->design.job.units;
}

const Figure* MadeViewModel::figure() const {
  return state() == nullptr || total() == 0 ? nullptr : state()->design->figures.find(figureId());
}

const Figure* MadeViewModel::plainFigure() const {
  return !m_without || total() == 0 ? nullptr : m_without->figures.find(figureId());
}

bool MadeViewModel::measuredHere() const {
  if (figure() == nullptr || !figure()->made) return false;
  const auto measure = state()->measures.find(figureId());
  return measure == state()->measures.end() || measure->second.step == stepId();
}

void MadeViewModel::refresh() {
  m_drawing = {};
  m_without = nullptr;
  if (figure() != nullptr) {
    // A figure measured on another piece is the target for this one, so it stays.
    if (measuredHere()) {
      auto read = core::decisions::designWithout(*state(), figureId());
      if (read.design) m_without = std::make_shared<const core::design::Design>(std::move(*read.design));
    } else {
      m_without = state()->design;
    }
    auto dimension = core::sheets::drawFigure(*state()->design, figureId());
    if (dimension && measuredAt()->up == core::craft::WayUp::Back &&
        core::sheets::cardMeasure(*state()->design, figureId()))
      core::sheets::turnToBack(*dimension, *state()->design);
    if (dimension) {
      m_drawing.piece = m_drawn.piece(state()->design, dimension->side, m_drawn.growth(*state()));
      m_drawing.dimension = std::make_shared<const std::vector<core::sheets::Primitive>>(dimension->primitives);
      m_drawing.worked = figure()->element;
    }
  }
  showScale();
  showOutcome();
  showChanges();
  showFollowing();
  emit changed();
}

void MadeViewModel::showChanges() {
  m_changes.clear();
  m_contradicted.clear();
  if (state() == nullptr || !m_before || m_before == state()->design) return;
  const auto found = core::decisions::changesBetween(*state(), *m_before, *state()->design);
  for (const auto& change : found.figures) {
    const Figure* named = state()->design->figures.find(change.figure);
    if (!change.ahead || named == nullptr) continue;
    m_changes << tr("%1: %2 → %3")
                     .arg(capitalised(words::figureLabel(*named)), toQt(change.displayBefore),
                          toQt(change.displayAfter));
  }
  for (const auto& one : found.contradicted) {
    const Figure* named = state()->design->figures.find(one.change.figure);
    if (named == nullptr) continue;
    m_contradicted << tr("%1 was done with %2 %3; it would now be %4.")
                          .arg(toQt(state()->plan->workflow.steps[one.step].title), words::figureLabel(*named),
                               toQt(one.change.displayBefore), toQt(one.change.displayAfter));
  }
}

void MadeViewModel::showFollowing() {
  m_followBoard.clear();
  m_coverFigures.clear();
  m_revealFigures.clear();
  if (state() == nullptr) return;
  const std::string board = core::decisions::boardToFollow(*state());
  if (board.empty()) return;
  m_followBoard = toQt(board);
  m_reveal = state()->made().follow(board) == core::design::Follow::Reveal;
  const auto figures = [&](core::design::Follow follow) -> QString {
    const auto kept = core::decisions::keptBy(*state(), board, follow);
    if (!kept) return {};
    QStringList lines{tr("reveal %1, flat %2").arg(toQt(kept->reveal), toQt(kept->flat))};
    if (kept->cover) {
      lines << tr("covers %1").arg(toQt(core::units::lengthText(*kept->cover, jobUnits(), Rounding::Nearest)));
    }
    lines << tr("opening %1 × %2").arg(toQt(kept->width), toQt(kept->height));
    return lines.join(QLatin1Char('\n'));
  };
  m_coverFigures = figures(core::design::Follow::Cover);
  m_revealFigures = figures(core::design::Follow::Reveal);
}

QString MadeViewModel::place() const { return total() < 2 ? QString() : tr("%1 of %2").arg(m_index + 1).arg(total()); }
QString MadeViewModel::label() const {
  return figure() == nullptr ? QString() : capitalised(words::figureLabel(*figure()));
}
QString MadeViewModel::datum() const {
  if (figure() == nullptr) return {};
  // The step says from where the hand reads it on the side that is up.
  for (const core::workflow::WorkflowFigure& one : measuredAt()->figures) {
    if (one.id == figureId() && !one.from.empty()) return toQt(one.from);
  }
  return words::figureDatum(*figure());
}

const core::workflow::WorkflowStep* MadeViewModel::measuredAt() const { return state()->plan->workflow.find(stepId()); }

QString MadeViewModel::computed() const {
  const Figure* plain = plainFigure();
  if (plain == nullptr) return {};
  const QString from = plain->made      ? tr("measured on another piece: %1")
                       : plain->entered ? tr("entered %1")
                                        : tr("computed %1");
  return from.arg(toQt(plain->display));
}

QString MadeViewModel::measured() const {
  return measuredHere() ? tr("measured %1").arg(toQt(figure()->display)) : QString();
}

QString MadeViewModel::difference() const {
  const Figure* plain = plainFigure();
  if (plain == nullptr) return {};
  double value = figure()->value;
  if (keyed()) {
    const auto length = m_entry.length();
    if (!length) return {};
    value = length.value().inMillimetres();
  } else if (!measuredHere()) {
    return {};
  }
  const double off = value - plain->value;
  if (std::fabs(off) < 0.05) return plain->made ? tr("as the other piece") : tr("as computed");
  const QString by = toQt(core::units::lengthText(std::fabs(off), m_entry.units(), Rounding::Nearest));
  return off > 0 ? tr("%1 more").arg(by) : tr("%1 less").arg(by);
}

QString MadeViewModel::tolerance() const {
  if (figure() == nullptr) return {};
  const auto found = core::design::toleranceOf(figureId());
  return words::text(
      core::base::Message(found.source).with("within", core::base::Millimetres{found.within.inMillimetres()}),
      jobUnits());
}

void MadeViewModel::digit(int digit) {
  m_refusal.clear();
  m_value.reset();
  m_entry.digit(digit);
  emit changed();
}

void MadeViewModel::part() {
  m_refusal.clear();
  m_entry.part();
  emit changed();
}

void MadeViewModel::erase() {
  m_refusal.clear();
  m_entry.erase();
  emit changed();
}

void MadeViewModel::turnUnits() {
  m_refusal.clear();
  m_entry.turnUnits();
  emit changed();
}

void MadeViewModel::drop() {
  m_refusal.clear();
  m_entry.clear();
  showOutcome();
  emit changed();
}

bool MadeViewModel::forward() {
  m_entry.clear();
  m_value.reset();
  m_refusal.clear();
  m_question.clear();
  if (m_index + 1 >= total()) {
    m_over = true;
    emit changed();
    return false;
  }
  ++m_index;
  refresh();
  return true;
}

bool MadeViewModel::back() {
  const bool dropped = keyed() || m_value || !m_question.isEmpty();
  m_entry.clear();
  m_value.reset();
  m_refusal.clear();
  m_question.clear();
  m_over = false;
  if (!dropped && m_index == 0) return false;
  if (!dropped) --m_index;
  refresh();
  return true;
}

bool MadeViewModel::keep() {
  if (figure() == nullptr) return false;
  const auto length = m_entry.length();
  if (!length) {
    m_refusal = words::text(length.error(), m_entry.units());
    emit changed();
    return false;
  }
  return enter(length.value(), "");
}

bool MadeViewModel::agrees() {
  const Figure* plain = plainFigure();
  return plain != nullptr && enter(nearest(plain->value), "");
}

bool MadeViewModel::forget() {
  if (figure() == nullptr || !figure()->made) return false;
  const auto refused = m_workbench.submit(core::intents::OfJob{m_jobId, core::intents::ForgetAsMade{figureId()}});
  m_refusal = refused.id.empty() ? QString() : words::text(refused, jobUnits());
  refresh();
  return refused.id.empty();
}

bool MadeViewModel::enter(Length value, const std::string& overrules) {
  const auto refused = m_workbench.submit(
      core::intents::OfJob{m_jobId, core::intents::EnterAsMade{stepId(), figureId(), value, overrules}});
  if (!refused.id.empty()) {
    ask(refused, value);
    return false;
  }
  forward();
  return true;
}

void MadeViewModel::ask(const core::base::Message& refused, Length value) {
  m_question.clear();
  m_refusal = words::text(refused, m_entry.units());
  const std::string other = core::design::acrossTheBevel(figureId());
  const Figure* against = state()->design->figures.find(other);
  if (refused.id == "made.sight-against-face" && against != nullptr && against->made) {
    m_question = m_refusal;
    m_refusal.clear();
    m_overrules = other;
    m_newer = label() + QLatin1Char('\n') + toQt(core::units::enteredText(value, m_entry.units()));
    m_older = capitalised(words::figureLabel(*against)) + QLatin1Char('\n') + toQt(against->display);
  }
  emit changed();
}

void MadeViewModel::answer(bool newerIsRight) {
  if (m_question.isEmpty()) return;
  m_question.clear();
  if (!newerIsRight) {
    forward();
    return;
  }
  enter(chosen(), m_overrules);
}

bool MadeViewModel::follow(bool keepReveal) {
  const std::string board = m_followBoard.toStdString();
  if (board.empty()) return false;
  const auto refused =
      m_workbench.submit(core::intents::OfJob{m_jobId, core::intents::ChooseFollow{board, keepReveal}});
  m_refusal = refused.id.empty() ? QString() : words::text(refused, jobUnits());
  refresh();
  return refused.id.empty();
}

}  // namespace app::viewmodels
