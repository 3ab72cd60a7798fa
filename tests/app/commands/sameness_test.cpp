// The same job gives the same bytes: whatever the order of its keys, and whatever its things are called.
#include <algorithm>
#include <functional>
#include <random>

#include "tests/app/commands/ran.h"
#include "tests/support/stocked_example.h"

using core::base::Value;
using tests::Commands;

namespace {

// The value with the members of every object in another order.
Value shuffled(const Value& value, std::mt19937& random) {
  if (value.kind() == Value::Kind::Array) {
    Value list = Value::array();
    for (const Value& item : value.items()) list.append(shuffled(item, random));
    return list;
  }
  if (value.kind() != Value::Kind::Object) return value;
  std::vector<Value::Member> members = value.members();
  for (std::size_t i = members.size(); i > 1; --i) std::swap(members[i - 1], members[random() % i]);
  Value object = Value::object();
  for (const auto& [key, member] : members) object.set(key, shuffled(member, random));
  return object;
}

std::vector<QStringList> outputs() {
  return {{QStringLiteral("figures"), QStringLiteral("--json")},
          {QStringLiteral("figures")},
          {QStringLiteral("steps"), QStringLiteral("--json")},
          {QStringLiteral("rehearse"), QStringLiteral("--json")},
          {QStringLiteral("materials"), QStringLiteral("--json")},
          {QStringLiteral("materials")},
          {QStringLiteral("care"), QStringLiteral("--for=conservator")},
          {QStringLiteral("check")}};
}

std::string allOutputs(const Commands& commands, const std::string& text) {
  const QString file = commands.file(QStringLiteral("same.job.json"), text);
  std::string all;
  for (QStringList arguments : outputs()) {
    arguments << file;
    const auto ran = commands.run(arguments);
    all += std::to_string(ran.exit) + '\n' + ran.out + ran.err;
  }
  return all;
}

}  // namespace

TEST_CASE("the order of keys changes no byte of any output") {
  const Commands commands;
  for (const std::string& text : {tests::workedExample(), tests::inchExample(), tests::stockedExample()}) {
    const std::string plain = allOutputs(commands, text);
    CHECK(plain.size() > 1000);
    const Value root = tests::parsed(text);
    for (unsigned seed = 1; seed <= 8; ++seed) {
      std::mt19937 random(seed);
      const std::string other = core::base::writeJson(shuffled(root, random), 0);
      REQUIRE(other != core::base::writeJson(root, 0));
      INFO(seed);
      CHECK(allOutputs(commands, other) == plain);
    }
  }
}

TEST_CASE("renamed ids give the same figures renamed") {
  const auto rename = [](std::string text) {
    for (const auto& [from, to] :
         std::vector<std::pair<std::string, std::string>>{{"\"id\": \"top\"", "\"id\": \"zz-first\""},
                                                          {"\"id\": \"under\"", "\"id\": \"aa-second\""},
                                                          {"\"id\": \"inner\"", "\"id\": \"m1\""},
                                                          {"band:inner.", "band:m1."},
                                                          {"outside:inner", "outside:m1"},
                                                          {"\"id\": \"outside\"", "\"id\": \"b\""},
                                                          {"\"id\": \"inside\"", "\"id\": \"c\""},
                                                          {"\"id\": \"field\"", "\"id\": \"d\""}}) {
      text = tests::changed(text, from, to);
    }
    return text;
  };
  const auto plain = tests::designOf(tests::workedExample());
  const auto renamed = tests::designOf(rename(tests::workedExample()));
  REQUIRE(plain.figures.all().size() == renamed.figures.all().size());
  const std::map<std::string, std::string> names = {{"", ""},        {"top", "zz-first"}, {"under", "aa-second"},
                                                    {"inner", "m1"}, {"outside", "b"},    {"inside", "c"},
                                                    {"field", "d"}};
  for (std::size_t i = 0; i < plain.figures.all().size(); ++i) {
    const auto& was = plain.figures.all()[i];
    const auto& is = renamed.figures.all()[i];
    INFO(was.id);
    CHECK(is.element == names.at(was.element));
    CHECK(is.kind == was.kind);
    CHECK(is.value == was.value);
    CHECK(is.display == was.display);
  }
}
