// Random jobs against the equations a mount must satisfy, worked here a second way: from distances to the mount's
// edges instead of from the opening outwards.
#include <cmath>
#include <random>

#include "core/design/design.h"
#include "tests/support/catch.h"

using namespace core;

namespace {

class Maker {
 public:
  explicit Maker(unsigned seed) : m_random(seed) {}

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

double get(const design::Design& design, const std::string& id) {
  const auto* figure = design.figures.find(id);
  INFO(id);
  REQUIRE(figure != nullptr);
  return figure->value;
}

}  // namespace

TEST_CASE("random mounts satisfy every equation", "[design]") {
  Maker maker(2026);
  int with = 0;
  for (int round = 0; round < 1000; ++round) {
    const std::string text = maker.job();
    const auto read = design::readDesign(text);
    for (const auto& problem : read.problems.sorted()) UNSCOPED_INFO(base::dump(problem));
    INFO(text);
    REQUIRE(read.design);
    const design::Design& d = *read.design;
    const double outerWidth = get(d, "outer.width");
    const double outerHeight = get(d, "outer.height");
    for (std::size_t i = 0; i < d.job.boards.size(); ++i) {
      const std::string b = "board." + d.job.boards[i].id + '.';
      CHECK(get(d, b + "border.left") + get(d, b + "sight.width") + get(d, b + "border.right") == Approx(outerWidth));
      CHECK(get(d, b + "border.top") + get(d, b + "sight.height") + get(d, b + "border.bottom") == Approx(outerHeight));
      CHECK(get(d, b + "mark.right") + get(d, b + "border.right") == Approx(outerWidth));
      CHECK(get(d, b + "mark.bottom") + get(d, b + "border.bottom") == Approx(outerHeight));
      CHECK(get(d, b + "face.width") - get(d, b + "sight.width") == Approx(2 * get(d, b + "bevel.plan")).margin(1e-9));
      CHECK(std::hypot(get(d, b + "bevel.plan"), get(d, b + "thickness")) == Approx(get(d, b + "bevel.slope")));
      if (i > 0) {
        const std::string above = "board." + d.job.boards[i - 1].id + '.';
        CHECK(get(d, above + "sight.width") - get(d, b + "sight.width") == Approx(2 * get(d, b + "reveal")));
        CHECK(get(d, above + "sight.height") - get(d, b + "face.height") == Approx(2 * get(d, b + "reveal.flat")));
      }
    }
    const std::string innermost = "board." + d.job.boards.back().id + '.';
    CHECK(get(d, "visible.width") == get(d, innermost + "sight.width"));
    CHECK(get(d, "art.left") + d.job.window.distance.inMillimetres() == Approx(get(d, innermost + "border.left")));
    if (d.job.bands.empty()) continue;
    ++with;
    const std::string band = "band.band0.";
    const double inner = get(d, band + "inner.width") * get(d, band + "inner.height");
    const double outer = get(d, band + "outer.width") * get(d, band + "outer.height");
    CHECK(get(d, band + "area") == Approx(outer - inner));
    const std::string top = "board.a.";
    CHECK(get(d, "leaf.gold.area") == Approx(inner - get(d, top + "face.width") * get(d, top + "face.height")));
    CHECK(get(d, "line.rule.horizontal") == Approx(get(d, band + "outer.width") + 1.5));
  }
  CHECK(with > 400);
}
