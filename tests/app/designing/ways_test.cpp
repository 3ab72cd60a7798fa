// Whatever the desk offers can be worked: answers taken at random from a fresh design on, and every pair of answers.
#include "app/designing/ways.h"

#include <QRegularExpression>
#include <algorithm>
#include <cstdio>
#include <map>
#include <random>
#include <set>

#include "app/designing/reading.h"
#include "app/designing/techniques.h"
#include "app/designing/usual.h"
#include "app/words/words.h"
#include "app/workbench/library_loader.h"
#include "app/workbench/taking_in.h"
#include "core/drafts/drafted.h"
#include "tests/app/designing/document.h"
#include "tests/support/catch.h"

using app::designing::Field;
using app::designing::Option;
using app::designing::Section;
using app::designing::Way;
using app::designing::Ways;
using core::base::Value;

using tests::fileOf;
using tests::put;

namespace {

const app::workbench::Library& library() {
  static const app::workbench::Library kLibrary =
      app::workbench::loadLibrary(QStringLiteral(PROJECT_ROOT "/recipes"), QString()).library;
  return kLibrary;
}

Value patchedWith(const Value& document, const Value& patch) {
  auto patched = core::base::patched(document, patch);
  REQUIRE(patched.ok());
  return std::move(patched).value();
}

Value begun() {
  Value document = app::designing::freshDesign();
  document = put(document, "/artwork/width", Value::text("310 mm"));
  document = put(document, "/artwork/height", Value::text("310 mm"));
  return put(document, "/title", Value::text("Tide gate at dusk"));
}

std::vector<Section> wholeForm(const Value& document) {
  const auto read = app::designing::readForNow(document);
  auto sections = app::designing::sectionsOf(document, read);
  std::optional<core::workflow::Workflow> composed;
  if (read.design) {
    if (auto workflow = core::workflow::compose(*read.design, library().catalogue)) {
      composed = std::move(workflow).value();
    }
  }
  sections.push_back(app::designing::techniqueSection(document, library().catalogue, composed ? &*composed : nullptr));
  return sections;
}

bool reads(const Value& document) { return !core::design::readDesign(fileOf(document)).problems.hasErrors(); }

// Every reason as a maker reads it; fails where one shows what is not for him.
void checkWords(const QString& said) {
  INFO(said.toStdString());
  CHECK_FALSE(said.isEmpty());
  CHECK_FALSE(said.contains(u'{'));
  CHECK_FALSE(said.contains(QLatin1String(".finished")));
  CHECK_FALSE(said.contains(QRegularExpression(QStringLiteral("[a-z]+-[a-z]+/[a-z]|[a-z]\\.[a-z]|@|methylCellulose"))));
}

void checkGoesToBench(const Value& document) {
  const auto ready = app::workbench::readyToTakeIn(fileOf(document), "hash", library());
  for (const auto& refusal : ready.refusals) UNSCOPED_INFO(core::base::dump(refusal));
  INFO(fileOf(document));
  CHECK(ready.intent.has_value());
}

// Every answer the form gives, with what it is called.
struct Answer {
  std::string called;
  const Field* field = nullptr;
  const Option* option = nullptr;  // null for an act
};

std::vector<Answer> answersOf(const std::vector<Section>& sections) {
  std::vector<Answer> answers;
  for (const Section& section : sections) {
    for (const Field& field : section.fields) {
      const std::string name = section.name.toStdString() + " / " + field.of.toStdString() + " / ";
      if (field.kind == Field::Kind::Act) answers.push_back({name + field.label.toStdString(), &field, nullptr});
      if (field.kind != Field::Kind::Choice) continue;
      for (const Option& option : field.options) {
        if (option.chosen) continue;
        answers.push_back({name + field.label.toStdString() + ": " + option.label.toStdString(), &field, &option});
      }
    }
  }
  return answers;
}

Way wayOf(Ways& ways, const Answer& answer) {
  return answer.option == nullptr ? ways.ofAct(*answer.field) : ways.of(answer.option->patch);
}

}  // namespace

TEST_CASE("a walk through whatever the desk offers never comes to a design that cannot be worked") {
  constexpr int kWalks = 60;
  constexpr int kSteps = 30;
  std::mt19937 random(20261128);
  int taken = 0;
  int barred = 0;
  int unmeasured = 0;
  std::set<std::string> seen;
  for (int walk = 0; walk < kWalks; ++walk) {
    Value document = begun();
    for (int step = 0; step < kSteps; ++step) {
      const auto sections = wholeForm(document);
      const auto answers = answersOf(sections);
      const Answer& answer = answers[random() % answers.size()];
      Ways ways(document, library().catalogue);
      const Way way = wayOf(ways, answer);
      INFO(answer.called << "\n" << fileOf(document));
      if (!way.barred.isEmpty()) {
        checkWords(way.barred);
        ++barred;
        continue;
      }
      const Value next = patchedWith(document, way.patch);
      // Measures that do not hold are told at their fields; the maker puts them right or takes it back.
      if (!reads(next)) {
        ++unmeasured;
        continue;
      }
      document = next;
      ++taken;
      seen.insert(answer.called);
      const auto read = core::design::readDesign(fileOf(document));
      REQUIRE(read.design);
      const auto composed = core::workflow::compose(*read.design, library().catalogue, app::words::thingWords());
      if (!composed) {
        UNSCOPED_INFO(core::base::dump(composed.error().front().problem));
        REQUIRE(composed.ok());
      }
    }
    checkGoesToBench(document);
  }
  std::printf("%d answers taken (%zu different), %d barred, %d with measures to put right\n", taken, seen.size(),
              barred, unmeasured);
  CHECK(taken > 1'500);
  CHECK(seen.size() > 100);
  CHECK(barred > 10);
}

TEST_CASE("every pair of answers to a piece with everything on it can be worked or is barred with its reason") {
  Value document = begun();
  for (const char* act : {"Add a band", "One more board beneath", "Add a line", "Add a wash panel", "Add leaf"}) {
    for (const Section& section : wholeForm(document)) {
      for (const Field& field : section.fields) {
        if (field.label != QLatin1String(act)) continue;
        const Way way = Ways(document, library().catalogue).ofAct(field);
        INFO(act << ": " << way.barred.toStdString());
        REQUIRE(way.barred.isEmpty());
        document = patchedWith(document, way.patch);
      }
    }
    REQUIRE(reads(document));
  }
  int pairs = 0;
  int barred = 0;
  const auto sections = wholeForm(document);
  Ways ways(document, library().catalogue);
  for (const Answer& one : answersOf(sections)) {
    const Way first = wayOf(ways, one);
    if (!first.barred.isEmpty()) continue;
    const Value changed = patchedWith(document, first.patch);
    if (!reads(changed)) continue;
    const auto thenSections = wholeForm(changed);
    Ways then(changed, library().catalogue);
    // Of each field one answer in turn, so that all pairs of fields meet, with answers that change from pair to pair.
    std::map<const Field*, std::vector<Answer>> byField;
    for (const Answer& other : answersOf(thenSections)) byField[other.field].push_back(other);
    for (const auto& [field, others] : byField) {
      const Answer& other = others[static_cast<std::size_t>(pairs) % others.size()];
      const Way second = wayOf(then, other);
      ++pairs;
      INFO(one.called << "\nthen " << other.called);
      if (!second.barred.isEmpty()) {
        checkWords(second.barred);
        ++barred;
        continue;
      }
      const Value both = patchedWith(changed, second.patch);
      if (!reads(both)) continue;
      const auto read = core::design::readDesign(fileOf(both));
      REQUIRE(read.design);
      const auto composed = core::workflow::compose(*read.design, library().catalogue, app::words::thingWords());
      if (!composed) {
        UNSCOPED_INFO(core::base::dump(composed.error().front().problem));
        REQUIRE(composed.ok());
      }
    }
  }
  std::printf("%d pairs, %d barred\n", pairs, barred);
  CHECK(pairs > 2'000);
  CHECK(barred > 0);
}

TEST_CASE("leaf that is scattered goes on a size that is scattered on, and a size nobody lays on says so") {
  Value document = begun();
  const auto answer = [&](const char* label, const char* option) {
    const auto sections = wholeForm(document);
    Ways ways(document, library().catalogue);
    for (const Answer& one : answersOf(sections)) {
      const bool act = one.option == nullptr;
      if (one.field->label != QLatin1String(label) || (!act && one.option->label != QLatin1String(option))) continue;
      return wayOf(ways, one);
    }
    FAIL("nothing is offered as " << label << ' ' << option);
    return Way();
  };
  document = patchedWith(document, answer("Add leaf", "").patch);
  REQUIRE(core::base::at(document, "/leaf/0/size")->asText() == "water");
  const Way scattered = answer("laid or scattered", "scattered");
  CHECK(scattered.barred.isEmpty());
  CHECK(scattered.with == QLatin1String("methyl cellulose"));
  document = patchedWith(document, scattered.patch);
  CHECK(core::base::at(document, "/leaf/0/size")->asText() == "methylCellulose");
  checkGoesToBench(document);
  CHECK(answer("size", "water size").barred ==
        QLatin1String("No technique scatters leaf on water size; choose methyl cellulose or starch."));
  CHECK(answer("size", "starch").barred.isEmpty());
  // And back: what was chosen for scattering is not laid on.
  const Way laid = answer("laid or scattered", "laid");
  CHECK(laid.with == QLatin1String("water size"));
  checkGoesToBench(patchedWith(document, laid.patch));
}

TEST_CASE("what is wrong with a design's work stands at its field, in words") {
  Value document = begun();
  Value leaf = Value::object();
  leaf.set("id", Value::text("one")).set("region", Value::text("face")).set("method", Value::text("scattered"));
  leaf.set("coverage", Value::number(0.2)).set("size", Value::text("water"));
  document = put(document, "/leaf", Value::array().append(leaf));
  const auto read = app::designing::readForNow(document);
  REQUIRE(read.design);
  const auto composed = core::workflow::compose(*read.design, library().catalogue, app::words::thingWords());
  REQUIRE_FALSE(composed.ok());
  auto sections = app::designing::sectionsOf(document, read);
  for (const auto& told : composed.error()) {
    app::designing::place(sections, told.problem,
                          app::designing::reasonText(told, core::units::UnitSystem::Millimetres));
  }
  QStringList said;
  for (const Section& section : sections) {
    CHECK(section.problems.isEmpty());
    for (const Field& field : section.fields) {
      if (field.problems.isEmpty()) continue;
      CHECK(field.label == QLatin1String("size"));
      said << field.problems;
    }
  }
  REQUIRE(said.size() == 1);
  checkWords(said.front());
}

TEST_CASE("each new line, wash, band and field of leaf lies clear of what is there, and has a name that reads well") {
  Value document = begun();
  int added = 0;
  for (const char* act : {"Add a line", "Add a line", "Add a band", "Add a line", "Add a line", "Add a line",
                          "One more band outside", "Add a wash panel", "Add a line", "Add leaf", "Add leaf"}) {
    INFO(act);
    bool found = false;
    for (const Section& section : wholeForm(document)) {
      for (const Field& field : section.fields) {
        if (found || field.label != QLatin1String(act)) continue;
        found = true;
        const Way way = Ways(document, library().catalogue).ofAct(field);
        INFO(way.barred.toStdString());
        REQUIRE(way.barred.isEmpty());
        document = patchedWith(document, way.patch);
      }
    }
    REQUIRE(found);
    const auto read = core::design::readDesign(fileOf(document));
    for (const auto& problem : read.problems.sorted()) UNSCOPED_INFO(core::base::dump(problem));
    REQUIRE_FALSE(read.problems.hasErrors());
    ++added;
  }
  CHECK(added == 11);
  for (const Section& section : wholeForm(document)) {
    for (const Field& field : section.fields) {
      const QStringList words = field.of.split(u' ');
      INFO(field.of.toStdString());
      CHECK(std::adjacent_find(words.begin(), words.end()) == words.end());
    }
  }
  checkGoesToBench(document);
}

namespace {

// Every length of a document, with its place.
void collectLengths(const Value& value, const std::string& pointer, std::map<std::string, std::string>& lengths) {
  if (value.kind() == Value::Kind::Object) {
    for (const auto& [key, member] : value.members()) {
      collectLengths(member, core::base::pointerTo(pointer, key), lengths);
    }
  } else if (value.kind() == Value::Kind::Array) {
    for (std::size_t i = 0; i < value.items().size(); ++i) {
      collectLengths(value.items()[i], core::base::pointerTo(pointer, i), lengths);
    }
  } else if (value.kind() == Value::Kind::Text && core::units::parseLength(value.asText())) {
    lengths[pointer] = value.asText();
  }
}

}  // namespace

TEST_CASE("whatever the desk enters for a maker of inches is a round measure of inches") {
  Value document = app::designing::freshDesign(core::units::UnitSystem::Inches);
  document = put(document, "/artwork/width", Value::text("12 1/4 in"));
  document = put(document, "/artwork/height", Value::text("9 1/2 in"));
  document = put(document, "/title", Value::text("Tide gate at dusk"));
  const auto checkRound = [](const Value& root) {
    std::map<std::string, std::string> lengths;
    collectLengths(root, "", lengths);
    for (const auto& [pointer, text] : lengths) {
      INFO(pointer << " = " << text);
      const auto parsed = core::units::parseLength(text);
      CHECK(parsed.value().unit == core::units::LengthUnit::Inch);
      CHECK(parsed.value().length.inNanometres() % (core::units::kNanometresPerInch / 32) == 0);
    }
    return lengths.size();
  };
  int taken = 0;
  for (const char* act : {"One more board beneath", "One more board beneath", "The sheet is larger than what shows",
                          "Add a band", "One more band outside", "Add a line", "Add a line", "Add a wash panel",
                          "Add paper round the head", "Add leaf"}) {
    INFO(act);
    for (const Section& section : wholeForm(document)) {
      for (const Field& field : section.fields) {
        for (const Option& option : field.options) checkRound(patchedWith(document, option.patch));
      }
    }
    const auto sections = wholeForm(document);
    for (const Section& section : sections) {
      for (const Field& field : section.fields) {
        if (field.label != QLatin1String(act)) continue;
        const Way way = Ways(document, library().catalogue).ofAct(field);
        if (!way.barred.isEmpty()) continue;
        document = patchedWith(document, way.patch);
        ++taken;
      }
    }
    const auto read = core::design::readDesign(fileOf(document));
    for (const auto& problem : read.problems.sorted()) UNSCOPED_INFO(core::base::dump(problem));
    REQUIRE(read.design);
  }
  CHECK(taken >= 8);
  CHECK(checkRound(document) > 25);
  // No figure of the band's own is one of millimetres shown roughly.
  const auto read = core::design::readDesign(fileOf(document));
  REQUIRE(read.design);
  for (const char* id : {"dryEnd", "glueFrom", "strip.width"}) {
    const auto* figure = read.design->figures.find("band." + read.design->job.bands.front().id + '.' + id);
    REQUIRE(figure != nullptr);
    CHECK_FALSE(figure->shown.approximate);
  }
}

TEST_CASE("a fresh design of inches whose work is measured in millimetres is that of millimetres") {
  const Value inches = app::designing::freshDesign(core::units::UnitSystem::Inches);
  const Value patch =
      app::designing::inTheUnitsOf(inches, app::designing::putAt(inches, "/artwork/width", Value::text("310 mm")));
  std::map<std::string, std::string> turned, fresh;
  collectLengths(patchedWith(inches, patch), "", turned);
  collectLengths(put(app::designing::freshDesign(), "/artwork/width", Value::text("310 mm")), "", fresh);
  CHECK(turned == fresh);
  // The same units change nothing but what was entered.
  const Value plain = app::designing::putAt(inches, "/artwork/width", Value::text("12 in"));
  const Value same = app::designing::inTheUnitsOf(inches, plain);
  CHECK(same.items().size() == plain.items().size());
}

TEST_CASE("a value that does not read leaves the drawing and every figure that does not depend on it") {
  Value document = begun();
  document = put(document, "/mount/boards/0/bevel/colour", Value::text("copper"));
  const auto whole = app::designing::readForNow(document);
  REQUIRE(whole.design);
  const std::pair<const char*, Value> wrong[] = {
      {"/due", Value::text("12 December")},
      {"/title", Value::text("")},
      {"/reference", Value::integer(26)},
      {"/client", Value::array()},
      {"/room", Value::text("warm")},
      {"/deliver", Value::text("by boat")},
      {"/stock", Value::text("plenty")},
      {"/techniques", Value::text("mine")},
      {"/mount/boards/0/material", Value::integer(3)},
      {"/mount/boards/0/bevel/colour", Value::integer(7)},
  };
  for (const auto& [pointer, value] : wrong) {
    INFO(pointer);
    const Value bad = put(document, pointer, value);
    const auto read = app::designing::readForNow(bad);
    CHECK(read.problems.hasErrors());
    REQUIRE(read.design);
    REQUIRE(read.design->figures.all().size() == whole.design->figures.all().size());
    for (std::size_t i = 0; i < whole.design->figures.all().size(); ++i) {
      CHECK(read.design->figures.all()[i].display == whole.design->figures.all()[i].display);
    }
    // And a measure that does not read is never made up.
    CHECK_FALSE(app::designing::readForNow(put(bad, "/artwork/width", Value::text("wide"))).design);
  }
}
