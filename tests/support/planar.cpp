#include "tests/support/planar.h"

#include <cmath>
#include <numbers>

namespace tests {

using core::geometry::Point;

std::vector<Point> Planar::chords(const core::geometry::Outline& outline, int toQuarter) {
  std::vector<Point> points;
  for (const auto& segment : outline.segments()) {
    double sweep = 0;
    if (const auto* arc = std::get_if<core::geometry::Arc>(&segment)) sweep = arc->sweep;
    if (const auto* oval = std::get_if<core::geometry::OvalArc>(&segment)) sweep = oval->sweep;
    const int count = std::max(1, static_cast<int>(std::ceil(std::fabs(sweep) / (std::numbers::pi / 2) * toQuarter)));
    for (int i = 0; i < count; ++i) points.push_back(pointAt(segment, double(i) / count));
  }
  return points;
}

Planar::Geometry Planar::polygon(const std::vector<Point>& points) const {
  const auto size = static_cast<unsigned>(points.size());
  GEOSCoordSequence* sequence = GEOSCoordSeq_create_r(m_context, size + 1, 2);
  for (unsigned i = 0; i <= size; ++i) {
    GEOSCoordSeq_setXY_r(m_context, sequence, i, points[i % size].x, points[i % size].y);
  }
  GEOSGeometry* ring = GEOSGeom_createLinearRing_r(m_context, sequence);
  return {GEOSGeom_createPolygon_r(m_context, ring, nullptr, 0), Deleter{m_context}};
}

Planar::Geometry Planar::moved(const Geometry& polygon, double d, double mitreLimit) const {
  GEOSBufferParams* how = GEOSBufferParams_create_r(m_context);
  GEOSBufferParams_setJoinStyle_r(m_context, how, GEOSBUF_JOIN_MITRE);
  GEOSBufferParams_setMitreLimit_r(m_context, how, mitreLimit);
  Geometry result(GEOSBufferWithParams_r(m_context, polygon.get(), how, d), Deleter{m_context});
  GEOSBufferParams_destroy_r(m_context, how);
  return result;
}

double Planar::area(const Geometry& geometry) const {
  double area = 0;
  GEOSArea_r(m_context, geometry.get(), &area);
  return area;
}

int Planar::parts(const Geometry& geometry) const {
  return GEOSisEmpty_r(m_context, geometry.get()) == 1 ? 0 : GEOSGetNumGeometries_r(m_context, geometry.get());
}

int Planar::holes(const Geometry& geometry) const {
  const GEOSGeometry* first = GEOSGetGeometryN_r(m_context, geometry.get(), 0);
  return first == nullptr ? 0 : GEOSGetNumInteriorRings_r(m_context, first);
}

double Planar::hausdorff(const Geometry& a, const Geometry& b) const {
  double distance = INFINITY;
  GEOSHausdorffDistance_r(m_context, a.get(), b.get(), &distance);
  return distance;
}

}  // namespace tests
