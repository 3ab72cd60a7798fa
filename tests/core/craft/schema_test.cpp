#include <algorithm>
#include <fstream>
#include <iterator>
#include <set>

#include "core/base/json.h"
#include "core/craft/act.h"
#include "core/craft/fields.h"
#include "core/craft/reading.h"
#include "core/craft/technique_reader.h"
#include "tests/core/craft/full_technique.h"
#include "tests/support/catch.h"

namespace craft_tests {

namespace {

using core::base::Value;

Value schema() {
  std::ifstream file(PROJECT_ROOT "/recipes/schema/technique.schema.json", std::ios::binary);
  const std::string text{std::istreambuf_iterator<char>(file), {}};
  const auto parsed = core::base::parseJson(text);
  REQUIRE(parsed.readable);
  REQUIRE(parsed.problems.empty());
  return parsed.root;
}

// Every property name any object of the schema has.
void gatherProperties(const Value& value, std::set<std::string>& names) {
  for (const Value& item : value.kind() == Value::Kind::Array ? value.items() : std::vector<Value>()) {
    gatherProperties(item, names);
  }
  if (value.kind() != Value::Kind::Object) return;
  for (const auto& [key, member] : value.members()) {
    if (key == "properties" && member.kind() == Value::Kind::Object) {
      for (const auto& [name, property] : member.members()) names.insert(name);
    }
    gatherProperties(member, names);
  }
}

void gatherKeys(const Value& value, std::set<std::string>& names) {
  for (const Value& item : value.kind() == Value::Kind::Array ? value.items() : std::vector<Value>()) {
    gatherKeys(item, names);
  }
  if (value.kind() != Value::Kind::Object) return;
  for (const auto& [key, member] : value.members()) {
    names.insert(key);
    // What `where` asks about are properties of things, no keys of the format.
    if (key != "where") gatherKeys(member, names);
  }
}

// Every list and every text of the schema that has no `limit`; texts of a few words and of a pattern without an end
// have none.
void gatherBoundless(const Value& value, const std::string& place, std::vector<std::string>& places) {
  if (value.kind() == Value::Kind::Array) {
    for (const Value& item : value.items()) gatherBoundless(item, place, places);
  }
  if (value.kind() != Value::Kind::Object) return;
  const Value* type = value.find("type");
  const std::string kind = type != nullptr && type->kind() == Value::Kind::Text ? type->asText() : "";
  if (kind == "array" && value.find("maxItems") == nullptr) places.push_back(place);
  if (kind == "string" && value.find("maxLength") == nullptr && value.find("pattern") == nullptr)
    places.push_back(place);
  for (const auto& [key, member] : value.members()) gatherBoundless(member, place + '/' + key, places);
}

std::int64_t limitAt(const Value& root, const char* pointer) {
  const Value* value = core::base::at(root, pointer);
  return value == nullptr ? -1 : value->asInteger();
}

std::string repeated(const std::string& item, std::size_t count) {
  std::string list = item;
  for (std::size_t i = 1; i < count; ++i) list += ", " + item;
  return list;
}

}  // namespace

TEST_CASE("Every list and every free text of the schema has its limit") {
  std::vector<std::string> boundless;
  gatherBoundless(schema(), "", boundless);
  CHECK(boundless == std::vector<std::string>{});
}

TEST_CASE("The schema's limits are the reader's, at the limit and one beyond") {
  using namespace core::craft;
  const Value root = schema();
  CHECK(limitAt(root, "/properties/steps/maxItems") == static_cast<std::int64_t>(kMostSteps));
  CHECK(limitAt(root, "/$defs/step/properties/waits/maxItems") == static_cast<std::int64_t>(kMostWaits));
  CHECK(limitAt(root, "/$defs/step/properties/tools/maxItems") == static_cast<std::int64_t>(kMostEntries));
  CHECK(limitAt(root, "/$defs/step/properties/good/maxLength") == static_cast<std::int64_t>(kLongestPhrase));
  CHECK(limitAt(root, "/$defs/source/maxLength") == static_cast<std::int64_t>(kLongestPhrase));

  const auto withTools = [](std::size_t count) {
    return changed(R"("tools": ["knife", "steel rule"])", R"("tools": [)" + repeated(R"("bone")", count) + "]");
  };
  const auto toldAt = [](const std::string& text) {
    const auto problems = problemsOf(text);
    return std::find(problems.begin(), problems.end(), "/steps/0/tools read.too-many-items") != problems.end();
  };
  CHECK_FALSE(toldAt(withTools(kMostEntries)));
  CHECK(toldAt(withTools(kMostEntries + 1)));
}

TEST_CASE("The schema knows every key the reader takes") {
  std::set<std::string> inSchema;
  gatherProperties(schema(), inSchema);
  std::set<std::string> inFile;
  gatherKeys(core::base::parseJson(fullTechnique()).root, inFile);
  // What the full technique cannot say beside what it says.
  inFile.insert({"always", "any", "atLeast", "needed", "scope", "keeps", "for"});
  CHECK(inSchema == inFile);
}

namespace {

// The keys of a definition of the schema, and which of them it requires.
std::pair<std::set<std::string>, std::set<std::string>> keysOf(const char* definition) {
  const Value root = schema();
  const Value& object = *root.find("$defs")->find(definition);
  std::pair<std::set<std::string>, std::set<std::string>> keys;
  for (const auto& [key, rule] : object.find("properties")->members()) keys.first.insert(key);
  for (const Value& key : object.find("required")->items()) keys.second.insert(key.asText());
  return keys;
}

template <typename Fields>
std::pair<std::set<std::string>, std::set<std::string>> keysOf(const Fields& fields) {
  std::pair<std::set<std::string>, std::set<std::string>> keys;
  for (const auto& field : fields) {
    keys.first.insert(field.key);
    if (field.required) keys.second.insert(field.key);
  }
  return keys;
}

}  // namespace

TEST_CASE("The schema's step has the fields of the table, and requires those that it requires") {
  auto step = keysOf(core::craft::stepFields());
  step.first.insert({"id", "each"});
  step.second.insert("id");
  CHECK(step == keysOf("step"));
  auto wait = keysOf(core::craft::waitFields());
  // What speaks of facts.
  wait.first.insert({"id", "makes", "follows", "ifMissed"});
  wait.second.insert({"id", "makes"});
  CHECK(wait == keysOf("wait"));
}

TEST_CASE("The schema lists exactly the acts the reader knows") {
  std::vector<std::string> inSchema;
  const Value root = schema();
  for (const Value& word : root.find("$defs")->find("step")->find("properties")->find("act")->find("enum")->items()) {
    inSchema.push_back(word.asText());
  }
  std::vector<std::string> known;
  for (const core::craft::Act act : core::craft::allActs()) known.emplace_back(name(act));
  CHECK(inSchema == known);
}

TEST_CASE("The schema and the page of the format know every measure that can be wanted") {
  std::ifstream file(PROJECT_ROOT "/recipes/README.md", std::ios::binary);
  const std::string page{std::istreambuf_iterator<char>(file), {}};
  std::set<std::string> inSchema;
  const Value root = schema();
  const Value& wants = *root.find("properties")->find("wants")->find("items")->find("oneOf");
  for (const Value& way : wants.items()) {
    const Value* of = way.find("properties")->find("of");
    if (of == nullptr) continue;
    for (const Value& word : of->find("enum")->items()) inSchema.insert(word.asText());
  }
  std::set<std::string> known;
  for (const auto& traits : core::craft::measures()) {
    known.emplace(traits.name);
    INFO(traits.name);
    CHECK(page.find("\n| `" + std::string(traits.name) + "` | ") != std::string::npos);
  }
  CHECK(inSchema == known);
}

TEST_CASE("The page of the format tells what every act shows") {
  std::ifstream file(PROJECT_ROOT "/recipes/README.md", std::ios::binary);
  const std::string page{std::istreambuf_iterator<char>(file), {}};
  for (const core::craft::Act act : core::craft::allActs()) {
    INFO(name(act));
    CHECK(page.find("\n| `" + std::string(name(act)) + "` | ") != std::string::npos);
  }
}

TEST_CASE("A step that names no act has none") {
  const auto read = core::craft::readTechnique(fullTechnique());
  REQUIRE(read.technique);
  CHECK_FALSE(read.technique->steps[1].act.has_value());
}

TEST_CASE("The reader asks for exactly the keys the schema requires of a step") {
  const Value root = schema();
  const Value* step = root.find("$defs")->find("step");
  const std::string head = R"({"format": "mountwright-technique/1", "id": "a", "title": "A", "rank": 1,
                              "when": {"always": true}, "steps": [{}]})";
  CHECK(problemsOf(head).size() == step->find("required")->items().size());
}

TEST_CASE("The reader asks for exactly the keys the schema requires of a technique and of a wait") {
  const Value root = schema();
  CHECK(problemsOf("{}").size() == root.find("required")->items().size());
  const Value* wait = root.find("$defs")->find("wait");
  std::size_t missing = 0;
  for (const std::string& problem : problemsOf(changed(R"("waits": [)", R"("waits": [{},)"))) {
    missing += problem == "/steps/1/waits/0 read.missing-key" ? 1 : 0;
  }
  CHECK(missing == wait->find("required")->items().size());
}

}  // namespace craft_tests
