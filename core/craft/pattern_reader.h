#pragma once
// Reading of fact patterns, and whether their words make sense where they stand.
#include <optional>
#include <vector>

#include "core/craft/reading.h"

namespace core::craft {

// Which forms a list of patterns takes.
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
