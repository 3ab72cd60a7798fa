#include "core/base/strict_reader.h"

#include "tests/support/catch.h"

using namespace core::base;

namespace {

std::vector<std::string> lines(const Problems& problems) {
  std::vector<std::string> all;
  for (const Problem& problem : problems.sorted()) all.push_back(dump(problem));
  return all;
}

using Told = std::vector<std::string>;

}  // namespace

TEST_CASE("what nobody asked for is a problem, what is missing stands at the parent", "[reader]") {
  const ParsedJson json = parseJson(R"({"known": 1, "extra": 2, "more": 3})");
  Problems problems;
  ObjectReader reader({&json.root, "/thing"}, problems);
  CHECK(reader.required("known"));
  CHECK_FALSE(reader.required("absent"));
  CHECK_FALSE(reader.optional("maybe"));
  reader.finish();
  CHECK(lines(problems) == Told{"/thing read.missing-key key=absent", "/thing/extra read.unknown-key key=extra",
                                "/thing/more read.unknown-key key=more"});
}

TEST_CASE("no object, no further problems", "[reader]") {
  const ParsedJson json = parseJson("[1]");
  Problems problems;
  ObjectReader reader({&json.root, ""}, problems);
  CHECK_FALSE(reader.valid());
  (void)reader.required("a");
  reader.finish();
  CHECK(lines(problems) == Told{" read.expected-object"});
}

TEST_CASE("each kind of value is read as itself or refused", "[reader]") {
  const ParsedJson json = parseJson(R"([7, "word", true, null, ["a", "b"], "", "a\u0007b", 2.5])");
  const auto node = [&](std::size_t i) { return Node{&json.root.items()[i], pointerTo("", i)}; };
  Problems none;
  CHECK(readNumber(node(0), none, 0, 10) == 7);
  CHECK(readInteger(node(0), none, 0, 10) == 7);
  CHECK(readText(node(1), none) == "word");
  CHECK(readBoolean(node(2), none) == true);
  CHECK(readItems(node(4), none, 2)->size() == 2);
  CHECK(readChoice(node(1), {"no", "word"}, none) == 1);
  CHECK(none.empty());

  Problems problems;
  CHECK_FALSE(readNumber(node(1), problems, 0, 10));
  CHECK_FALSE(readNumber(node(0), problems, 8, 10));
  CHECK_FALSE(readInteger(node(7), problems, 0, 10));
  CHECK_FALSE(readText(node(0), problems));
  CHECK_FALSE(readText(node(5), problems));
  CHECK_FALSE(readText(node(6), problems));
  CHECK_FALSE(readBoolean(node(3), problems));
  CHECK_FALSE(readItems(node(0), problems, 10));
  CHECK_FALSE(readChoice(node(1), {"yes", "no"}, problems));
  CHECK(problems.sorted().size() == 9);
  CHECK(problems.hasErrors());
  CHECK_FALSE(readText(Node{}, problems));  // absent is no problem
  CHECK(problems.sorted().size() == 9);
}

TEST_CASE("notices are not errors", "[reader]") {
  Problems problems;
  report(problems, Node{nullptr, "/a"}, Message("some.notice"), Severity::Notice);
  CHECK_FALSE(problems.hasErrors());
  CHECK_FALSE(problems.empty());
}

TEST_CASE("a text too long, a list too long and a control character are told with the limit", "[reader]") {
  const ParsedJson json =
      parseJson(R"({"name": "ab\u00e9d", "list": [1, 2, 3], "turned": "a\u202eb", "nothing": "\u0000"})");
  const auto node = [&](const char* key) { return Node{json.root.find(key), pointerTo("", key)}; };
  Problems none;
  CHECK(readText(node("name"), none, 4));
  CHECK(readItems(node("list"), none, 3));
  CHECK(none.empty());
  Problems problems;
  CHECK_FALSE(readText(node("name"), problems, 3));
  CHECK_FALSE(readItems(node("list"), problems, 2));
  CHECK_FALSE(readText(node("turned"), problems));
  CHECK_FALSE(readText(node("nothing"), problems));
  CHECK(lines(problems) == Told{"/name read.text-too-long count=4 most=3", "/list read.too-many-items count=3 most=2",
                                "/turned read.control-character code=U+202E",
                                "/nothing read.control-character code=U+0000"});
}

TEST_CASE("what is kept already is read with its long and turned texts made fit to be shown", "[reader]") {
  const ParsedJson json = parseJson(R"({"name": "abcdef", "turned": "a\u202eb"})");
  Problems problems(Source::Kept);
  CHECK(readText(Node{json.root.find("name"), "/name"}, problems, 3) == "abc\u2026");
  CHECK(readText(Node{json.root.find("turned"), "/turned"}, problems) == "a\\u202eb");
  CHECK(problems.empty());
}

TEST_CASE("a hundred errors and a hundred notices are told, and how many more there are", "[reader]") {
  Problems problems;
  for (std::size_t i = 0; i < kMostProblems + 7; ++i) report(problems, Node{nullptr, "/a"}, Message("x"));
  CHECK(problems.isFull());
  for (int i = 0; i < 3; ++i) report(problems, Node{nullptr, "/b"}, Message("y"), Severity::Notice);
  auto told = problems.sorted();
  REQUIRE(told.size() == kMostProblems + 3 + 1);
  CHECK(dump(told.back()) == " problems.more count=7");

  Problems together;
  together.append(problems);
  together.append(problems);
  told = together.sorted();
  REQUIRE(told.size() == kMostProblems + 6 + 1);
  CHECK(dump(told.back()) == " problems.more count=" + std::to_string(kMostProblems + 14));
}

TEST_CASE("an error beyond those that are told is still an error", "[reader]") {
  Problems notices;
  for (std::size_t i = 0; i <= kMostProblems; ++i) report(notices, Node{nullptr, ""}, Message("x"), Severity::Notice);
  CHECK_FALSE(notices.hasErrors());
  CHECK(notices.sorted().back().severity == Severity::Notice);
  report(notices, Node{nullptr, ""}, Message("x"));
  CHECK(notices.hasErrors());
}

TEST_CASE("what a message quotes cannot blow it up", "[reader]") {
  const ParsedJson json = parseJson("\"" + std::string(100'000, 'x') + "\"");
  Problems problems;
  (void)readChoice(Node{&json.root, ""}, {"yes", "no"}, problems);
  CHECK(dump(problems.sorted().front()).size() < 1000);
}
