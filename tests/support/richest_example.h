#pragma once
#include <string>

namespace tests {

// As much as a piece may have on it: three boards round an ogee window, two printed bands, lines, a wash between them,
// and flake over 15 % of all the face outside.
inline std::string richestExample() {
  return R"({
  "format": "mountwright-job/1", "title": "Bell-ringer's certificate", "reference": "26-055",
  "artwork": { "width": "190 mm", "height": "280 mm" },
  "mount": {
    "window": { "shape": "arch", "head": "ogee", "rise": "130 mm", "radius": "60 mm", "overlap": "3 mm" },
    "boards": [
      { "id": "top", "thickness": "2 mm", "bevel": { "angle": 45, "colour": "madder" } },
      { "id": "middle", "thickness": "2 mm", "reveal": "7 mm", "bevel": { "angle": 45 } },
      { "id": "under", "thickness": "1.5 mm", "reveal": "6 mm", "bevel": { "angle": 45, "colour": "gold" } }
    ],
    "borders": { "sides": "93 mm", "weighting": "+15 mm" }
  },
  "bands": [
    { "id": "inner", "paper": "key-fret block print, indigo", "offset": "14 mm", "width": "9 mm", "trim": "6 mm", "repeat": "12 mm", "motif": "directional" },
    { "id": "outer", "paper": "wave-block print", "offset": "9 mm", "width": "14 mm", "trim": "6 mm", "repeat": "20 mm", "motif": "mirror" }
  ],
  "lines": [
    { "id": "rim", "along": "band:outer.outer", "gap": "0 mm", "width": "1 mm", "colour": "gold" },
    { "id": "near", "along": "band:inner.outer", "gap": "2 mm", "width": "0.5 mm", "colour": "lamp black" },
    { "id": "far", "along": "band:inner.outer", "gap": "6 mm", "width": "0.5 mm", "colour": "lamp black" }
  ],
  "washes": [ { "id": "tint", "colour": "pale sea green", "between": ["line:near", "line:far"] } ],
  "leaf": [ { "id": "field", "region": "outside:outer", "method": "scattered", "coverage": 0.15, "size": "methylCellulose", "keepOff": { "edge": "6 mm" } } ]
}
)";
}

}  // namespace tests
