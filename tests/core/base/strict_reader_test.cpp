#include "core/base/strict_reader.h"

#include "tests/support/catch.h"

using namespace core::base;

namespace {

std::vector<std::string> lines(const Problems& problems) {
  std::vector<std::string> all;
  for (const Problem& problem : problems.sorted()) all.push_back(dump(problem));
  return all;
}

using Lines = std::vector<std::string>;

}  // namespace

TEST_CASE("what nobody asked for is a problem, what is missing stands at the parent", "[reader]") {
  const ParsedJson json = parseJson(R"({"known": 1, "extra": 2, "more": 3})");
  Problems problems;
  ObjectReader reader({&json.root, "/thing"}, problems);
  CHECK(reader.required("known"));
  CHECK_FALSE(reader.required("absent"));
  CHECK_FALSE(reader.optional("maybe"));
  reader.finish();
  CHECK(lines(problems) == Lines{"/thing read.missing-key key=absent", "/thing/extra read.unknown-key key=extra",
                                 "/thing/more read.unknown-key key=more"});
}

TEST_CASE("no object, no further problems", "[reader]") {
  const ParsedJson json = parseJson("[1]");
  Problems problems;
  ObjectReader reader({&json.root, ""}, problems);
  CHECK_FALSE(reader.valid());
  (void)reader.required("a");
  reader.finish();
  CHECK(lines(problems) == Lines{" read.expected-object"});
}

TEST_CASE("each kind of value is read as itself or refused", "[reader]") {
  const ParsedJson json = parseJson(R"([7, "word", true, null, ["a", "b"], "", "a\u0007b", 2.5])");
  const auto node = [&](std::size_t i) { return Node{&json.root.items()[i], pointerTo("", i)}; };
  Problems none;
  CHECK(readNumber(node(0), none, 0, 10) == 7);
  CHECK(readInteger(node(0), none, 0, 10) == 7);
  CHECK(readText(node(1), none) == "word");
  CHECK(readBoolean(node(2), none) == true);
  CHECK(readTexts(node(4), none) == std::vector<std::string>{"a", "b"});
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
  CHECK_FALSE(readItems(node(0), problems));
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
