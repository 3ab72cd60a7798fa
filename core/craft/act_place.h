#pragma once
// The parts of an act's drawing that a sentence of a step may speak of. The drawing of the act says where each is that
// it has; a step says which of them its first sentences speak of, since steps of one act say different things.
#include <array>
#include <optional>
#include <string_view>

namespace core::craft {

enum class ActPlace {
  Tool,   // in the hand, or set up by it
  Work,   // what is laid, taken off or made
  Way,    // how the hand goes
  Piece,  // what lies there and is worked on
  End,    // where the work ends: an edge, a corner, a mark
  Under,  // what lies under or over to keep something clean
  Aside,  // what lies beside, or falls away
};
inline constexpr std::array kActPlaces = {ActPlace::Tool, ActPlace::Work,  ActPlace::Way,  ActPlace::Piece,
                                          ActPlace::End,  ActPlace::Under, ActPlace::Aside};

std::string_view name(ActPlace place);  // "tool"
std::optional<ActPlace> actPlace(std::string_view word);

}  // namespace core::craft
