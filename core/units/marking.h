#pragma once
// The two ways of taking a window's place on the back of a board.
#include <optional>
#include <string_view>

namespace core::units {

enum class Marking {
  Marks,    // by rule: every line from the two edges of the marked corner
  Borders,  // by a cutter with a bar: each border from its own edge
};
inline constexpr Marking kMarkings[] = {Marking::Marks, Marking::Borders};

constexpr std::string_view name(Marking marking) { return marking == Marking::Marks ? "marks" : "borders"; }

constexpr std::optional<Marking> marking(std::string_view word) {
  for (const Marking one : kMarkings) {
    if (name(one) == word) return one;
  }
  return std::nullopt;
}

}  // namespace core::units
