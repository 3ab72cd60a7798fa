#pragma once
// How far the sheet lies behind the mount.
#include "core/design/layout.h"

namespace core::design {

struct Laps {
  double edge = 0;    // where it is least along an edge of the sheet, mm
  double corner = 0;  // the two laps at a corner together, where they are least: a triangle over that corner with legs
                      // as long as this just does not show
};

// Of the innermost window. Negative where the sheet's edge shows, as on a float.
Laps lapsOf(const Layout& layout);

}  // namespace core::design
