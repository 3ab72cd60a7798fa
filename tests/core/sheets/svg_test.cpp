#include "core/sheets/svg.h"

#include "core/sheets/piece.h"
#include "tests/support/worked_example.h"

using namespace core::sheets;

TEST_CASE("an SVG has the mount's true size in millimetres and one user unit a millimetre") {
  const std::string text = svg(drawPiece(tests::designOf(tests::workedExample()), Side::Face));
  CHECK(text.find("width=\"456.000mm\" height=\"409.333mm\" viewBox=\"0 0 456.000 409.333\"") != std::string::npos);
}

TEST_CASE("words in an SVG cannot break out of it") {
  Drawing drawing;
  drawing.primitives.push_back({"a<b", Role::DimensionText, Text{{1, 2}, "3/8\" & <less>", 0}});
  const std::string text = svg(drawing);
  CHECK(text.find("3/8&quot; &amp; &lt;less&gt;") != std::string::npos);
  CHECK(text.find("<less>") == std::string::npos);
}

TEST_CASE("every primitive of a drawing is in its SVG once") {
  const Drawing drawing = drawPiece(tests::designOf(tests::workedExample()), Side::Face);
  const std::string text = svg(drawing);
  std::size_t paths = 0;
  for (std::size_t at = text.find("<path "); at != std::string::npos; at = text.find("<path ", at + 1)) ++paths;
  CHECK(paths == drawing.primitives.size());
}
