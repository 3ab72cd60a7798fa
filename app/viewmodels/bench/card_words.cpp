#include "app/viewmodels/bench/card_words.h"

#include <QCoreApplication>

#include "app/convert/text.h"
#include "app/words/words.h"

namespace app::viewmodels {
namespace {

using convert::toQt;
using core::design::Figure;
using core::design::FigureUnit;
using core::sheets::CardMeasure;
using core::sheets::Datum;
using core::sheets::Half;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Card)
};

bool isArch(const core::design::Design& design) { return design.job.window.form.shape == core::geometry::Shape::Arch; }

// The window's own sides: an arch has jambs, a head and a sill.
QString sideOf(const core::design::Design& design, Half half) {
  const bool arch = isArch(design);
  switch (half) {
    case Half::Left: return arch ? Words::tr("left jamb") : Words::tr("left side");
    case Half::Right: return arch ? Words::tr("right jamb") : Words::tr("right side");
    case Half::Upper: return arch ? Words::tr("head") : Words::tr("top side");
    case Half::Lower: return arch ? Words::tr("sill") : Words::tr("bottom side");
    case Half::Neither: break;
  }
  return {};
}

}  // namespace

QString datumOnCard(Datum datum) {
  switch (datum) {
    case Datum::RightEdge: return Words::tr("from the right edge");
    case Datum::LeftEdge: return Words::tr("from the left edge");
    case Datum::TopEdge: return Words::tr("from the top edge");
    case Datum::BottomEdge: return Words::tr("from the bottom edge");
    case Datum::CentreLine: return Words::tr("from the centre line");
    case Datum::SpringingLine: return Words::tr("from the springing line");
    case Datum::Centre: return Words::tr("from its centre");
    case Datum::Opening: return Words::tr("across the opening");
  }
  return {};
}

QString nameOnCard(const core::design::Design& design, const CardMeasure& measure) {
  const Figure& figure = *design.figures.find(measure.figure);
  if (measure.ofWindow) return sideOf(design, measure.half);
  if (figure.kind == "board.axis") return Words::tr("centre line");
  if (figure.kind == "board.springing") return Words::tr("springing");
  if (figure.kind == "board.sight.width") return Words::tr("width");
  if (figure.kind == "board.sight.height") return Words::tr("height");
  // "top board, centre of arc 2, off the centre line": the datum says the last, the screen's title the first.
  const QString label = words::figureLabel(figure);
  const QString rest = label.section(QStringLiteral(", "), 1, 1);
  return rest.isEmpty() ? label : rest;
}

bool isOfCutter(const Figure& figure) {
  return figure.kind == "board.thickness" || figure.kind.rfind("board.bevel.", 0) == 0;
}

QString nameOnCutter(const Figure& figure) {
  if (figure.kind == "board.thickness") return Words::tr("board");
  if (figure.kind == "board.bevel.angle") return Words::tr("angle");
  if (figure.kind == "board.bevel.slope") return Words::tr("depth");
  if (figure.kind == "board.bevel.overrun") return Words::tr("overrun");
  return words::figureLabel(figure).section(QStringLiteral(", "), -1);
}

QString numberOnCard(const Figure& figure) {
  if (figure.unit != FigureUnit::Millimetre) return toQt(figure.display);
  QString text = figure.kind == "board.arc.radius" ? QStringLiteral("R ") : QString();
  if (figure.shown.approximate) text += QStringLiteral("≈");
  if (figure.shown.negative) text += QStringLiteral("−");
  text += toQt(figure.shown.whole);
  if (figure.shown.denominator == 0) return text;
  if (!figure.shown.whole.empty()) text += QLatin1Char(' ');
  return text + QStringLiteral("%1/%2").arg(figure.shown.numerator).arg(figure.shown.denominator);
}

}  // namespace app::viewmodels
