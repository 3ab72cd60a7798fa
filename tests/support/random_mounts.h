#pragma once
// Random jobs for properties that must hold of every mount.
#include <random>
#include <string>

namespace tests {

// Mounts with rectangular windows that always lay out, by a seed.
class RandomMounts {
 public:
  explicit RandomMounts(unsigned seed) : m_random(seed) {}

  std::string length(int least, int most) {
    const int tenths = std::uniform_int_distribution<int>(least * 10, most * 10)(m_random);
    return "\"" + std::to_string(tenths / 10) + '.' + std::to_string(tenths % 10) + " mm\"";
  }
  int whole(int least, int most) { return std::uniform_int_distribution<int>(least, most)(m_random); }

  std::string job() {
    const int boards = whole(1, 3);
    std::string text = R"({"format": "mountwright-job/1", "artwork": {"width": )" + length(150, 400) +
                       R"(, "height": )" + length(150, 400) +
                       R"(}, "mount": {"window": {"shape": "rectangle", "overlap": )" + length(0, 6) +
                       R"(}, "boards": [)";
    const char* ids[] = {"a", "b", "c"};
    for (int i = 0; i < boards; ++i) {
      text += std::string(i > 0 ? ", " : "") + R"({"id": ")" + ids[i] + R"(", "thickness": )" + length(1, 3);
      if (i > 0) text += R"(, "reveal": )" + length(7, 12);
      text += R"(, "bevel": {"angle": )" + std::to_string(whole(30, 90)) + "}}";
    }
    text += R"(], "borders": {"top": )" + length(90, 120) + R"(, "bottom": )" + length(90, 140) + R"(, "left": )" +
            length(90, 120) + R"(, "right": )" + length(90, 120) + "}}, \"bands\": [";
    const int bands = whole(0, 2);
    for (int i = 0; i < bands; ++i) {
      text += std::string(i > 0 ? ", " : "") + R"({"id": "band)" + std::to_string(i) +
              R"(", "paper": "tide table", "offset": {"sides": )" + length(4, 9) + R"(, "topBottom": )" + length(4, 9) +
              R"(}, "width": )" + length(8, 20) + "}";
    }
    text += "]";
    if (bands > 0) {
      text +=
          R"(, "lines": [{"id": "rule", "along": "band:band0.outer", "gap": "0.5 mm", "width": "0.5 mm", "colour": "black"}],
        "leaf": [{"id": "gold", "region": "inside:band0", "method": "laid", "size": "water"}])";
    }
    return text + "}";
  }

 private:
  std::mt19937 m_random;
};

}  // namespace tests
