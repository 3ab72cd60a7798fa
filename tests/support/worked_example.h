#pragma once
// Jobs that many tests start from.
#include <string>

#include "core/base/text.h"
#include "tests/support/catch.h"
#include "tests/support/design_of.h"

namespace tests {

// A chart under two boards: one band, two lines that part it from the ground, scattered leaf outside.
inline std::string workedExample() {
  return R"({
  "format": "mountwright-job/1",
  "title": "Pilot's chart of the outer bar", "reference": "26-041", "client": "Harbour library", "due": "2026-12-11",
  "artwork": { "width": "310 mm", "height": "240 mm", "thickness": "0.3 mm", "sheet": { "width": "330 mm", "height": "260 mm", "left": "10 mm", "top": "8 mm" } },
  "mount": {
    "window": { "shape": "rectangle", "overlap": "3 mm" },
    "boards": [
      { "id": "top",   "thickness": "1.5 mm", "bevel": { "angle": 45, "colour": "copper" } },
      { "id": "under", "thickness": "2.0 mm", "reveal": "6 mm", "bevel": { "angle": 45, "colour": "copper" } }
    ],
    "borders": { "sides": "70 mm", "weighting": "4:3" },
    "rebate": { "allowanceTotal": "3 mm", "cover": "6 mm" }
  },
  "bands": [ { "id": "inner", "paper": "wave-block print", "offset": "10 mm", "width": "14 mm", "trim": "6 mm", "repeat": "24 mm", "motif": "mirror", "grain": "along" } ],
  "lines": [
    { "id": "outside", "along": "band:inner.outer", "gap": "0 mm", "width": "1 mm", "colour": "copper" },
    { "id": "inside",  "along": "band:inner.inner", "gap": "0 mm", "width": "1 mm", "colour": "copper" }
  ],
  "leaf": [ { "id": "field", "region": "outside:inner", "method": "scattered", "coverage": 0.15, "size": "methylCellulose", "keepOff": { "edge": "6 mm" } } ],
  "package": { "glazing": "2 mm", "backMount": "1.5 mm", "backing": "3 mm" },
  "room": { "temperature": "19 C", "humidity": "58 %" }
}
)";
}

// A heron linocut in inches: one board, a float, four different borders, leaf on the bevel and on the band.
inline std::string inchExample() {
  return R"({
  "format": "mountwright-job/1",
  "title": "Heron at low water", "reference": "26-042",
  "artwork": { "width": "9 3/8 in", "height": "12 1/2 in" },
  "mount": {
    "window": { "shape": "rectangle", "margin": "3/8 in" },
    "boards": [ { "id": "face", "thickness": "1/16 in", "bevel": { "angle": 60, "colour": "black" } } ],
    "borders": { "top": "2 1/2 in", "bottom": "3 in", "left": "2 1/4 in", "right": "2 3/4 in" }
  },
  "bands": [ { "id": "reeds", "paper": "reed-block print", "offset": { "sides": "1/2 in", "topBottom": "5/8 in" }, "width": "1/2 in" } ],
  "lines": [ { "id": "rim", "along": "window", "gap": "1/8 in", "width": "1/32 in", "colour": "black" } ],
  "leaf": [
    { "id": "edge", "region": "bevel:face", "method": "laid", "size": "water" },
    { "id": "spots", "region": "on:reeds", "method": "scattered", "coverage": 0.1, "size": "starch" }
  ]
}
)";
}

// Returns the text with the passage `from`, which must be there, replaced by `to`.
inline std::string changed(const std::string& text, const std::string& from, const std::string& to) {
  INFO("not in the text: " << from);
  REQUIRE(text.find(from) != std::string::npos);
  return core::base::replaceAll(text, from, to);
}

}  // namespace tests
