#pragma once
// What a job is as a whole, as far as techniques ask for it: how far the work goes, how the artwork stands in its
// window, whether the glazing is held off the face, whether anything is worked on the bare boards.
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace core::craft {

enum class Circumstance {
  Deliver,    // how far the work on the piece goes
  Artwork,    // covered by the mount along its edges, or floating in the window
  Spacer,     // between the mount and the glazing
  Decorated,  // with paint, paper, wash, lines or leaf
};
inline constexpr Circumstance kCircumstances[] = {Circumstance::Deliver, Circumstance::Artwork, Circumstance::Spacer,
                                                  Circumstance::Decorated};

// The key in a technique's "when", and the values there are.
std::string_view name(Circumstance circumstance);
const std::vector<std::string>& valuesOf(Circumstance circumstance);

// The values accepted of each circumstance that is asked for.
using Circumstances = std::map<Circumstance, std::vector<std::string>>;

}  // namespace core::craft
