#include "app/viewmodels/bench/figure_view_model.h"

#include <algorithm>
#include <iterator>

#include "app/convert/text.h"
#include "app/painting/materials.h"
#include "app/viewmodels/bench/card_words.h"
#include "app/viewmodels/names.h"
#include "app/words/words.h"
#include "core/sheets/piece.h"
#include "core/sheets/strip_drawing.h"

namespace app::viewmodels {

using convert::toQt;
using core::design::Figure;
using core::design::FigureUnit;

namespace {

QString signOf(const Figure& figure) {
  QString text;
  if (figure.shown.approximate) text += QStringLiteral("≈");
  if (figure.shown.negative) text += QStringLiteral("−");
  return text;
}

// The dimension itself is left out where the screen draws it.
std::shared_ptr<const std::vector<core::sheets::Primitive>> besides(
    const std::vector<core::sheets::Primitive>& dimension, bool drawnOutside) {
  std::vector<core::sheets::Primitive> kept;
  std::copy_if(dimension.begin(), dimension.end(), std::back_inserter(kept),
               [&](const auto& one) { return !drawnOutside || one.role != core::sheets::Role::Dimension; });
  return std::make_shared<const std::vector<core::sheets::Primitive>>(std::move(kept));
}

QPointF inMm(const core::sheets::Point& point) { return {point.x, point.y}; }

}  // namespace

void FigureViewModel::show(const std::string& act, std::shared_ptr<const core::design::Design> design,
                           DrawnOnce::Growth growth, std::vector<core::workflow::WorkflowFigure> figures, bool backUp,
                           std::vector<Size> sizes) {
  if (act.empty()) {
    figures.clear();
    sizes.clear();
  }
  // By name: a plan read anew may lie where another one lay.
  const bool sameAct = m_shown == act;
  const bool same = sameAct && m_design == design && m_growth == growth && m_listed == figures && m_sizes == sizes;
  if (!sameAct) m_index = m_furthest = m_size = 0;
  if (!same) {
    m_drawnOf = m_stripOf = nullptr;
    m_shown = act;
    m_design = std::move(design);
    m_growth = std::move(growth);
    m_listed = std::move(figures);
    m_sizes = std::move(sizes);
    m_cardBoard = backUp && m_design ? core::sheets::boardOfCard(*m_design, m_listed) : std::string();
    m_figures = hasCard() ? core::sheets::inOrderOfTheHand(*m_design, m_listed) : m_listed;
    layStops();
    tell();
  } else {
    emit changed();
  }
}

void FigureViewModel::tell() {
  QVariantList settings = settingsNow();
  QVariantList sizes = sizesNow();
  const bool same = settings == m_settingsTold && sizes == m_sizesTold;
  m_settingsTold = std::move(settings);
  m_sizesTold = std::move(sizes);
  emit changed();
  if (!same) emit listed();
}

void FigureViewModel::layStops() {
  m_stops.clear();
  if (hasSizes()) {
    for (const Size& size : m_sizes) {
      const auto found = std::find_if(m_figures.begin(), m_figures.end(),
                                      [&](const auto& figure) { return figure.id == size.across; });
      m_stops.push_back(static_cast<int>(found - m_figures.begin()));
    }
    m_size = std::min(m_size, stops() - 1);
    return;
  }
  for (int i = 0; i < total(); ++i) {
    const Figure* figure = figureAt(i);
    const Figure* before = figureAt(i - 1);
    const bool together =
        hasCard() && figure != nullptr && before != nullptr && isOfCutter(*figure) && isOfCutter(*before);
    if (!together) m_stops.push_back(i);
  }
}

int FigureViewModel::stop() const {
  if (hasSizes()) return m_size;
  const auto after = std::upper_bound(m_stops.begin(), m_stops.end(), m_index);
  return std::max(0, static_cast<int>(after - m_stops.begin()) - 1);
}

void FigureViewModel::goTo(int index) {
  m_index = index;
  m_furthest = std::max(m_furthest, stop());
  tell();
}

int FigureViewModel::total() const { return static_cast<int>(m_figures.size()); }

const Figure* FigureViewModel::figureAt(int index) const {
  if (!m_design || index < 0 || index >= total()) return nullptr;
  return m_design->figures.find(m_figures[static_cast<std::size_t>(index)].id);
}

std::optional<core::sheets::CardMeasure> FigureViewModel::measureAt(int index) const {
  const Figure* figure = hasCard() ? figureAt(index) : nullptr;
  if (figure == nullptr) return std::nullopt;
  return core::sheets::cardMeasure(*m_design, figure->id);
}

QString FigureViewModel::sign() const { return current() == nullptr ? QString() : signOf(*current()); }

QString FigureViewModel::whole() const { return current() == nullptr ? QString() : toQt(current()->shown.whole); }

QString FigureViewModel::numerator() const {
  const Figure* figure = current();
  if (figure == nullptr || figure->shown.denominator == 0) return {};
  return QString::number(figure->shown.numerator);
}

QString FigureViewModel::denominator() const {
  const Figure* figure = current();
  if (figure == nullptr || figure->shown.denominator == 0) return {};
  return QString::number(figure->shown.denominator);
}

QString FigureViewModel::unit() const { return current() == nullptr ? QString() : toQt(current()->shown.unit); }

QString FigureViewModel::twin() const {
  const Figure* figure = current();
  if (figure == nullptr || figure->unit != FigureUnit::Millimetre) return {};
  if (m_design->job.units == core::units::UnitSystem::Millimetres) return {};
  return toQt(core::units::lengthText(figure->value, core::units::UnitSystem::Millimetres,
                                      core::design::roundingOf(figure->kind)));
}

QString FigureViewModel::plainOf(const Figure* figure) { return figure == nullptr ? QString() : toQt(figure->display); }

QString FigureViewModel::count() const { return countAt(m_index); }

QString FigureViewModel::countAt(int index) const {
  if (figureAt(index) == nullptr) return {};
  const int pieces = m_figures[static_cast<std::size_t>(index)].count;
  if (pieces < 2) return {};
  return tr("%1 off").arg(pieces);
}

QString FigureViewModel::datum() const {
  if (current() == nullptr) return {};
  // With the back up, left and right are as the board lies.
  if (const auto measure = measureAt(m_index)) return datumOnCard(measure->datum);
  if (hasCard() && isOfCutter(*current())) return tr("set on the cutter");
  const std::string& from = m_figures[static_cast<std::size_t>(m_index)].from;
  return from.empty() ? words::figureDatum(*current()) : toQt(from);
}

QString FigureViewModel::label() const { return current() == nullptr ? QString() : words::figureLabel(*current()); }

QString FigureViewModel::origin() const {
  if (current() == nullptr) return {};
  return current()->made ? tr("as made") : current()->entered ? tr("as entered") : tr("computed");
}

QString FigureViewModel::following() const { return plainOf(figureAt(m_index + 1)); }

QString FigureViewModel::place() const {
  return total() < 2 ? QString() : tr("%1 of %2").arg(m_index + 1).arg(total());
}

QString FigureViewModel::what() const {
  if (const auto measure = measureAt(m_index)) return nameOnCard(*m_design, *measure);
  if (current() != nullptr && hasCard()) return nameOnCutter(*current());
  return capitalised(label());
}

bool FigureViewModel::byMarking() const {
  return std::any_of(m_figures.begin(), m_figures.end(), [](const auto& figure) { return figure.by.has_value(); });
}

QVariantList FigureViewModel::settingsNow() const {
  QVariantList list;
  if (!hasCard()) return list;
  const QString unit = m_design->job.units == core::units::UnitSystem::Inches ? tr("in") : tr("mm");
  const int inHand = stop();
  for (int i = 0, at = -1; i < total(); ++i) {
    if (at + 1 < stops() && m_stops[static_cast<std::size_t>(at + 1)] == i) ++at;
    const Figure* figure = figureAt(i);
    if (figure == nullptr) continue;
    const auto measure = measureAt(i);
    const std::string& told = m_figures[static_cast<std::size_t>(i)].from;
    const QString from = measure        ? datumOnCard(measure->datum)
                         : told.empty() ? words::figureDatum(*figure)
                                        : toQt(told);
    const bool ofCutter = isOfCutter(*figure);
    list << QVariantMap{{QStringLiteral("heading"), ofCutter ? tr("set on the cutter") : tr("%1, %2").arg(from, unit)},
                        {QStringLiteral("name"), measure ? nameOnCard(*m_design, *measure) : nameOnCutter(*figure)},
                        {QStringLiteral("value"), ofCutter ? plainOf(figure) : numberOnCard(*figure)},
                        {QStringLiteral("now"), at == inHand},
                        {QStringLiteral("done"), at < m_furthest && at != inHand},
                        {QStringLiteral("ofCutter"), ofCutter}};
  }
  return list;
}

QVariantList FigureViewModel::sizesNow() const {
  QVariantList list;
  const auto number = [this](const std::string& id) {
    const Figure* figure = m_design->figures.find(id);
    if (figure == nullptr) return QVariantMap();
    const bool fraction = figure->shown.denominator != 0;
    return QVariantMap{
        {QStringLiteral("whole"), signOf(*figure) + toQt(figure->shown.whole)},
        {QStringLiteral("numerator"), fraction ? QString::number(figure->shown.numerator) : QString()},
        {QStringLiteral("denominator"), fraction ? QString::number(figure->shown.denominator) : QString()},
        {QStringLiteral("unit"), toQt(figure->shown.unit)}};
  };
  for (int i = 0; m_design && i < static_cast<int>(m_sizes.size()); ++i) {
    const Size& size = m_sizes[static_cast<std::size_t>(i)];
    core::sheets::Matter matter;
    for (const core::design::Board& board : m_design->job.boards) {
      if (board.id == size.board) matter.name = board.material;
    }
    list << QVariantMap{{QStringLiteral("name"), size.name},
                        {QStringLiteral("count"), tr("%1 off").arg(size.count)},
                        {QStringLiteral("colour"), painting::colourOf(matter)},
                        {QStringLiteral("across"), number(size.across)},
                        {QStringLiteral("down"), number(size.down)},
                        {QStringLiteral("now"), i == m_size}};
  }
  return list;
}

FigureViewModel::CardSubject FigureViewModel::cardSubject() const {
  if (!hasCard()) return {};
  CardSubject subject{m_design, {}, 0};
  for (const auto& figure : m_figures) subject.figures.push_back(figure.id);
  if (m_furthest < stops()) subject.passed = static_cast<std::size_t>(m_stops[static_cast<std::size_t>(m_furthest)]);
  return subject;
}

PieceDrawing FigureViewModel::drawing() const {
  if (current() == nullptr) return {};
  // Drawn once for a figure: it is asked for with every refresh.
  if (m_drawn.piece && m_drawnOf == current()) return m_drawn;
  m_drawnOf = current();
  m_drawn = {};
  m_onPiece.reset();
  const auto dimension = core::sheets::drawFigure(*m_design, current()->id);
  if (!dimension) return {};
  m_drawn.piece = m_drawnOnce.piece(m_design, dimension->side, m_growth);
  m_onPiece = core::sheets::measureOf(dimension->primitives, *current(), m_drawn.piece->width, m_drawn.piece->height);
  m_drawn.dimension = besides(dimension->primitives, m_onPiece.has_value());
  m_drawn.worked = current()->element;
  return m_drawn;
}

PieceDrawing FigureViewModel::strip() const {
  if (current() == nullptr) return {};
  if (m_stripOf == current()) return m_strip;
  m_stripOf = current();
  m_strip = {};
  m_onStrip.reset();
  auto drawn = core::sheets::drawStrip(*m_design, current()->id);
  if (!drawn) return {};
  m_strip.piece = std::make_shared<const core::sheets::Drawing>(std::move(drawn->strip));
  m_onStrip = core::sheets::measureOf(drawn->dimension, *current(), m_strip.piece->width, m_strip.piece->height);
  m_strip.dimension = besides(drawn->dimension, m_onStrip.has_value());
  m_strip.worked = current()->element;
  return m_strip;
}

QPointF FigureViewModel::measureFrom() const { return measure() ? inMm(measure()->from) : QPointF(); }

QPointF FigureViewModel::measureTo() const { return measure() ? inMm(measure()->to) : QPointF(); }

QSizeF FigureViewModel::measuredSize() const {
  const auto piece = measured().piece;
  return piece ? QSizeF(piece->width, piece->height) : QSizeF();
}

void FigureViewModel::begin() {
  if (m_index == 0 && m_size == 0) return;
  m_size = 0;
  goTo(0);
}

bool FigureViewModel::forward() {
  if (m_index + 1 >= total()) return false;
  goTo(m_index + 1);
  return true;
}

bool FigureViewModel::back() {
  if (m_index == 0) return false;
  goTo(m_index - 1);
  return true;
}

bool FigureViewModel::onward() {
  if (stop() + 1 >= stops()) return false;
  const auto next = static_cast<std::size_t>(stop() + 1);
  if (hasSizes()) m_size = static_cast<int>(next);
  goTo(m_stops[next]);
  return true;
}

bool FigureViewModel::earlier() {
  if (stop() == 0) return false;
  const auto before = static_cast<std::size_t>(stop() - 1);
  if (hasSizes()) m_size = static_cast<int>(before);
  goTo(m_stops[before]);
  return true;
}

}  // namespace app::viewmodels
