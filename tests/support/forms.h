#pragma once
// Windows of every shape, and short ways to enter one.
#include <cmath>
#include <string>
#include <vector>

#include "core/geometry/window_form.h"

namespace tests {

using core::geometry::Head;
using core::geometry::Shape;
using core::geometry::ShapeEntry;

// Returns the nearest length: an entry is whole nanometres, so an endless fraction is off by half of one at most.
inline core::units::Length entered(double millimetres) {
  return core::units::Length::nanometres(std::llround(millimetres * 1e6));
}

inline ShapeEntry cornered(Shape shape, double corner) {
  ShapeEntry entry;
  entry.shape = shape;
  entry.corner = entered(corner);
  return entry;
}

inline ShapeEntry arched(Head head, double rise = 0, double radius = 0, double angle = 0) {
  ShapeEntry entry;
  entry.shape = Shape::Arch;
  entry.head = head;
  entry.rise = entered(rise);
  entry.radius = entered(radius);
  entry.angle = angle;
  return entry;
}

inline ShapeEntry trefoil(double side, double top, double centre) {
  ShapeEntry entry = arched(Head::Trefoil);
  entry.sideRadius = entered(side);
  entry.topRadius = entered(top);
  entry.topCentre = entered(centre);
  return entry;
}

inline ShapeEntry multifoil(int lobes) {
  ShapeEntry entry = arched(Head::Multifoil);
  entry.lobes = lobes;
  return entry;
}

inline ShapeEntry plain(Shape shape) {
  ShapeEntry entry;
  entry.shape = shape;
  return entry;
}

struct NamedForm {
  std::string name;
  ShapeEntry entry;
  double width = 0, height = 0;
};

inline std::vector<NamedForm> everyForm() {
  return {{"rectangle", plain(Shape::Rectangle), 300, 200},
          {"rounded", cornered(Shape::Rounded, 20), 300, 200},
          {"scalloped", cornered(Shape::Scalloped, 20), 300, 200},
          {"chamfered", cornered(Shape::Chamfered, 20), 300, 200},
          {"oval", plain(Shape::Oval), 300, 200},
          {"round", plain(Shape::Round), 250, 250},
          {"arch.round", arched(Head::Round), 200, 350},
          {"arch.segmental", arched(Head::Segmental, 50), 200, 300},
          {"arch.pointed", arched(Head::Pointed, 200), 200, 420},
          {"arch.fourCentred", arched(Head::FourCentred, 110, 50, 55), 300, 320},
          {"arch.basket", arched(Head::Basket, 70, 40), 200, 260},
          {"arch.ogee", arched(Head::Ogee, 180, 80), 240, 400},
          {"arch.ogee-low", arched(Head::Ogee, 80, 60), 240, 300},
          {"arch.horseshoe", arched(Head::Horseshoe, 150), 220, 330},
          {"arch.trefoil", trefoil(50, 70, 80), 240, 330},
          {"arch.multifoil-3", multifoil(3), 220, 340},
          {"arch.multifoil-7", multifoil(7), 260, 360}};
}

}  // namespace tests
