#pragma once
// What a technique wants of the piece, or of the room it is worked in, to come out well. It decides nothing: it is told
// where the piece is designed, while another choice still costs nothing.
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core::craft {

// What can be wanted more or less of.
enum class Measure {
  Lap,          // how far the sheet lies behind the mount, where that is least along an edge
  CornerLap,    // the two laps at a corner together, where they are least
  Air,          // between the artwork's face and the glazing
  Artwork,      // the thickness of the artwork
  Support,      // the thickness of what raises a float; nothing where it lies flat
  Glazing,      // its thickness
  BackMount,    // its thickness
  Backing,      // its thickness
  Play,         // in the rebate, for each 600 mm of the longer side
  Temperature,  // of the room
  Humidity,     // of the room
};

enum class Quantity { Length, Temperature, Humidity };

struct MeasureTraits {
  Measure measure;
  std::string_view name;  // in a technique file
  Quantity quantity;
  std::string_view place;  // of the job file, where it is put right
};
// Every measure once, in the order of the enumeration.
const std::vector<MeasureTraits>& measures();
const MeasureTraits& traitsOf(Measure measure);

}  // namespace core::craft
