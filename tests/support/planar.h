#pragma once
// Outlines in a general geometry library (GEOS), as polygons of chords. For tests and benchmarks alone.
#include <geos_c.h>

#include <memory>
#include <vector>

#include "core/geometry/outline.h"

namespace tests {

class Planar {
 public:
  struct Deleter {
    GEOSContextHandle_t context;
    void operator()(GEOSGeometry* geometry) const { GEOSGeom_destroy_r(context, geometry); }
  };
  using Geometry = std::unique_ptr<GEOSGeometry, Deleter>;

  Planar() : m_context(GEOS_init_r()) {}
  ~Planar() { GEOS_finish_r(m_context); }
  Planar(const Planar&) = delete;
  Planar& operator=(const Planar&) = delete;

  // Returns the outline's curves as chords, so many to a quarter turn, with their ends on the curve.
  static std::vector<core::geometry::Point> chords(const core::geometry::Outline& outline, int toQuarter);
  Geometry polygon(const std::vector<core::geometry::Point>& points) const;
  // Returns the polygon moved outwards by d with mitred corners.
  Geometry moved(const Geometry& polygon, double d, double mitreLimit) const;
  bool isSimple(const Geometry& polygon) const { return GEOSisValid_r(m_context, polygon.get()) == 1; }
  double area(const Geometry& geometry) const;
  // These count the polygons of a result, and the holes in the first.
  int parts(const Geometry& geometry) const;
  int holes(const Geometry& geometry) const;
  double hausdorff(const Geometry& a, const Geometry& b) const;

 private:
  GEOSContextHandle_t m_context;
};

}  // namespace tests
