#include "app/painting/bevel_painter.h"

#include <array>

#include "app/painting/paths.h"
#include "core/sheets/facets.h"

namespace app::painting {
namespace {

using core::geometry::Outline;

// Narrower than this a slope no longer shows which side the light is on, pixels.
constexpr double kLeastWidth = 2.6;
constexpr double kUnderNext = 0.5;  // pixels

struct Edges {
  Outline face, sight;
};

Edges edgesOf(const core::sheets::Primitive& bevel) {
  if (const auto* patch = std::get_if<core::geometry::Patch>(&bevel.shape)) return {patch->outer, patch->inner};
  const auto& frame = std::get<core::sheets::Frame>(bevel.shape);
  return {core::geometry::outlineOf({frame.outerFrom.x, frame.outerFrom.y, frame.outerTo.x, frame.outerTo.y}),
          core::geometry::outlineOf({frame.innerFrom.x, frame.innerFrom.y, frame.innerTo.x, frame.innerTo.y})};
}

}  // namespace

void paintBevel(QPainter& painter, const core::sheets::Primitive& bevel, const QColor& material, double scale,
                const Light& light) {
  const Edges edges = edgesOf(bevel);
  if (edges.sight.empty()) return;
  const double plan = edges.sight.bounds().left - edges.face.bounds().left;
  const bool widened = plan * scale < kLeastWidth;
  const double outwards = widened ? kLeastWidth / scale : 2 * plan;
  painter.save();
  // Wide enough, the bevel's own edges cut the facets, whose chords lie a little off a curve.
  if (!widened) painter.setClipPath(pathOf(bevel, scale), Qt::IntersectClip);
  painter.setPen(Qt::NoPen);
  for (const core::sheets::Facet& facet : core::sheets::facets(edges.sight, widened ? 0 : plan, outwards)) {
    // Each reaches a little under the next, so that nothing shows through between them.
    const QPointF along(-facet.outwards.y * kUnderNext, facet.outwards.x * kUnderNext);
    const std::array<QPointF, 4> shape = {
        scaledPoint(facet.corners[0], scale), scaledPoint(facet.corners[1], scale) + along,
        scaledPoint(facet.corners[2], scale) + along, scaledPoint(facet.corners[3], scale)};
    painter.setBrush(light.on(sloped(material, facet.outwards)));
    painter.drawPolygon(shape.data(), static_cast<int>(shape.size()));
  }
  painter.restore();
}

}  // namespace app::painting
