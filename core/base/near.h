#pragma once
// The word somebody may have meant.
#include <string>
#include <string_view>
#include <vector>

namespace core::base {

// Of `known` the one that differs least from `word`, in letters put in, left out, changed or swapped with a neighbour:
// at most one in three of the word's, and no more than three. "" where none is so near; of equals the first.
std::string nearest(std::string_view word, const std::vector<std::string>& known);

}  // namespace core::base
