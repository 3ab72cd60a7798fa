#include "app/viewmodels/bench/figure_view_model.h"

#include <algorithm>
#include <iterator>

#include "app/convert/text.h"
#include "app/viewmodels/names.h"
#include "app/words/words.h"
#include "core/sheets/piece.h"
#include "core/sheets/strip_drawing.h"

namespace app::viewmodels {

using convert::toQt;
using core::design::Figure;
using core::design::FigureUnit;

namespace {

// What the setting of a tool is called where there is room for a word.
QString shortName(const Figure& figure) {
  if (figure.kind == "board.thickness") return FigureViewModel::tr("board");
  if (figure.kind == "board.bevel.angle") return FigureViewModel::tr("angle");
  if (figure.kind == "board.bevel.slope") return FigureViewModel::tr("depth");
  if (figure.kind == "board.bevel.overrun") return FigureViewModel::tr("overrun");
  if (figure.kind == "board.oval.string") return FigureViewModel::tr("string");
  return words::figureLabel(figure).section(QStringLiteral(", "), -1);
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
                           DrawnOnce::Growth growth, std::vector<core::workflow::WorkflowFigure> figures, bool backUp) {
  if (act.empty()) figures.clear();
  // By name: a plan read anew may lie where another one lay.
  const bool sameAct = m_shown == act;
  const bool same = sameAct && m_design == design && m_growth == growth && m_listed == figures;
  if (!sameAct) m_index = 0;
  if (!same) {
    m_drawnOf = m_stripOf = nullptr;
    m_shown = act;
    m_design = std::move(design);
    m_growth = std::move(growth);
    m_listed = std::move(figures);
    m_cardBoard = backUp && m_design ? core::sheets::boardOfCard(*m_design, m_listed) : std::string();
    m_figures = hasCard() ? core::sheets::inOrderOfTheHand(*m_design, m_listed) : m_listed;
  }
  emit changed();
}

int FigureViewModel::total() const { return static_cast<int>(m_figures.size()); }

const Figure* FigureViewModel::figureAt(int index) const {
  if (!m_design || index < 0 || index >= total()) return nullptr;
  return m_design->figures.find(m_figures[static_cast<std::size_t>(index)].id);
}

QString FigureViewModel::sign() const {
  const Figure* figure = current();
  if (figure == nullptr) return {};
  QString text;
  if (figure->shown.approximate) text += QStringLiteral("≈");
  if (figure->shown.negative) text += QStringLiteral("−");
  return text;
}

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

QString FigureViewModel::labelAndDatum() const {
  QStringList parts = {label(), datum()};
  parts.removeAll(QString());
  return parts.join(QStringLiteral(" · "));
}

QString FigureViewModel::datum() const {
  if (current() == nullptr) return {};
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

QString FigureViewModel::shortPlace() const {
  return total() < 2 ? QString() : QStringLiteral("%1/%2").arg(m_index + 1).arg(total());
}

QString FigureViewModel::what() const {
  if (current() != nullptr && hasCard() && !core::sheets::cardMeasure(*m_design, current()->id))
    return capitalised(shortName(*current()));
  const QString all = label();
  const QString after = all.section(QStringLiteral(", "), 1);
  return capitalised(!hasCard() || after.isEmpty() ? all : after);
}

QString FigureViewModel::cardUnit() const {
  if (!hasCard()) return {};
  return m_design->job.units == core::units::UnitSystem::Inches ? tr("in") : tr("mm");
}

bool FigureViewModel::byMarking() const {
  return std::any_of(m_figures.begin(), m_figures.end(), [](const auto& figure) { return figure.by.has_value(); });
}

QVariantList FigureViewModel::beside() const {
  QVariantList list;
  if (!hasCard()) return list;
  for (int i = 0; i < total(); ++i) {
    const Figure* figure = figureAt(i);
    if (figure == nullptr || core::sheets::cardMeasure(*m_design, figure->id)) continue;
    list << QVariantMap{{QStringLiteral("name"), shortName(*figure)},
                        {QStringLiteral("text"), plainOf(figure)},
                        {QStringLiteral("current"), i == m_index}};
  }
  return list;
}

FigureViewModel::CardSubject FigureViewModel::cardSubject() const {
  if (!hasCard()) return {};
  CardSubject subject{m_design, {}};
  for (const auto& figure : m_figures) subject.figures.push_back(figure.id);
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
  if (m_index == 0) return;
  m_index = 0;
  emit changed();
}

bool FigureViewModel::forward() {
  if (m_index + 1 >= total()) return false;
  ++m_index;
  emit changed();
  return true;
}

bool FigureViewModel::back() {
  if (m_index == 0) return false;
  --m_index;
  emit changed();
  return true;
}

}  // namespace app::viewmodels
