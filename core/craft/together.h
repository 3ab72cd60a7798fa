#pragma once
// What a technique says of its acts: to which stage a step belongs and which steps may be worked together. The checks
// here hold in every job; what is gathered in one job is decided when it is composed.
#include "core/craft/reading.h"

namespace core::craft {

// Returns Stage::None where there is none or it is wrong.
Stage readStageWord(const base::Node& node, base::Problems& problems);

// Reads the list "together" of a technique whose steps were read. Reports a step that the file does not have, one that
// is gathered twice in a way, steps that a wait or a window stands between, and things that cannot be gathered so.
std::vector<Together> readTogether(const base::Node& node, const Technique& technique, const Scope& scope,
                                   base::Problems& problems);

}  // namespace core::craft
