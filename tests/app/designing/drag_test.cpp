// Edges taken hold of in the drawing, and what they are drawn to.
#include "app/designing/drag.h"
#include "app/designing/fields.h"
#include "core/drafts/drafted.h"
#include "tests/app/designing/document.h"
#include "tests/support/catch.h"
#include "tests/support/files.h"

using app::designing::draggedMeasure;
using app::designing::DragHandle;
using app::designing::handleAt;
using core::base::Value;
using core::units::UnitSystem;

using tests::demo;

namespace {

core::design::Design designOf(const Value& document) {
  core::drafts::Drafted drafted;
  drafted.document = document;
  auto read = core::design::readDesign(drafted.text());
  REQUIRE(read.design.has_value());
  return *std::move(read.design);
}

}  // namespace

TEST_CASE("every edge is moved by the finger as far as its measure says") {
  for (const char* name : {"pilots-chart", "heron", "tide-table"}) {
    const Value document = demo(name);
    const auto design = designOf(document);
    const auto handles = app::designing::dragHandles(document, design);
    CHECK(handles.size() >= 4);
    std::size_t followed = 0;
    for (const DragHandle& handle : handles) {
      INFO(name << ' ' << handle.pointer << " at " << handle.at);
      // Outwards by eight millimetres: the edge lies eight millimetres farther from the window.
      const double way = handle.perMm > 0 ? 8 : -8;
      const QPointF from(handle.upright ? handle.at : 0, handle.upright ? 0 : handle.at);
      const QPointF to = from + (handle.upright ? QPointF(way, 0) : QPointF(0, way));
      const std::string measure = draggedMeasure(handle, from, to, UnitSystem::Millimetres);
      const auto patched =
          core::base::patched(document, app::designing::putAt(document, handle.pointer, Value::text(measure)));
      REQUIRE(patched.ok());
      core::drafts::Drafted meant;
      meant.document = patched.value();
      const auto read = core::design::readDesign(meant.text());
      if (!read.design) continue;  // a conflict is the design's to tell
      const auto after = app::designing::dragHandles(patched.value(), *read.design);
      REQUIRE(after.size() == handles.size());
      const DragHandle& moved = after[static_cast<std::size_t>(&handle - handles.data())];
      const auto& faceWas = design.layout.boards.front().faceAt;
      const auto& faceIs = read.design->layout.boards.front().faceAt;
      const double was = handle.at - (handle.upright ? faceWas.left : faceWas.top);
      const double is = moved.at - (handle.upright ? faceIs.left : faceIs.top);
      // Half a millimetre by the snapping.
      CHECK(std::abs(is - was - way) <= 0.51);
      ++followed;
    }
    // Of all edges few come into conflict with another.
    CHECK(2 * followed > handles.size());
  }
}

TEST_CASE("the nearest edge is taken, and none from afar") {
  std::vector<DragHandle> handles(2);
  handles[0] = {"/a", "a", "", true, 10, 0, 100, 1, 5};
  handles[1] = {"/b", "b", "", true, 14, 0, 100, 1, 5};
  CHECK(handleAt(handles, {11, 50}, 6) == &handles[0]);
  CHECK(handleAt(handles, {13, 50}, 6) == &handles[1]);
  CHECK(handleAt(handles, {30, 50}, 6) == nullptr);
  CHECK(handleAt(handles, {11, 120}, 6) == nullptr);
}

TEST_CASE("a measure is drawn to half millimetres or 32nds, and never below nothing") {
  const DragHandle handle{"/a", "a", "", false, 0, 0, 1, -1, 25.4};
  CHECK(draggedMeasure(handle, {0, 0}, {0, 0.2}, UnitSystem::Millimetres) == "25 mm");
  CHECK(draggedMeasure(handle, {0, 0}, {3, -0.2}, UnitSystem::Millimetres) == "25.5 mm");
  CHECK(draggedMeasure(handle, {0, 0}, {0, 90}, UnitSystem::Millimetres) == "0 mm");
  CHECK(draggedMeasure(handle, {0, 0}, {0, 0}, UnitSystem::Inches) == "1 in");
  CHECK(draggedMeasure(handle, {0, 0}, {0, -2.4}, UnitSystem::Inches) == "1 3/32 in");
  CHECK(draggedMeasure(handle, {0, 0}, {0, 12.7}, UnitSystem::Inches) == "1/2 in");
}
