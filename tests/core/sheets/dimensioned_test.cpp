#include "core/sheets/dimensioned.h"

#include <set>

#include "core/base/text.h"
#include "core/sheets/svg.h"
#include "tests/support/golden.h"
#include "tests/support/shaped_example.h"

using namespace core::sheets;

namespace {

bool meet(const core::geometry::Rectangle& a, const core::geometry::Rectangle& b) {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

std::vector<Text> textsOf(const Drawing& drawing) {
  std::vector<Text> texts;
  for (const Primitive& primitive : drawing.primitives) {
    if (const auto* text = std::get_if<Text>(&primitive.shape)) texts.push_back(*text);
  }
  return texts;
}

// The dimension lines themselves, without the short strokes that end them.
std::vector<Stroke> linesOf(const Drawing& drawing) {
  std::vector<Stroke> lines;
  std::size_t inGroup = 0;
  for (const Primitive& primitive : drawing.primitives) {
    const auto* stroke = std::get_if<Stroke>(&primitive.shape);
    if (primitive.role != Role::Dimension || stroke == nullptr) continue;
    if (inGroup++ % 3 == 0) lines.push_back(*stroke);
  }
  return lines;
}

// Two dimension lines of one direction that lie on each other.
bool lieOnEachOther(const Stroke& a, const Stroke& b) {
  const auto level = [](const Stroke& s) { return s.points[0].y == s.points[1].y; };
  const auto upright = [](const Stroke& s) { return s.points[0].x == s.points[1].x; };
  if (level(a) && level(b)) {
    return std::fabs(a.points[0].y - b.points[0].y) < 1e-9 && a.points[0].x < b.points[1].x &&
           b.points[0].x < a.points[1].x;
  }
  if (upright(a) && upright(b)) {
    return std::fabs(a.points[0].x - b.points[0].x) < 1e-9 && a.points[0].y < b.points[1].y &&
           b.points[0].y < a.points[1].y;
  }
  return false;
}

void requireClear(const Drawing& drawing) {
  const auto texts = textsOf(drawing);
  for (std::size_t i = 0; i < texts.size(); ++i) {
    for (std::size_t k = i + 1; k < texts.size(); ++k) {
      INFO(texts[i].text << " on " << texts[k].text);
      CHECK_FALSE(meet(boxOf(texts[i]), boxOf(texts[k])));
    }
    const auto box = boxOf(texts[i]);
    INFO(texts[i].text);
    CHECK(box.left >= -1e-9);
    CHECK(box.top >= -1e-9);
    CHECK(box.right <= drawing.width + 1e-9);
    CHECK(box.bottom <= drawing.height + 1e-9);
  }
  const auto lines = linesOf(drawing);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    for (std::size_t k = i + 1; k < lines.size(); ++k) CHECK_FALSE(lieOnEachOther(lines[i], lines[k]));
  }
}

}  // namespace

TEST_CASE("a board is marked out on one sheet and nothing on it collides") {
  for (const std::string& form : tests::shapedForms()) {
    const auto design = tests::designOf(tests::shapedExample(form));
    INFO(form);
    for (const char* board : {"top", "under"}) {
      const auto ids = markingOut(design, board);
      REQUIRE(ids.size() >= 6);
      const Drawing drawing = drawDimensioned(design, Side::Back, ids);
      CHECK(textsOf(drawing).size() >= 6);
      requireClear(drawing);
    }
  }
}

TEST_CASE("every figure with a place can stand on one sheet without a collision") {
  for (const std::string& form : tests::shapedForms()) {
    const auto design = tests::designOf(tests::shapedExample(form));
    INFO(form);
    std::vector<std::string> ids;
    for (const auto& figure : design.figures.all()) {
      // The setting-out belongs on the back, and on a sheet of each board's own.
      if (figure.number == 0) ids.push_back(figure.id);
    }
    requireClear(drawDimensioned(design, Side::Face, ids));
    requireClear(drawDimensioned(design, Side::Back, ids));
  }
}

TEST_CASE("the ogee's marking out is what it was when it was looked at") {
  const auto design =
      tests::designOf(tests::shapedExample(R"("shape": "arch", "head": "ogee", "rise": "180 mm", "radius": "60 mm")"));
  tests::checkGolden(PROJECT_ROOT, "sheets/tide-ogee.marking.svg",
                     svg(drawDimensioned(design, Side::Back, markingOut(design, "top"))));
}
