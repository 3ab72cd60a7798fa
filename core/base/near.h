#pragma once
// The word somebody may have meant.
#include <string>
#include <string_view>
#include <vector>

namespace core::base {

// Returns the word of `known` that differs least from `word`, counted in letters put in, left out, changed or swapped
// with a neighbour. It differs in at most one in three of the word's letters and in no more than three. Returns ""
// where none is so near, and the first of equals.
std::string nearest(std::string_view word, const std::vector<std::string>& known);

}  // namespace core::base
