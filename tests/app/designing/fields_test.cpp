// Every field of a design and every answer to it, from a fresh one and from the demo jobs.
#include <algorithm>
#include <cmath>
#include <set>

#include "app/designing/fields.h"
#include "core/materials/repeat_match.h"
#include "core/drafts/drafted.h"
#include "tests/app/designing/document.h"
#include "tests/support/catch.h"
#include "tests/support/files.h"

using app::designing::Field;
using app::designing::Section;
using core::base::Value;

using tests::demo;
using tests::fileOf;
using tests::put;

namespace {

core::design::ReadDesign readOf(const Value& document) { return core::design::readDesign(fileOf(document)); }

std::vector<Section> sectionsOf(const Value& document) {
  return app::designing::sectionsOf(document, readOf(document));
}

}  // namespace

TEST_CASE("a fresh design needs a title and the size of the work, and holds together with them") {
  const Value fresh = app::designing::freshDesign();
  CHECK_FALSE(readOf(fresh).design.has_value());
  Value sized = put(fresh, "/artwork/width", Value::text("310 mm"));
  sized = put(sized, "/artwork/height", Value::text("240 mm"));
  CHECK_FALSE(readOf(sized).design.has_value());
  sized = put(sized, "/title", Value::text("Heron at the weir"));
  const auto read = readOf(sized);
  for (const auto& problem : read.problems.sorted()) UNSCOPED_INFO(core::base::dump(problem));
  CHECK(read.design.has_value());
}

TEST_CASE("every answer offered fits the document, and those that change it change it") {
  for (const Value& document : {app::designing::freshDesign(), demo("pilots-chart"), demo("heron")}) {
    std::set<std::string> labels;
    int answers = 0;
    for (const Section& section : sectionsOf(document)) {
      CHECK_FALSE(section.name.isEmpty());
      CHECK_FALSE(section.fields.empty());
      for (const Field& field : section.fields) {
        INFO(section.name.toStdString() << " / " << field.of.toStdString() << " / " << field.label.toStdString());
        CHECK_FALSE(field.label.isEmpty());
        const bool asks = field.kind == Field::Kind::Choice || field.kind == Field::Kind::Act;
        // Corners that meet ask nothing.
        CHECK((field.options.empty() != asks || field.label == QLatin1String("corners")));
        for (const auto& option : field.options) {
          INFO(option.label.toStdString());
          const auto patched = core::base::patched(document, option.patch);
          REQUIRE(patched.ok());
          // An answer that holds because nothing is entered may still be written down.
          CHECK((option.chosen || fileOf(patched.value()) != fileOf(document)));
          // Whatever comes of it can be shown.
          static_cast<void>(sectionsOf(patched.value()));
          ++answers;
        }
      }
    }
    CHECK(answers > 40);
  }
}

TEST_CASE("every offer for corners that miss makes them meet") {
  int offers = 0;
  for (const char* name : {"pilots-chart", "heron"}) {
    const Value document = demo(name);
    const auto read = readOf(document);
    REQUIRE(read.design.has_value());
    for (const Section& section : app::designing::sectionsOf(document, read)) {
      for (const Field& field : section.fields) {
        if (field.label != QLatin1String("corners")) continue;
        for (const auto& offer : field.offers ? field.offers() : std::vector<app::designing::Option>()) {
          INFO(name << ' ' << offer.label.toStdString());
          const auto& bands = read.design->job.bands;
          const auto of =
              std::find_if(bands.begin(), bands.end(), [&](const auto& band) { return band.id == field.element; });
          REQUIRE(of != bands.end());
          const auto band = static_cast<std::size_t>(of - bands.begin());
          const auto patched = core::base::patched(document, offer.patch);
          REQUIRE(patched.ok());
          const auto mended = readOf(patched.value());
          REQUIRE(mended.design.has_value());
          const auto miss =
              core::materials::cornerMismatch(mended.design->job.bands[band], mended.design->layout.bands[band]);
          REQUIRE(miss.has_value());
          CHECK(std::abs(*miss) <= core::materials::kMismatchShows);
          ++offers;
        }
      }
    }
  }
  CHECK(offers > 3);
}

TEST_CASE("every value of the demo jobs has its field") {
  for (const char* name : {"pilots-chart", "heron"}) {
    const Value document = demo(name);
    std::set<std::string> pointers;
    for (const auto& section : sectionsOf(document)) {
      for (const auto& field : section.fields) {
        if (field.entered) pointers.insert(field.pointer);
      }
    }
    for (const char* pointer : {"/artwork/width", "/artwork/height", "/mount/boards/0/thickness"}) {
      INFO(pointer);
      CHECK(pointers.count(pointer) == 1);
    }
  }
}
