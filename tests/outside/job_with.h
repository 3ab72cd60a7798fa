#pragma once
// A plain mount of one board, with what a check needs put in.
#include <string>

#include "tests/support/worked_example.h"

namespace tests {

struct Plain {
  std::string width = "306 mm";
  std::string height = "306 mm";
  std::string thickness = "1.5 mm";
  std::string angle = "45";
  std::string borders = R"({"sides": "80 mm", "weighting": "equal"})";
  std::string more;  // further members, each starting with a comma
};

// Overlap 3 mm: the opening is 6 mm less than the work each way.
inline std::string plainJob(const Plain& plain) {
  return R"({"format": "mountwright-job/1", "artwork": {"width": ")" + plain.width + R"(", "height": ")" +
         plain.height +
         R"("}, "mount": {"window": {"shape": "rectangle", "overlap": "3 mm"}, "boards": [{"id": "only", "thickness": ")" +
         plain.thickness + R"(", "bevel": {"angle": )" + plain.angle + R"(}}], "borders": )" + plain.borders + "}" +
         plain.more + "}";
}

inline double figureOf(const std::string& job, const std::string& id) {
  const auto design = designOf(job);
  const auto* figure = design.figures.find(id);
  INFO(id);
  REQUIRE(figure != nullptr);
  return figure->value;
}

}  // namespace tests
