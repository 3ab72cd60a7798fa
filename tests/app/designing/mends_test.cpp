// The one change that settles what is wrong: it is offered only where it does so and brings nothing else.
#include "app/designing/ways.h"

#include <algorithm>

#include "app/designing/reading.h"
#include "app/words/words.h"
#include "app/workbench/library_loader.h"
#include "tests/app/designing/document.h"
#include "tests/support/catch.h"

using app::designing::Field;
using app::designing::Mend;
using app::designing::Section;
using app::designing::Ways;
using core::base::Value;
using core::units::UnitSystem;
using tests::demo;
using tests::put;

namespace {

const app::workbench::Library& shipped() {
  static const app::workbench::Library kLibrary =
      app::workbench::loadLibrary(QStringLiteral(PROJECT_ROOT "/recipes"), QString()).library;
  return kLibrary;
}

struct Tried {
  QString said;
  std::optional<Mend> mend;
  std::vector<std::string> left;  // what is still wrong after it
};

std::vector<std::string> errorsOf(const Value& document) {
  std::vector<std::string> all;
  for (const auto& problem : app::designing::readForNow(document).problems.sorted()) {
    if (problem.severity == core::base::Severity::Error) all.push_back(core::base::dump(problem));
  }
  return all;
}

// Asks for what settles the first problem of the document, of the fields of its section.
Tried tried(const Value& document, const core::craft::Catalogue& catalogue) {
  const auto read = app::designing::readForNow(document);
  auto sections = app::designing::sectionsOf(document, read);
  Tried result;
  for (const Section& section : sections) {
    if (section.allProblems().isEmpty()) continue;
    result.said = section.allProblems().front();
    std::vector<const Field*> fields;
    for (const Field& field : section.fields) {
      if (!field.problems.isEmpty()) fields.push_back(&field);
    }
    for (const Field& field : section.fields) {
      if (field.problems.isEmpty()) fields.push_back(&field);
    }
    Ways ways(document, catalogue, UnitSystem::Millimetres);
    result.mend = ways.mend(result.said, fields);
    if (result.mend) {
      const auto patched = core::base::patched(document, result.mend->patch);
      REQUIRE(patched.ok());
      result.left = errorsOf(patched.value());
    }
    break;
  }
  return result;
}

}  // namespace

TEST_CASE("a band that runs over another is offered the nearest measure at which it does not") {
  const auto& catalogue = shipped().catalogue;
  const Value chart = demo("pilots-chart");
  REQUIRE(errorsOf(chart).empty());
  const Value wide = put(chart, "/bands/0/width", Value::text("60 mm"));
  const std::size_t wrong = errorsOf(wide).size();
  REQUIRE(wrong > 0);
  const Tried found = tried(wide, catalogue);
  INFO(found.said.toStdString());
  REQUIRE(found.mend.has_value());
  INFO(found.mend->label.toStdString());
  CHECK(found.left.size() < wrong);
}

TEST_CASE("a mend is the least: half a millimetre more would be wrong again") {
  const auto& catalogue = shipped().catalogue;
  const Value chart = demo("pilots-chart");
  const Value deep = put(chart, "/mount/window/overlap", Value::text("400 mm"));
  const Tried found = tried(deep, catalogue);
  REQUIRE(found.mend.has_value());
  CHECK(found.left.empty());
  const auto patched = core::base::patched(deep, found.mend->patch);
  const Value* value = core::base::at(patched.value(), "/mount/window/overlap");
  REQUIRE(value != nullptr);
  const auto length = core::units::parseLength(value->asText());
  REQUIRE(length.ok());
  const double more = length.value().length.inMillimetres() + 0.5;
  CHECK_FALSE(errorsOf(put(deep, "/mount/window/overlap", Value::text(std::to_string(more) + " mm"))).empty());
}

TEST_CASE("where no single value settles it, nothing is offered") {
  const auto& catalogue = shipped().catalogue;
  Value chart = put(demo("pilots-chart"), "/mount/window/overlap", Value::text("400 mm"));
  Ways ways(chart, catalogue, UnitSystem::Millimetres);
  CHECK_FALSE(ways.mend(QStringLiteral("nothing that is wrong here"), {}).has_value());
  const auto read = app::designing::readForNow(chart);
  auto sections = app::designing::sectionsOf(chart, read);
  // The fields of the lines cannot mend the window.
  for (const Section& section : sections) {
    if (section.allProblems().isEmpty()) continue;
    std::vector<const Field*> lines;
    for (const Section& other : sections) {
      if (other.name != QLatin1String("Lines")) continue;
      for (const Field& field : other.fields) lines.push_back(&field);
    }
    REQUIRE_FALSE(lines.empty());
    CHECK_FALSE(ways.mend(section.allProblems().front(), lines).has_value());
    break;
  }
}

TEST_CASE("a band pushed over the edge is brought back, though right at the window it would lie on a line") {
  const auto& catalogue = shipped().catalogue;
  const Value chart = demo("pilots-chart");
  const Value pushed = put(chart, "/bands/0/offset", Value::text("80 mm"));
  REQUIRE_FALSE(errorsOf(put(chart, "/bands/0/offset", Value::text("0.5 mm"))).empty());
  const Tried found = tried(pushed, catalogue);
  REQUIRE(found.mend.has_value());
  INFO(found.mend->label.toStdString());
  CHECK(found.left.size() < errorsOf(pushed).size());
}
