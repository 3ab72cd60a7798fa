#include "app/painting/paper_painter.h"

#include <QTransform>
#include <algorithm>
#include <cmath>

#include "app/painting/materials.h"
#include "app/painting/motif.h"

namespace app::painting {
namespace {

using core::sheets::Run;

// A repeat of fewer pixels would be a grey of its own; a tone between ground and figure stands for it.
constexpr double kLeastRepeat = 4;
constexpr double kBlended = 0.35;
// Where a sheet has no run of its own its rows are as high, mm.
constexpr double kRow = 11;
// The two thin lines that a block-printed strip has along its edges: from, to, in shares of its width.
constexpr double kEdgeFrom = 0.045;
constexpr double kEdgeTo = 0.085;
// A paper so large that its motifs could not be told apart anyway is not worth their number.
constexpr double kMostMotifs = 6000;

// From mm along and across a run to pixels.
QTransform placeOf(const Run& run, double scale) {
  return {run.along.x * scale,    run.along.y * scale, run.outwards.x * scale,
          run.outwards.y * scale, run.from.x * scale,  run.from.y * scale};
}

// The motif about x = 0: whole, or a half and its mirror image.
QPainterPath about(const Run& run, Pattern pattern, double repeat) {
  if (!run.mirror) return motif(pattern, {repeat, run.width}).translated(-repeat / 2, 0);
  QPainterPath both = motif(pattern, {repeat / 2, run.width});
  // Turned about, so that where the halves overlap they are filled and not taken from each other.
  both.addPath(QTransform::fromScale(-1, 1).map(both).toReversed());
  both.setFillRule(Qt::WindingFill);
  return both;
}

bool isEdged(Pattern pattern) {
  return pattern != Pattern::Plain && pattern != Pattern::Laid && pattern != Pattern::Comb && pattern != Pattern::Reed;
}

// One row of motifs, as far as it can be seen in `seen`, which is in mm along and across the run.
void addRow(QPainterPath& all, const QPainterPath& cell, const QRectF& seen, double repeat, double shift, double up) {
  const double first = std::floor((seen.left() - shift) / repeat - 0.5);
  const double last = std::ceil((seen.right() - shift) / repeat + 0.5);
  for (double k = first; k <= last; ++k) all.addPath(cell.translated(shift + k * repeat, up));
}

}  // namespace

void paintPaper(QPainter& painter, const QPainterPath& shape, const core::sheets::Matter& matter, double scale,
                const Light& light) {
  const bool strip = matter.run.has_value();
  const Paper paper = paperNamed(matter.name, strip && matter.run->repeat > 0);
  Run run;
  if (strip) {
    run = *matter.run;
  } else {
    const QRectF bounds = shape.boundingRect();
    run.from = {bounds.left() / scale, bounds.bottom() / scale};
    run.along = {1, 0};
    run.outwards = {0, -1};
    run.width = kRow;
  }
  const double repeat = run.repeat > 0 ? run.repeat : usualLength(paper.pattern) * run.width;
  const QTransform place = placeOf(run, scale);
  const QRectF seen = place.inverted().map(shape).boundingRect();
  const double rows = strip ? 1 : std::ceil(seen.height() / run.width);
  const bool fine = repeat * scale < kLeastRepeat || seen.width() / repeat * rows > kMostMotifs;
  const QColor ground =
      fine && paper.pattern != Pattern::Plain ? mixed(paper.ground, paper.figure, kBlended) : paper.ground;
  painter.fillPath(shape, light.on(ground, Breadth::Fine));
  if (paper.pattern == Pattern::Plain || fine) return;

  QPainterPath all;
  all.setFillRule(Qt::WindingFill);
  const QPainterPath cell = about(run, paper.pattern, repeat);
  for (double row = 0; row < rows; ++row)
    addRow(all, cell, seen, repeat, std::fmod(row, 2) * repeat / 2, row * run.width);
  if (strip && isEdged(paper.pattern)) {
    for (const double from : {kEdgeFrom, 1 - kEdgeTo})
      all.addRect(seen.left(), from * run.width, seen.width(), (kEdgeTo - kEdgeFrom) * run.width);
  }
  painter.save();
  painter.setClipPath(shape, Qt::IntersectClip);
  painter.fillPath(place.map(all), light.on(paper.figure, Breadth::Fine));
  painter.restore();
}

}  // namespace app::painting
