#pragma once
// Windows drawn from what their shapes mean alone: radii and centres found by halving until the circles touch or pass
// through the point they must, outlines followed in small steps. Shares no code with the constructions it checks.
#include <functional>
#include <optional>
#include <vector>

#include "tests/support/forms.h"

namespace tests {

struct Spot {
  double x = 0, y = 0;  // y upwards from the springing line or the middle
};

// The right half from the apex (or top middle) down to the bottom middle, as curves of a parameter from 0 to 1; nothing
// where no such window can be drawn.
using Curve = std::function<Spot(double)>;
std::optional<std::vector<Curve>> rightHalf(const ShapeEntry& entry, double width, double height);

struct Measured {
  double perimeter = 0, area = 0;
  double halfWidth = 0, top = 0, bottom = 0;
};

// By chords, two counts of them, extrapolated. `steps` to a curve, even.
Measured measured(const std::vector<Curve>& rightHalf, int steps);

}  // namespace tests
