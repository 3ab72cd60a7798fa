#include "app/painting/leaf_painter.h"

#include <algorithm>
#include <cmath>

#include "app/painting/materials.h"
#include "app/painting/paths.h"

namespace app::painting {
namespace {

// Smaller than this leaves are not told apart, pixels.
constexpr double kLeastLeaf = 5;

void addPatch(QPainterPath& path, const core::geometry::Patch& patch, double scale) {
  addSegments(path, patch.outer.segments(), true, scale);
  addSegments(path, patch.inner.segments(), true, scale);
}

void clipTo(QPainter& painter, const core::sheets::Scatter& scatter, double scale) {
  QRectF bounds;
  for (const core::geometry::Patch& patch : scatter.within) {
    QPainterPath path;
    path.setFillRule(Qt::OddEvenFill);
    addPatch(path, patch, scale);
    painter.setClipPath(path, Qt::IntersectClip);
    bounds = bounds.isNull() ? path.boundingRect() : bounds.intersected(path.boundingRect());
  }
  for (const core::geometry::Patch& patch : scatter.without) {
    QPainterPath path;
    path.setFillRule(Qt::OddEvenFill);
    addPatch(path, patch, scale);
    if (!path.boundingRect().intersects(bounds)) continue;
    path.addRect(bounds.united(path.boundingRect()).adjusted(-1, -1, 1, 1));
    painter.setClipPath(path, Qt::IntersectClip);
  }
}

}  // namespace

void paintFlakes(QPainter& painter, const core::sheets::Scatter& scatter, double scale, const Light& light) {
  const auto tones = leafTones();
  std::array<QPainterPath, tones.size()> torn;
  for (const core::sheets::Flake& flake : scatter.flakes) {
    QPolygonF shape;
    for (const core::sheets::Point& corner : flake.corners) shape << scaledPoint(corner, scale);
    QPainterPath& path = torn[static_cast<std::size_t>(flake.tone)];
    path.addPolygon(shape);
    path.closeSubpath();
  }
  painter.save();
  clipTo(painter, scatter, scale);
  for (std::size_t i = 0; i < tones.size(); ++i) painter.fillPath(torn[i], light.on(tones[i], Breadth::Fine));
  painter.restore();
}

void paintLaidLeaf(QPainter& painter, const QPainterPath& shape, const core::sheets::Matter& matter, double scale,
                   const Light& light) {
  const auto tones = leafTones();
  painter.save();
  painter.setClipPath(shape, Qt::IntersectClip);
  if (matter.scatter) clipTo(painter, *matter.scatter, scale);
  painter.fillRect(shape.boundingRect(), light.on(tones[0], Breadth::Fine));
  const double wide = matter.leafWidth * scale;
  const double high = matter.leafHeight * scale;
  const QRectF field = shape.boundingRect();
  const QColor lapped = light.on(mixed(tones[0], tones[1], 0.7), Breadth::Fine);
  const QColor edge = light.on(mixed(tones[0], tones[2], 0.8), Breadth::Fine);
  const QColor other = light.on(mixed(tones[0], tones[1], 0.3), Breadth::Fine);
  const double lap = std::max(1.0, matter.lap * scale);
  const double brim = std::max(1.0, lap / 4);
  const bool told = wide >= kLeastLeaf && high >= kLeastLeaf;
  for (int row = 0; told && row * high < field.height(); ++row) {
    for (int column = 0; column * wide < field.width(); ++column) {
      const QRectF leaf(field.left() + column * wide, field.top() + row * high, wide, high);
      if ((row + column) % 2 == 1) painter.fillRect(leaf, other);
      if (column > 0) painter.fillRect(QRectF(leaf.topLeft(), QSizeF(lap, high)), lapped);
      if (row > 0) painter.fillRect(QRectF(leaf.topLeft(), QSizeF(wide, lap)), lapped);
      if (column > 0) painter.fillRect(QRectF(leaf.topLeft(), QSizeF(brim, high)), edge);
      if (row > 0) painter.fillRect(QRectF(leaf.topLeft(), QSizeF(wide, brim)), edge);
    }
  }
  painter.restore();
}

}  // namespace app::painting
