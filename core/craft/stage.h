#pragma once
// The stages of a piece, as a maker speaks of them.
#include <string_view>
#include <vector>

#include "core/units/way.h"

namespace core::craft {

// In the order in which a piece passes through them. A piece may meet a stage twice.
enum class Stage {
  None,  // the technique does not say; the step is an act of its own
  Prepare,
  Cut,
  Colour,
  Wash,
  Join,
  Paper,
  Glue,
  Mitre,
  Rule,
  Size,
  Lay,
  Burnish,
  Attach,
  Close,
};

std::vector<Stage> allStages();      // without None, in the order above
std::string_view name(Stage stage);  // "cut"; "" for None

using units::name;
using units::Way;

}  // namespace core::craft
