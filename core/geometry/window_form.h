#pragma once
// A window's form: its visible outline by the constructions of the trade, with the lines it is set out from.
//
// Sources of the constructions: M. H. Bloxam, The Principles of Gothic Ecclesiastical Architecture (pointed, four-
// centred and ogee arches from their centres); D. E. Smith, The Teaching of Geometry (trefoil); the radii, centres and
// joints follow from tangency. Multifoil: equal half circles on the sides of half a regular 2n-gon.
//
// Coordinates: x = 0 on the centre line; y = 0 on the springing line of an arch, through the middle of any other
// shape; y downwards.
#include <optional>
#include <string>

#include "core/base/message.h"
#include "core/base/result.h"
#include "core/geometry/outline.h"
#include "core/geometry/shape.h"

namespace core::geometry {

struct WindowForm {
  Outline outline;
  // The height where curves begin above the straight jambs: the springing line of an arch, the foot of the upper
  // corners of a rounded, scalloped or chamfered window, the middle of an oval, the top of a rectangle.
  double springing = 0;
};

// The measure that does not fit, the key of the entry it is at, and what would fit: "shape.rise-too-high value=..
// most=.. by=..".
struct ShapeProblem {
  std::string key;
  base::Message message;
};

// Returns the form of an opening width x height (mm, both > 0). Setting-out points within 1e-9 mm.
base::Result<WindowForm, ShapeProblem> construct(const ShapeEntry& entry, double width, double height);

}  // namespace core::geometry
