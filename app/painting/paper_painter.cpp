#include "app/painting/paper_painter.h"

#include <QTransform>
#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

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

// Adds a curve's chords, as many as keep within a quarter of a pixel or so of it: halved until its two inner points lie
// near enough to the chord, or to its beginning where it is shorter than a pixel. The painter halves just so.
void addChords(QPainterPath& path, const std::array<QPointF, 4>& curve, int halvings) {
  constexpr double kFlat = 0.25;
  const QPointF chord = curve[3] - curve[0];
  const double length = std::abs(chord.x()) + std::abs(chord.y());
  double off = 0;
  for (const QPointF& point : {curve[1], curve[2]}) {
    const QPointF from = curve[0] - point;
    off += length > 1 ? std::abs(chord.x() * from.y() - chord.y() * from.x()) : std::abs(from.x()) + std::abs(from.y());
  }
  if (halvings == 0 || off < kFlat * std::max(length, 1.0)) {
    path.lineTo(curve[3]);
    return;
  }
  const auto middle = [](const QPointF& a, const QPointF& b) { return (a + b) / 2; };
  const QPointF first = middle(curve[0], curve[1]);
  const QPointF between = middle(curve[1], curve[2]);
  const QPointF last = middle(curve[2], curve[3]);
  const QPointF before = middle(first, between);
  const QPointF after = middle(between, last);
  const QPointF half = middle(before, after);
  addChords(path, {curve[0], first, before, half}, halvings - 1);
  addChords(path, {half, after, last, curve[3]}, halvings - 1);
}

// The same shape without curves, of which the painter would otherwise make chords anew for every copy.
QPainterPath straightened(const QPainterPath& shape) {
  constexpr int kHalvings = 9;
  QPainterPath path;
  path.setFillRule(shape.fillRule());
  for (int i = 0; i < shape.elementCount(); ++i) {
    const QPainterPath::Element& element = shape.elementAt(i);
    switch (element.type) {
      case QPainterPath::MoveToElement: path.moveTo(element); break;
      case QPainterPath::LineToElement: path.lineTo(element); break;
      case QPainterPath::CurveToElement:
        addChords(path, {path.currentPosition(), element, shape.elementAt(i + 1), shape.elementAt(i + 2)}, kHalvings);
        i += 2;
        break;
      case QPainterPath::CurveToDataElement: break;
    }
  }
  return path;
}

// Paints a motif over and over. Only where the paper's edge runs through one it is clipped: that is dear.
class Printer {
 public:
  // A strip is convex, so that its corners tell whether a motif lies in it.
  Printer(QPainter& painter, const QPainterPath& paper, bool strip, const QTransform& place, const QColor& ink)
      : m_painter(painter), m_paper(paper), m_place(place), m_ink(ink) {
    if (strip) m_strip = paper.toFillPolygon();
  }

  void print(const QPainterPath& cell, const QRectF& seen, double repeat, double shift, double up) {
    const QPainterPath placed = straightened(m_place.map(cell));
    const QRectF box = placed.boundingRect();
    const double first = std::floor((seen.left() - shift) / repeat - 0.5);
    const double last = std::ceil((seen.right() - shift) / repeat + 0.5);
    bool besideCut = false;
    for (double k = first; k <= last; ++k) {
      const QPointF by = m_place.map(QPointF(shift + k * repeat, up)) - m_place.map(QPointF());
      const bool whole = isWhole(box.translated(by));
      const bool cut = !whole && m_paper.intersects(box.translated(by));
      if (whole) m_painter.fillPath(placed.translated(by), m_ink);
      if (cut && besideCut) m_cut.back().addPath(placed.translated(by));
      if (cut && !besideCut) m_cut.push_back(placed.translated(by));
      besideCut = cut;
    }
  }
  // Along the strip, `clear` of every motif.
  void printAlong(const QRectF& stripe, bool clear) {
    m_cut.push_back(m_place.map(rectangular(stripe)));
    m_clear = m_clear && clear;
  }
  void finish() {
    m_painter.save();
    m_painter.setClipPath(m_paper, Qt::IntersectClip);
    if (!m_clear) {
      // Where they touch, shapes filled one after the other would show their seam.
      QPainterPath all;
      for (const QPainterPath& one : m_cut) all.addPath(one);
      m_cut = {all};
    }
    for (QPainterPath& one : m_cut) {
      one.setFillRule(Qt::WindingFill);
      m_painter.fillPath(one, m_ink);
    }
    m_painter.restore();
  }

 private:
  bool isWhole(const QRectF& box) const {
    if (m_strip.isEmpty()) return m_paper.contains(box);
    const std::array<QPointF, 4> corners = {box.topLeft(), box.topRight(), box.bottomRight(), box.bottomLeft()};
    return std::all_of(corners.begin(), corners.end(),
                       [&](const QPointF& corner) { return m_strip.containsPoint(corner, Qt::OddEvenFill); });
  }
  static QPainterPath rectangular(const QRectF& rectangle) {
    QPainterPath path;
    path.addRect(rectangle);
    return path;
  }

  QPainter& m_painter;
  const QPainterPath& m_paper;
  QTransform m_place;
  QColor m_ink;
  QPolygonF m_strip;
  // Neighbours are one shape, what lies apart is not: the painter goes through all rows from the first to the last of
  // one.
  std::vector<QPainterPath> m_cut;
  bool m_clear = true;
};

// Lies on the sheet from its lower left corner, in rows.
Run asSheet(const QPainterPath& shape, double scale) {
  const QRectF bounds = shape.boundingRect();
  Run run;
  run.from = {bounds.left() / scale, bounds.bottom() / scale};
  run.along = {1, 0};
  run.outwards = {0, -1};
  run.width = kRow;
  return run;
}

// What the device shows of a box, from and to whole pixels of it: only that is laid out.
QRectF seenOf(const QPainter& painter, const QRectF& box) {
  const QTransform& toDevice = painter.deviceTransform();
  QRectF device = toDevice.mapRect(box);
  if (painter.device() != nullptr) device &= QRectF(0, 0, painter.device()->width(), painter.device()->height());
  const QRect pixels = device.toAlignedRect();
  if (pixels.isEmpty()) return {};
  const QRectF seen = toDevice.inverted().mapRect(QRectF(pixels));
  // Where the device's pixels are not the painter's, a pixel more is better than one too few.
  const auto whole = [](double length) { return std::ceil(length - 1e-6); };
  return {seen.topLeft(), QSizeF(whole(seen.width()), whole(seen.height()))};
}

void paintPictured(QPainter& painter, const QPainterPath& shape, const core::sheets::Matter& matter,
                   const SheetPicture& picture, double scale, const Light& light) {
  const QRectF bounds = shape.boundingRect();
  const QRectF seen = seenOf(painter, bounds);
  if (seen.isEmpty()) return;
  PaperPlace place;
  if (matter.run) {
    place.toPixels = placeOf(*matter.run, scale);
    place.repeat = matter.run->repeat;
    place.middle = matter.run->width / 2;
  } else {
    // A corner's piece shows the middle of the picture.
    place.toPixels = QTransform(scale, 0, 0, -scale, bounds.center().x(), bounds.center().y());
  }
  if (picture.isTooFine(place)) {
    painter.fillPath(shape, light.on(picture.mean(), Breadth::Fine));
    return;
  }
  QBrush brush(picture.stretch(place, seen, light));
  brush.setTransform(QTransform::fromTranslate(seen.left(), seen.top()));
  painter.fillPath(shape, brush);
}

}  // namespace

void paintPaper(QPainter& painter, const QPainterPath& shape, const core::sheets::Matter& matter, const Appearance& own,
                double scale, const Light& light) {
  if (own.picture) {
    paintPictured(painter, shape, matter, *own.picture, scale, light);
    return;
  }
  const bool strip = matter.run.has_value();
  const Paper paper = paperNamed(matter.name, strip && matter.run->repeat > 0, own.colour);
  const Run run = strip ? *matter.run : asSheet(shape, scale);
  const double repeat = run.repeat > 0 ? run.repeat : usualLength(paper.pattern) * run.width;
  const QTransform place = placeOf(run, scale);
  const QRectF seen = place.inverted().map(shape).boundingRect();
  const double rows = strip ? 1 : std::ceil(seen.height() / run.width);
  const bool fine = repeat * scale < kLeastRepeat || seen.width() / repeat * rows > kMostMotifs;
  const QColor ground =
      fine && paper.pattern != Pattern::Plain ? mixed(paper.ground, paper.figure, kBlended) : paper.ground;
  painter.fillPath(shape, light.on(ground, Breadth::Fine));
  if (paper.pattern == Pattern::Plain || fine) return;

  const QPainterPath cell = about(run, paper.pattern, repeat);
  Printer printer(painter, shape, strip, place, light.on(paper.figure, Breadth::Fine));
  for (double row = 0; row < rows; ++row)
    printer.print(cell, seen, repeat, std::fmod(row, 2) * repeat / 2, row * run.width);
  if (strip && isEdged(paper.pattern)) {
    // By more than a pixel, so that none holds ink of both.
    constexpr double kClear = 2;
    const QRectF box = cell.boundingRect();
    const double least = kEdgeTo * run.width + kClear / scale;
    const bool clear = box.top() >= least && box.bottom() <= run.width - least;
    for (const double from : {kEdgeFrom, 1 - kEdgeTo})
      printer.printAlong({seen.left(), from * run.width, seen.width(), (kEdgeTo - kEdgeFrom) * run.width}, clear);
  }
  printer.finish();
}

}  // namespace app::painting
