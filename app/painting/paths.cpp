#include "app/painting/paths.h"

#include <QtMath>

namespace app::painting {
namespace {

void addSegment(QPainterPath& path, const core::geometry::Segment& segment, double scale) {
  if (const auto* arc = std::get_if<core::geometry::Arc>(&segment)) {
    const QPointF centre = scaledPoint(arc->centre, scale);
    const double r = arc->radius * scale;
    // Qt counts angles against the clock, the drawing with it.
    const double start = -qRadiansToDegrees(std::atan2(arc->from.y - arc->centre.y, arc->from.x - arc->centre.x));
    path.arcTo(QRectF(centre.x() - r, centre.y() - r, 2 * r, 2 * r), start, -qRadiansToDegrees(arc->sweep));
    return;
  }
  if (std::holds_alternative<core::geometry::Straight>(segment)) {
    path.lineTo(scaledPoint(core::geometry::endOf(segment), scale));
    return;
  }
  // A parallel curve of an ellipse: points a degree apart are nearer to it than a pixel.
  constexpr int kPoints = 360;
  for (int i = 1; i <= kPoints; ++i)
    path.lineTo(scaledPoint(core::geometry::pointAt(segment, double(i) / kPoints), scale));
}

}  // namespace

void addSegments(QPainterPath& path, const std::vector<core::geometry::Segment>& segments, bool closed, double scale) {
  if (segments.empty()) return;
  path.moveTo(scaledPoint(core::geometry::startOf(segments.front()), scale));
  for (const core::geometry::Segment& segment : segments) addSegment(path, segment, scale);
  if (closed) path.closeSubpath();
}

QPainterPath pathOf(const core::sheets::Primitive& primitive, double scale) {
  QPainterPath path;
  path.setFillRule(Qt::OddEvenFill);
  if (const auto* patch = std::get_if<core::geometry::Patch>(&primitive.shape)) {
    addSegments(path, patch->outer.segments(), true, scale);
    addSegments(path, patch->inner.segments(), true, scale);
  } else if (const auto* line = std::get_if<core::sheets::Path>(&primitive.shape)) {
    addSegments(path, line->segments, line->closed, scale);
  } else if (const auto* frame = std::get_if<core::sheets::Frame>(&primitive.shape)) {
    path.addRect(QRectF(scaledPoint(frame->outerFrom, scale), scaledPoint(frame->outerTo, scale)));
    if (frame->innerFrom != frame->innerTo)
      path.addRect(QRectF(scaledPoint(frame->innerFrom, scale), scaledPoint(frame->innerTo, scale)));
  } else if (const auto* stroke = std::get_if<core::sheets::Stroke>(&primitive.shape)) {
    QPolygonF points;
    for (const core::sheets::Point& point : stroke->points) points << scaledPoint(point, scale);
    path.addPolygon(points);
    if (stroke->closed) path.closeSubpath();
  }
  return path;
}

QRectF extentOf(const core::sheets::Drawing& drawing,
                const std::function<bool(const core::sheets::Primitive&)>& chosen) {
  QRectF extent;
  for (const core::sheets::Primitive& primitive : drawing.primitives) {
    if (chosen(primitive)) extent = extent.united(pathOf(primitive, 1).boundingRect());
  }
  return extent;
}

}  // namespace app::painting
