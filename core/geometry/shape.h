#pragma once
// The shapes a window may have, as a maker enters them: lengths exact, the angle in degrees.
#include "core/units/length.h"

namespace core::geometry {

enum class Shape { Rectangle, Rounded, Scalloped, Chamfered, Oval, Round, Arch };
enum class Head { Round, Segmental, Pointed, FourCentred, Basket, Ogee, Horseshoe, Trefoil, Multifoil };

struct ShapeEntry {
  Shape shape = Shape::Rectangle;
  Head head = Head::Round;             // of an arch
  units::Length corner;                // rounded, scalloped, chamfered
  units::Length rise;                  // apex above the springing line: heads that do not fix it themselves
  units::Length radius;                // four-centred, basket, ogee: of the arc at the springing
  double angle = 0;                    // four-centred: sweep of the arc at the springing, degrees
  units::Length sideRadius;            // trefoil: of the two side lobes
  units::Length topRadius, topCentre;  // trefoil: of the top lobe, and its centre above the springing line
  int lobes = 0;                       // multifoil: odd, 3 or more

  friend bool operator==(const ShapeEntry&, const ShapeEntry&) = default;
};

}  // namespace core::geometry
