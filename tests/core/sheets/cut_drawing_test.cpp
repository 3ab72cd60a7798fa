#include "core/sheets/cut_drawing.h"

#include <algorithm>

#include "tests/support/catch.h"
#include "tests/support/stocked_example.h"

using namespace core::sheets;

namespace {

bool has(const Drawing& drawing, const std::string& element) {
  return std::any_of(drawing.primitives.begin(), drawing.primitives.end(),
                     [&](const Primitive& one) { return one.element == element; });
}

}  // namespace

TEST_CASE("every piece, cut and kept part of every sheet is drawn, and on the sheet") {
  const auto design = tests::designOf(tests::stockedExample());
  const auto pieces = core::materials::cuttingList(design.job, design.layout);
  const auto plan = core::materials::planSheets(pieces, {design.job.stock});
  std::size_t sheets = 0;
  for (const auto& group : plan.groups) {
    for (const auto& sheet : group.sheets) {
      ++sheets;
      const auto& stock = design.job.stock[sheet.stock];
      const Drawing drawing = drawCutSheet(sheet, stock);
      CHECK(drawing.width == stock.width.inMillimetres());
      CHECK(drawing.height == stock.height.inMillimetres());
      for (std::size_t i = 1; i <= sheet.pieces.size(); ++i) CHECK(has(drawing, "piece." + std::to_string(i)));
      for (std::size_t i = 1; i <= sheet.cuts.size(); ++i) CHECK(has(drawing, "cut." + std::to_string(i)));
      for (std::size_t i = 1; i <= sheet.offcuts.size(); ++i) CHECK(has(drawing, "kept." + std::to_string(i)));
      for (const Primitive& one : drawing.primitives) {
        INFO(one.element);
        for (const Point& point : std::get<Stroke>(one.shape).points) {
          CHECK(point.x >= -1e-9);
          CHECK(point.y >= -1e-9);
          CHECK(point.x <= drawing.width + 1e-9);
          CHECK(point.y <= drawing.height + 1e-9);
        }
      }
    }
  }
  CHECK(sheets >= 3);
}

TEST_CASE("a piece lies in the drawing where the plan has it, past the margin") {
  const auto design = tests::designOf(tests::stockedExample());
  const auto pieces = core::materials::cuttingList(design.job, design.layout);
  const auto plan = core::materials::planSheets(pieces, {design.job.stock});
  const auto& sheet = plan.groups.front().sheets.front();
  const auto& stock = design.job.stock[sheet.stock];
  const Drawing drawing = drawCutSheet(sheet, stock);
  const auto found = std::find_if(drawing.primitives.begin(), drawing.primitives.end(),
                                  [](const Primitive& one) { return one.element == "piece.1"; });
  REQUIRE(found != drawing.primitives.end());
  const Point from = std::get<Stroke>(found->shape).points.front();
  const double margin = stock.usableMargin.inMillimetres();
  CHECK(margin > 0);
  CHECK(from.x == sheet.pieces[0].at.x.inMillimetres() + margin);
  CHECK(from.y == sheet.pieces[0].at.y.inMillimetres() + margin);
}
