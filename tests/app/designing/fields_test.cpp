// Every field of a design and every answer to it, from a fresh one and from the demo jobs.
#include <algorithm>
#include <cmath>
#include <set>

#include "app/designing/fields.h"
#include "core/base/text.h"
#include "core/drafts/drafted.h"
#include "core/materials/repeat_match.h"
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
    int taken = 0;
    for (const Section& section : sectionsOf(document)) {
      CHECK_FALSE(section.name.isEmpty());
      CHECK_FALSE(section.fields.empty());
      for (const Field& field : section.fields) {
        INFO(section.name.toStdString() << " / " << field.of.toStdString() << " / " << field.label.toStdString());
        CHECK_FALSE(field.label.isEmpty());
        const bool asks = field.kind == Field::Kind::Choice || field.kind == Field::Kind::Act;
        // Corners that meet ask nothing.
        const bool answers = !field.options.empty() || field.offers;
        CHECK((answers == asks || field.kind == Field::Kind::Text || field.label == QLatin1String("corners")));
        for (const auto& option : field.options) {
          INFO(option.label.toStdString());
          const auto patched = core::base::patched(document, option.patch);
          REQUIRE(patched.ok());
          // An answer that holds because nothing is entered may still be written down.
          CHECK((option.chosen || fileOf(patched.value()) != fileOf(document)));
          // Whatever comes of it can be shown.
          static_cast<void>(sectionsOf(patched.value()));
          ++taken;
        }
      }
    }
    CHECK(taken > 40);
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

namespace {

// The places of a document's values: texts, numbers and yes or no.
void collectPlaces(const Value& value, const std::string& pointer, std::vector<std::string>& places) {
  if (value.kind() == Value::Kind::Object) {
    for (const auto& [key, member] : value.members()) {
      collectPlaces(member, core::base::pointerTo(pointer, key), places);
    }
  } else if (value.kind() == Value::Kind::Array) {
    for (std::size_t i = 0; i < value.items().size(); ++i) {
      collectPlaces(value.items()[i], core::base::pointerTo(pointer, i), places);
    }
  } else {
    places.push_back(pointer);
  }
}

}  // namespace

TEST_CASE("every value of the demo jobs has its field, or its place elsewhere at the desk") {
  for (const char* name : {"pilots-chart", "heron", "tide-table"}) {
    const Value document = demo(name);
    // Places a field keys a value in at, and places an answer changes.
    std::multiset<std::string> entered;
    std::set<std::string> chosen;
    for (const auto& section : sectionsOf(document)) {
      for (const auto& field : section.fields) {
        if (field.entered) entered.insert(field.pointer);
        for (const auto& option : field.options) {
          for (const Value& operation : option.patch.items()) {
            if (operation.find("op")->asText() != "remove") chosen.insert(operation.find("path")->asText());
          }
        }
      }
    }
    std::vector<std::string> places;
    collectPlaces(document, "", places);
    CHECK(places.size() > 40);
    for (const std::string& place : places) {
      // Names and the format are the desk's own to give; what is in stock is entered for the whole shop; techniques
      // have a section of their own.
      const bool elsewhere = place == "/format" || core::base::endsWith(place, "/id") ||
                             core::base::startsWith(place, "/stock/") || core::base::startsWith(place, "/prices/") ||
                             core::base::startsWith(place, "/techniques/");
      const bool answered = std::any_of(chosen.begin(), chosen.end(), [&](const std::string& path) {
        return place == path || core::base::startsWith(place, path + '/');
      });
      // The desk cannot change these yet; what a design was begun from keeps them.
      const bool missing = core::base::endsWith(place, "/grain") || core::base::startsWith(place, "/room/") ||
                           core::base::endsWith(place, "/frame/band") || place.find("/between/") != std::string::npos;
      INFO(name << ' ' << place);
      CHECK(entered.count(place) <= 1);
      CHECK((answered || entered.contains(place)) == !(elsewhere || missing));
    }
  }
}
