#pragma once
// Jobs with every form of window and every ornament that goes with one.
#include <string>
#include <vector>

#include "tests/support/worked_example.h"

namespace tests {

// The window's form as a job file writes it, each fitting an opening of 200 x 300 mm.
inline const std::vector<std::string>& shapedForms() {
  static const std::vector<std::string> forms = {
      R"("shape": "rounded", "corner": "20 mm")",
      R"("shape": "scalloped", "corner": "30 mm")",
      R"("shape": "chamfered", "corner": "25 mm")",
      R"("shape": "oval")",
      R"("shape": "arch", "head": "round")",
      R"("shape": "arch", "head": "segmental", "rise": "60 mm")",
      R"("shape": "arch", "head": "pointed", "rise": "180 mm")",
      R"("shape": "arch", "head": "fourCentred", "rise": "80 mm", "radius": "40 mm", "angle": 50)",
      R"("shape": "arch", "head": "basket", "rise": "70 mm", "radius": "40 mm")",
      R"("shape": "arch", "head": "ogee", "rise": "180 mm", "radius": "60 mm")",
      R"("shape": "arch", "head": "horseshoe", "rise": "140 mm")",
      R"("shape": "arch", "head": "trefoil", "sideRadius": "50 mm", "topRadius": "50 mm", "topCentre": "60 mm")",
      R"("shape": "arch", "head": "multifoil", "lobes": 5)",
  };
  return forms;
}

// Two boards, a line round the window, a wash between it and a line inside a band, a spandrel within them, laid leaf
// outside.
inline std::string shapedExample(const std::string& form) {
  return R"({
  "format": "mountwright-job/1", "title": "Tide table", "reference": "26-050",
  "artwork": { "width": "206 mm", "height": "306 mm" },
  "mount": {
    "window": { )" +
         form + R"(, "overlap": "3 mm" },
    "boards": [
      { "id": "top", "thickness": "2 mm", "bevel": { "angle": 45, "colour": "copper" } },
      { "id": "under", "thickness": "1.5 mm", "reveal": "6 mm" }
    ],
    "borders": { "sides": "90 mm", "weighting": "+10 mm" }
  },
  "bands": [ { "id": "inner", "paper": "wave-block print", "offset": "36 mm", "width": "14 mm", "trim": "6 mm", "repeat": "24 mm" } ],
  "lines": [
    { "id": "far", "along": "band:inner.inner", "gap": "2 mm", "width": "1 mm", "colour": "copper" },
    { "id": "near", "along": "band:inner.inner", "gap": "12 mm", "width": "1 mm", "colour": "copper" },
    { "id": "round", "along": "window", "gap": "-1 mm", "width": "1 mm", "colour": "copper" }
  ],
  "spandrels": [ { "id": "head", "paper": "reed-block print", "frame": { "offset": "15 mm" }, "under": "2 mm" } ],
  "washes": [ { "id": "tint", "colour": "grey", "between": ["line:near", "line:far"] } ],
  "leaf": [ { "id": "field", "region": "outside:inner", "method": "laid", "size": "oil", "keepOff": { "edge": "6 mm" } } ]
}
)";
}

}  // namespace tests
