#pragma once
// Reads fact patterns and checks that their words make sense in their place.
#include <optional>
#include <vector>

#include "core/craft/reading.h"

namespace core::craft {

// The forms of pattern that a list may hold.
enum class Allowed {
  Plain,      // `makes`, a wait's `makes` and `follows`
  EveryToo,   // `ends`
  EveryFact,  // `ends` of a fault or of `ifMissed`: also "this.*"
};

std::optional<FactPattern> readPattern(const base::Node& node, const Scope& scope, Allowed allowed,
                                       base::Problems& problems);
std::vector<FactPattern> readPatterns(const base::Node& node, const Scope& scope, Allowed allowed,
                                      base::Problems& problems);
std::vector<Need> readNeeds(const base::Node& node, const Scope& scope, base::Problems& problems);

}  // namespace core::craft
