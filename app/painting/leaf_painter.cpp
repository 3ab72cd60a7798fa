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
  const std::size_t count = tones.size();
  painter.save();
  painter.setPen(Qt::NoPen);
  // Those that the edge runs through come last: a clip is dear, and few need it.
  for (const bool cut : {false, true}) {
    if (cut) clipTo(painter, scatter, scale);
    for (std::size_t tone = 0; tone < count; ++tone) {
      painter.setBrush(light.on(tones[tone], Breadth::Fine));
      for (const core::sheets::Flake& flake : scatter.flakes) {
        if (flake.cut != cut || static_cast<std::size_t>(flake.tone) != tone) continue;
        std::array<QPointF, 4> corners;
        for (std::size_t i = 0; i < corners.size(); ++i) corners[i] = scaledPoint(flake.corners[i], scale);
        painter.drawConvexPolygon(corners.data(), static_cast<int>(corners.size()));
      }
    }
  }
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
