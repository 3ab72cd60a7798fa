// What can be chosen is shown as it looks: every proposed name tells a look of its own, and every form is drawn.
#include "app/designing/samples.h"

#include <set>

#include "app/designing/fields.h"
#include "app/designing/reading.h"
#include "app/painting/materials.h"
#include "app/painting/tints.h"
#include "tests/app/designing/document.h"
#include "tests/support/catch.h"

using app::designing::Field;
using app::designing::Section;

namespace {

const Field& fieldAt(const std::vector<Section>& sections, const std::string& pointer) {
  for (const Section& section : sections) {
    for (const Field& field : section.fields) {
      if (field.pointer == pointer) return field;
    }
  }
  FAIL("no field at " << pointer);
  return sections.front().fields.front();
}

std::vector<Section> sectionsOfChart() {
  const auto document = tests::demo("pilots-chart");
  return app::designing::sectionsOf(document, app::designing::readForNow(document));
}

}  // namespace

TEST_CASE("every window form stands as its own outline, without words") {
  const auto sections = sectionsOfChart();
  const Field& shape = fieldAt(sections, "/mount/window/shape");
  CHECK(shape.plain);
  REQUIRE(shape.options.size() > 10);
  std::set<std::string> drawn;
  for (const auto& option : shape.options) {
    INFO(option.label.toStdString());
    REQUIRE(option.sample != nullptr);
    CHECK(drawn.insert(core::sheets::dump(*option.sample)).second);
  }
}

TEST_CASE("every proposed paper has a pattern of its own") {
  const auto sections = sectionsOfChart();
  const Field& paper = fieldAt(sections, "/bands/0/paper");
  REQUIRE(paper.sample != nullptr);
  std::set<app::painting::Pattern> patterns;
  for (const auto& option : paper.options) {
    INFO(option.label.toStdString());
    CHECK(option.sample != nullptr);
    patterns.insert(app::painting::paperNamed(option.label.toStdString(), false).pattern);
  }
  CHECK(patterns.size() == paper.options.size());
}

TEST_CASE("every proposed board and colour is known by its name, and no two look alike") {
  const auto sections = sectionsOfChart();
  for (const char* place : {"/mount/boards/0/material", "/mount/boards/0/bevel/colour"}) {
    const Field& field = fieldAt(sections, place);
    std::set<QRgb> colours;
    std::size_t sampled = 0;
    for (const auto& option : field.options) {
      if (option.sample == nullptr) continue;
      INFO(place << ' ' << option.label.toStdString());
      const QColor colour = app::painting::colourIn(option.label.toStdString());
      REQUIRE(colour.isValid());
      colours.insert(colour.rgb());
      ++sampled;
    }
    CHECK(sampled > 4);
    CHECK(colours.size() == sampled);
  }
}

TEST_CASE("what has no name has no look, and the same name has the same one") {
  using core::sheets::Substance;
  CHECK(app::designing::sampleOf(Substance::Board, "") == nullptr);
  CHECK(app::designing::paperSample("", true) == nullptr);
  CHECK(app::designing::paperSample("rope paper", false) == app::designing::paperSample("rope paper", false));
  CHECK(app::designing::paperSample("rope paper", false) != app::designing::paperSample("rope paper", true));
}
