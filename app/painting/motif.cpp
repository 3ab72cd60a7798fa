#include "app/painting/motif.h"

#include <QPainterPathStroker>
#include <QPolygonF>

namespace app::painting {
namespace {

// Draws in shares of the cell's length and of the strip's width.
class Cell {
 public:
  explicit Cell(const QSizeF& size) : m_size(size) { m_shape.setFillRule(Qt::WindingFill); }

  QPointF at(double x, double y) const { return {x * m_size.width(), y * m_size.height()}; }

  // A line as thick as that share of the strip's width.
  void line(const QPainterPath& path, double thickness) {
    QPainterPathStroker stroker;
    stroker.setWidth(thickness * m_size.height());
    stroker.setCapStyle(Qt::FlatCap);
    stroker.setJoinStyle(Qt::MiterJoin);
    // Fine enough for the eye, and no finer: it is painted hundreds of times.
    stroker.setCurveThreshold(0.25);
    m_shape.addPath(stroker.createStroke(path));
  }
  void polygon(std::initializer_list<QPointF> points) {
    QPolygonF shape;
    for (const QPointF& point : points) shape << at(point.x(), point.y());
    m_shape.addPolygon(shape);
    m_shape.closeSubpath();
  }
  void dot(double x, double y, double radius) {
    const double r = radius * m_size.height();
    m_shape.addEllipse(at(x, y), r, r);
  }
  QPainterPath path(double x, double y) const {
    QPainterPath path;
    path.moveTo(at(x, y));
    return path;
  }
  void curve(QPainterPath& path, QPointF first, QPointF second, QPointF to) const {
    path.cubicTo(at(first.x(), first.y()), at(second.x(), second.y()), at(to.x(), to.y()));
  }
  void straight(QPainterPath& path, double x, double y) const { path.lineTo(at(x, y)); }

  QPainterPath take() { return std::move(m_shape); }

 private:
  QSizeF m_size;
  QPainterPath m_shape;
};

// A crest that rises from the trough, breaks and curls in; spray before the next.
void wave(Cell& cell) {
  QPainterPath crest = cell.path(0, 0.26);
  cell.curve(crest, {0.22, 0.26}, {0.26, 0.76}, {0.54, 0.76});
  cell.curve(crest, {0.8, 0.76}, {0.84, 0.36}, {0.62, 0.36});
  cell.curve(crest, {0.47, 0.36}, {0.46, 0.58}, {0.6, 0.57});
  cell.line(crest, 0.095);
  QPainterPath trough = cell.path(0.6, 0.26);
  cell.straight(trough, 1, 0.26);
  cell.line(trough, 0.095);
  cell.dot(0.9, 0.62, 0.06);
}

// Blades that lean with the wind.
void reed(Cell& cell) {
  for (const double x : {0.0, 0.34, 0.67}) {
    cell.polygon({{x, 0.1}, {x + 0.12, 0.1}, {x + 0.3, 0.9}, {x + 0.22, 0.9}});
  }
}

void scale(Cell& cell) {
  const auto arch = [&](double x, double y, double rise, double thickness, double half) {
    QPainterPath path = cell.path(x - half, y);
    cell.curve(path, {x - half, y + rise * 1.3}, {x + half, y + rise * 1.3}, {x + half, y});
    cell.line(path, thickness);
  };
  arch(0.5, 0.12, 0.4, 0.055, 0.5);
  arch(0.5, 0.12, 0.22, 0.05, 0.26);
  arch(0, 0.5, 0.4, 0.055, 0.5);
  arch(1, 0.5, 0.4, 0.055, 0.5);
  arch(0, 0.5, 0.2, 0.05, 0.22);
  arch(1, 0.5, 0.2, 0.05, 0.22);
  cell.dot(0.5, 0.17, 0.05);
}

// Strands laid over each other.
void rope(Cell& cell) {
  QPainterPath strand = cell.path(0.02, 0.1);
  cell.curve(strand, {0.5, 0.12}, {0.5, 0.88}, {0.98, 0.9});
  cell.line(strand, 0.16);
}

void key(Cell& cell) {
  QPainterPath path = cell.path(0, 0.2);
  for (const QPointF& to : {QPointF(0.12, 0.2), QPointF(0.12, 0.8), QPointF(0.84, 0.8), QPointF(0.84, 0.4),
                            QPointF(0.4, 0.4), QPointF(0.4, 0.6), QPointF(0.62, 0.6)})
    cell.straight(path, to.x(), to.y());
  cell.line(path, 0.09);
  QPainterPath foot = cell.path(0.12, 0.2);
  cell.straight(foot, 1, 0.2);
  cell.line(foot, 0.09);
}

void ripple(Cell& cell) {
  for (const double y : {0.2, 0.5, 0.8}) {
    QPainterPath path = cell.path(0, y - 0.08);
    cell.curve(path, {0.3, y - 0.08}, {0.2, y + 0.1}, {0.5, y + 0.1});
    cell.curve(path, {0.8, y + 0.1}, {0.7, y - 0.08}, {1, y - 0.08});
    cell.line(path, 0.07);
  }
}

// What a comb leaves in coloured paste.
void comb(Cell& cell) {
  for (const double y : {0.14, 0.32, 0.5, 0.68, 0.86}) {
    QPainterPath path = cell.path(0, y);
    cell.curve(path, {0.25, y + 0.07}, {0.35, y + 0.07}, {0.5, y});
    cell.curve(path, {0.65, y - 0.07}, {0.75, y - 0.07}, {1, y});
    cell.line(path, 0.05);
  }
}

// Close lines of the mould's wires, and one of those that tie them.
void laid(Cell& cell) {
  for (const double y : {0.1, 0.3, 0.5, 0.7, 0.9}) cell.polygon({{0, y}, {1, y}, {1, y + 0.03}, {0, y + 0.03}});
  cell.polygon({{0.49, 0}, {0.51, 0}, {0.51, 1}, {0.49, 1}});
}

void lozenge(Cell& cell) {
  QPainterPath path = cell.path(0.1, 0.5);
  for (const QPointF& to : {QPointF(0.5, 0.82), QPointF(0.9, 0.5), QPointF(0.5, 0.18)})
    cell.straight(path, to.x(), to.y());
  path.closeSubpath();
  cell.line(path, 0.08);
  cell.dot(0.5, 0.5, 0.09);
  cell.dot(0, 0.5, 0.05);
  cell.dot(1, 0.5, 0.05);
}

}  // namespace

QPainterPath motif(Pattern pattern, const QSizeF& size) {
  Cell cell(size);
  switch (pattern) {
    case Pattern::Wave: wave(cell); break;
    case Pattern::Reed: reed(cell); break;
    case Pattern::Scale: scale(cell); break;
    case Pattern::Rope: rope(cell); break;
    case Pattern::Key: key(cell); break;
    case Pattern::Ripple: ripple(cell); break;
    case Pattern::Comb: comb(cell); break;
    case Pattern::Laid: laid(cell); break;
    case Pattern::Lozenge: lozenge(cell); break;
    case Pattern::Plain: break;
  }
  return cell.take();
}

double usualLength(Pattern pattern) {
  switch (pattern) {
    case Pattern::Wave: return 1.7;
    case Pattern::Reed: return 0.6;
    case Pattern::Scale: return 0.9;
    case Pattern::Rope: return 0.55;
    case Pattern::Key: return 1.1;
    case Pattern::Ripple: return 1.3;
    case Pattern::Comb: return 1.2;
    case Pattern::Laid: return 2.5;
    case Pattern::Lozenge: return 1.2;
    case Pattern::Plain: break;
  }
  return 1;
}

}  // namespace app::painting
