#pragma once
// A drawing stored as text; where it differs both are drawn side by side, since nobody can judge coordinates:
// "<file>.fail.svg", the lines that changed in red.
#include <cstdlib>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "core/base/text.h"
#include "tests/support/golden.h"

namespace tests {

// Returns one line of a drawing's text as SVG: its points are joined, and closed for a ring or a frame.
inline std::string shapeOf(const std::string& line, const char* colour) {
  std::istringstream words(line);
  std::vector<std::string> points;
  bool closed = false;
  bool box = false;
  std::string shapes;
  const auto take = [&] {
    if (box && points.size() == 2) {
      const auto a = core::base::split(points[0], ',');
      const auto b = core::base::split(points[1], ',');
      points = {points[0], b[0] + ',' + a[1], points[1], a[0] + ',' + b[1]};
    }
    if (points.size() > 1) {
      shapes += std::string("<poly") + (closed ? "gon" : "line") + " points='" + core::base::join(points, " ") +
                "' fill='none' stroke='" + colour + "'/>\n";
    }
    points.clear();
  };
  for (std::string word; words >> word;) {
    if (word == "frame") closed = box = true;
    if (word == "ring") closed = true;
    if (word == "less") take();
    const auto parts = core::base::split(word, ',');
    if (parts.size() == 2 && core::base::parseDecimal(parts[0]) && core::base::parseDecimal(parts[1])) {
      points.push_back(word);
    }
  }
  take();
  return shapes;
}

inline std::string picturesOf(const std::string& was, const std::string& is) {
  const auto before = core::base::split(was, '\n');
  const auto after = core::base::split(is, '\n');
  const std::set<std::string> inBefore(before.begin(), before.end());
  const std::set<std::string> inAfter(after.begin(), after.end());
  double width = 100, height = 100;
  std::istringstream head(is);
  std::string word, by;
  head >> word >> width >> by >> height;
  const auto panel = [&](const auto& lines, const std::set<std::string>& other, double x) {
    std::string shapes = "<g transform='translate(" + std::to_string(x) + ",0)'>\n";
    for (const std::string& line : lines) shapes += shapeOf(line, other.contains(line) ? "#888" : "#c00");
    return shapes + "</g>\n";
  };
  std::ostringstream svg;
  svg << "<svg xmlns='http://www.w3.org/2000/svg' viewBox='-5 -5 " << 2 * width + 20 << ' ' << height + 10
      << "' width='1600' stroke-width='" << width / 400 << "'>\n"
      << panel(before, inAfter, 0) << panel(after, inBefore, width + 10) << "</svg>\n";
  return svg.str();
}

// Does the same as checkGolden for one or several drawings as core/sheets dumps them.
inline void checkGoldenDrawing(const std::string& root, const std::string& name, const std::string& got) {
  const std::string path = root + "/tests/golden/" + name;
  const auto expected = readWholeFile(path);
  if (expected && *expected != got) {
    writeWholeFile(path + ".fail.svg", picturesOf(*expected, got));
    UNSCOPED_INFO("before and after, side by side: " << path << ".fail.svg");
  } else {
    std::remove((path + ".fail.svg").c_str());
  }
  checkGolden(root, name, got);
}

}  // namespace tests
