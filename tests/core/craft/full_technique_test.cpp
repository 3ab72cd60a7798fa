#include "tests/core/craft/full_technique.h"

#include <set>

#include "core/base/json.h"
#include "core/craft/technique_reader.h"
#include "tests/support/catch.h"

namespace craft_tests {

namespace {

using core::craft::ThingKind;
using core::units::Duration;

core::craft::Technique read() {
  const auto result = core::craft::readTechnique(fullTechnique());
  REQUIRE(result.technique.has_value());
  return *result.technique;
}

// The same document with every object's keys in reverse.
core::base::Value reversed(const core::base::Value& value) {
  using core::base::Value;
  if (value.kind() == Value::Kind::Array) {
    Value array = Value::array();
    for (const Value& item : value.items()) array.append(reversed(item));
    return array;
  }
  if (value.kind() != Value::Kind::Object) return value;
  Value object = Value::object();
  for (auto member = value.members().rbegin(); member != value.members().rend(); ++member) {
    object.set(member->first, reversed(member->second));
  }
  return object;
}

}  // namespace

TEST_CASE("A full technique is read without a problem") { CHECK(problemsOf(fullTechnique()).empty()); }

TEST_CASE("The head of a technique is what its file says") {
  const auto technique = read();
  CHECK(technique.id == "lay-band");
  CHECK(technique.title == "Lay a band of printed paper");
  CHECK(technique.role == "band");
  CHECK(technique.rank == 40);
  CHECK_FALSE(technique.ofShop);
  CHECK(technique.when.mode == core::craft::When::Mode::Each);
  CHECK(technique.when.kind == ThingKind::Band);
  CHECK(technique.when.where.at("motif") == std::vector<std::string>{"mirror", "plain"});
  CHECK(technique.when.where.at("paper") == std::vector<std::string>{"wave-block print"});
  REQUIRE(technique.repeat.has_value());
  CHECK(technique.repeat->figure == "band.this.area");
  CHECK(technique.repeat->each == 20000);
  CHECK(technique.steps.size() == 4);
}

TEST_CASE("What a technique wants is what its file says") {
  const auto technique = read();
  REQUIRE(technique.wants.size() == 4);
  const auto& lap = technique.wants[0];
  CHECK(lap.of == core::craft::Measure::Lap);
  CHECK(lap.isLeast);
  CHECK(lap.bound == 5);
  CHECK(lap.why == "A narrower lap lets go.");
  CHECK(lap.source == "common practice");
  const auto& damp = technique.wants[1];
  CHECK(damp.of == core::craft::Measure::Humidity);
  CHECK_FALSE(damp.isLeast);
  CHECK(damp.bound == 60);
  CHECK_FALSE(technique.wants[2].of.has_value());
  CHECK(technique.wants[2].where.at("motif") == std::vector<std::string>{"mirror"});
  REQUIRE(technique.wants[3].without.has_value());
  CHECK(technique.wants[3].without->text == "package.glazing.charged");
}

TEST_CASE("Every measure has a name of its own, and a place of the job file") {
  std::set<std::string_view> names;
  for (const auto& traits : core::craft::measures()) {
    CHECK(names.insert(traits.name).second);
    CHECK(traits.place.substr(0, 1) == "/");
    CHECK(core::craft::traitsOf(traits.measure).name == traits.name);
  }
  CHECK(names.size() > 10);
}

TEST_CASE("A step is what its file says") {
  const auto technique = read();
  const auto& step = technique.steps[0];
  CHECK(step.each == ThingKind::Strip);
  CHECK(step.where.at("repeat") == std::vector<std::string>{"yes"});
  CHECK(step.sentences.size() == 2);
  CHECK(step.trap == "A blunt blade drags the print.");
  REQUIRE(step.materials.size() == 3);
  CHECK(step.materials[0].amount->factor == 1);
  CHECK(step.materials[1].amount->figure == "band.owner.area");
  CHECK(step.materials[1].amount->factor == 0.00015);
  CHECK_FALSE(step.materials[2].amount.has_value());
  CHECK(step.figures[1].count == 2);
  CHECK(step.figures[1].from == "cut end to cut end");
  CHECK(step.figures[1].by == core::units::Marking::Marks);
  CHECK_FALSE(step.figures[0].by);
  CHECK(step.checks[1].within == "0.5 mm");
  CHECK(step.cautions[0].sign == "W022");
  CHECK(step.cautions[1].word == core::craft::SignalWord::Notice);
  CHECK(step.cautions[0].room == core::craft::RoomBounds());
  CHECK(step.cautions[1].room.colder == core::units::Temperature::celsius(10));
  CHECK(step.cautions[1].room.damper == core::units::Humidity::percent(65));
  CHECK_FALSE(step.cautions[1].room.warmer);
  CHECK_FALSE(step.cautions[1].room.drier);
  CHECK(step.where.at("side") == std::vector<std::string>{"top", "bottom", "left", "right"});
  REQUIRE(step.setup);
  REQUIRE(step.setup->figures.size() == 2);
  CHECK(step.setup->figures[0].as.empty());
  CHECK(step.setup->figures[1].figure == "band.owner.strip.axis");
  CHECK(step.setup->figures[1].as == "length");
  CHECK(step.hands == core::craft::Hands::Blade);
  CHECK(step.up == core::craft::WayUp::Back);
  CHECK(step.act == core::craft::Act::CutStrips);
  CHECK(step.work == core::units::Span{Duration::minutes(2), Duration::minutes(3), Duration::minutes(6)});
  REQUIRE(step.needs.size() == 4);
  CHECK(step.needs[2].alternatives[0].every == ThingKind::Corner);
  CHECK(step.needs[2].alternatives[0].of == core::craft::Relation::Adjoining);
  CHECK(step.needs[3].alternatives.size() == 2);
  CHECK(step.needs[3].alternatives[1].pointer == "/steps/0/needs/3/anyOf/1");
  CHECK(step.faults[0].ends[0].text == "this.*");
  REQUIRE(step.faults[1].ways.size() == 2);
  CHECK(step.faults[1].ways[0].key == "Trim it");
  CHECK(step.faults[1].ways[0].ends.empty());
  CHECK(step.faults[1].ways[1].ends[0].text == "this.cut");
  CHECK(step.asMade == std::vector<std::string>{"band.owner.strip.axis"});
  CHECK(technique.steps[1].uninterruptible);
  CHECK(technique.steps[1].resource == "press");
  CHECK(technique.steps[2].each == ThingKind::Part);
  CHECK(technique.steps[3].each == ThingKind::Band);
  CHECK(technique.steps[3].where.empty());
}

TEST_CASE("A caution is for the rooms beyond its bounds, and where no room is known for all") {
  using core::craft::concerns;
  const auto room = [](double celsius, double percent) {
    return core::units::Room{core::units::Temperature::celsius(celsius), core::units::Humidity::percent(percent)};
  };
  core::craft::RoomBounds bounds;
  CHECK(concerns(bounds, room(20, 50)));
  bounds.colder = core::units::Temperature::celsius(10);
  CHECK(concerns(bounds, std::nullopt));
  CHECK(concerns(bounds, room(9.9, 50)));
  CHECK_FALSE(concerns(bounds, room(10, 50)));
  bounds.damper = core::units::Humidity::percent(65);
  CHECK(concerns(bounds, room(20, 65.1)));
  CHECK_FALSE(concerns(bounds, room(20, 65)));
  core::craft::RoomBounds other;
  other.warmer = core::units::Temperature::celsius(30);
  other.drier = core::units::Humidity::percent(45);
  CHECK(concerns(other, room(31, 50)));
  CHECK(concerns(other, room(20, 44)));
  CHECK_FALSE(concerns(other, room(30, 45)));
}

TEST_CASE("A wait is what its file says, and the reference room where it names none") {
  const auto technique = read();
  const auto& open = technique.steps[1].waits[0];
  CHECK(open.kind == core::craft::WaitKind::Open);
  CHECK(open.opens.late == Duration());
  REQUIRE(open.closes.has_value());
  CHECK(open.closes->likely == Duration::minutes(5));
  CHECK(open.model == core::craft::DryingModel::Evaporation);
  CHECK(open.reference.temperature.inCelsius() == 20);
  CHECK(open.reference.humidity.inPercent() == 55);
  CHECK(open.attended);
  REQUIRE(open.ifMissed.has_value());
  CHECK(open.ifMissed->ends.size() == 2);
  const auto& dry = technique.steps[1].waits[1];
  CHECK_FALSE(dry.closes.has_value());
  CHECK(dry.follows->text == "this.wet");
  CHECK(dry.opens.late == Duration::minutes(90));
  CHECK(dry.model == core::craft::DryingModel::Oxidation);
  CHECK(dry.reference.temperature.inCelsius() == 23);
  CHECK(dry.reference.humidity.inPercent() == 50);
}

TEST_CASE("The order of keys changes nothing") {
  const auto parsed = core::base::parseJson(fullTechnique());
  const std::string text = core::base::writeJson(reversed(parsed.root), 2);
  REQUIRE(text.find("\"steps\"") < text.find("\"format\""));
  const auto other = core::craft::readTechnique(text);
  REQUIRE(other.technique.has_value());
  CHECK((*other.technique == read()));
}

}  // namespace craft_tests
