#include "core/sheets/names.h"
#include "core/sheets/piece.h"
#include "core/sheets/svg.h"
#include "tests/support/golden_drawing.h"
#include "tests/support/shaped_example.h"

using namespace core::sheets;

namespace {

std::string dimensions(const core::design::Design& design) {
  std::string text;
  for (const core::design::Figure& figure : design.figures.all()) {
    text += figure.id;
    const auto dimension = drawFigure(design, figure.id);
    if (!dimension) {
      text += " has no place\n";
      continue;
    }
    text += dimension->side == Side::Face ? " face\n" : " back\n";
    for (const Primitive& primitive : dimension->primitives) text += "  " + dump(primitive) + '\n';
  }
  return text;
}

}  // namespace

TEST_CASE("the drawings of the chart are what they were when they were looked at") {
  const auto design = tests::designOf(tests::workedExample());
  tests::checkGoldenDrawing(PROJECT_ROOT, "sheets/chart.face.txt", dump(drawPiece(design, Side::Face)));
  tests::checkGoldenDrawing(PROJECT_ROOT, "sheets/chart.back.txt", dump(drawPiece(design, Side::Back)));
  tests::checkGolden(PROJECT_ROOT, "sheets/chart.figures.txt", dimensions(design));
  tests::checkGolden(PROJECT_ROOT, "sheets/chart.face.svg", svg(drawPiece(design, Side::Face)));
}

TEST_CASE("the drawings of the heron are what they were when they were looked at") {
  const auto design = tests::designOf(tests::inchExample());
  tests::checkGoldenDrawing(PROJECT_ROOT, "sheets/heron.face.txt", dump(drawPiece(design, Side::Face)));
  tests::checkGoldenDrawing(PROJECT_ROOT, "sheets/heron.back.txt", dump(drawPiece(design, Side::Back)));
  tests::checkGolden(PROJECT_ROOT, "sheets/heron.figures.txt", dimensions(design));
}

TEST_CASE("the drawings of shaped windows are what they were when they were looked at") {
  for (const std::string& form : tests::shapedForms()) {
    const auto design = tests::designOf(tests::shapedExample(form));
    // "arch, ogee" of `"shape": "arch", "head": "ogee", ...`.
    std::string name = design.job.window.form.shape == core::geometry::Shape::Arch ? form.substr(26) : form.substr(10);
    name = name.substr(0, name.find('"'));
    INFO(name);
    tests::checkGoldenDrawing(PROJECT_ROOT, "sheets/tide-" + name + ".face.txt", dump(drawPiece(design, Side::Face)));
    tests::checkGoldenDrawing(PROJECT_ROOT, "sheets/tide-" + name + ".back.txt", dump(drawPiece(design, Side::Back)));
  }
}
