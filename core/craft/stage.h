#pragma once
// The stages of a piece, as a maker speaks of them from two metres away, and the two ways of being led through them.
#include <optional>
#include <string_view>
#include <vector>

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

// Every: each act by itself, for who is learning. Short: a stretch of a stage at a time.
enum class Way { Every, Short };
inline constexpr Way kWays[] = {Way::Every, Way::Short};
std::string_view name(Way way);
std::optional<Way> way(std::string_view word);

}  // namespace core::craft
