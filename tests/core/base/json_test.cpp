#include "core/base/json.h"

#include "tests/support/catch.h"

using namespace core::base;

namespace {

std::string firstProblem(std::string_view text) {
  const auto problems = parseJson(text).problems.sorted();
  return problems.empty() ? "" : dump(problems.front());
}

}  // namespace

TEST_CASE("what is read is written again, keys in their order", "[json]") {
  const std::string text = R"({"b": 1, "a": [true, null, "x\"y", -2.5, 1e+300], "empty": {}, "none": []})";
  const ParsedJson parsed = parseJson(text);
  REQUIRE(parsed.readable);
  CHECK(parsed.problems.empty());
  CHECK(writeJson(parsed.root, 0) == text);
}

TEST_CASE("a key given twice is told at its place and the first stays", "[json]") {
  const ParsedJson parsed = parseJson(R"({"a": {"x": 1, "x": 2}, "a": 3})");
  REQUIRE(parsed.readable);
  const auto problems = parsed.problems.sorted();
  REQUIRE(problems.size() == 2);
  CHECK(dump(problems[0]) == "/a/x json.key-twice key=x");
  CHECK(dump(problems[1]) == "/a json.key-twice key=a");
  CHECK(parsed.root.find("a")->find("x")->asNumber() == 1);
}

TEST_CASE("a repeated key whose value is a whole tree does not disturb what follows", "[json]") {
  const ParsedJson parsed = parseJson(R"({"a": 1, "a": {"b": [1, {"c": 2}]}, "d": 4})");
  REQUIRE(parsed.readable);
  CHECK(parsed.problems.sorted().size() == 1);
  CHECK(writeJson(parsed.root, 0) == R"({"a": 1, "d": 4})");
}

TEST_CASE("a syntax error has line and column", "[json]") {
  CHECK(firstProblem("{\n  \"a\": 1,\n  b\n}") == "3:3 json.syntax");
  CHECK(firstProblem("{\"a\": 1} x") == "1:10 json.syntax");
  CHECK(firstProblem("") == "1:1 json.empty");
  CHECK(firstProblem(" \n\t") == "1:1 json.empty");
  CHECK(firstProblem("{\"a\": 'b'}") == "1:7 json.syntax");
}

TEST_CASE("a text in UTF-16 or UTF-32 is named as what it is", "[json]") {
  using namespace std::string_view_literals;
  for (const std::string_view text :
       {"\xFF\xFE{\0}\0"sv, "\xFE\xFF\0{\0}"sv, "\xFF\xFE"sv, "{\0\n\0}\0"sv, "\0{\0}"sv}) {
    CHECK_FALSE(parseJson(text).readable);
    CHECK(firstProblem(text) == "1:1 json.encoding encoding=UTF-16");
  }
  for (const std::string_view text : {"\xFF\xFE\0\0{\0\0\0"sv, "\0\0\xFE\xFF\0\0\0{"sv, "{\0\0\0"sv, "\0\0\0{"sv}) {
    CHECK(firstProblem(text) == "1:1 json.encoding encoding=UTF-32");
  }
  CHECK(firstProblem("\0\0\0\0"sv) == "1:1 json.syntax");
  CHECK(parseJson("\xEF\xBB\xBF{}").readable);
}

TEST_CASE("a zero byte is no end of the text: what stands behind it is not passed over", "[json]") {
  using namespace std::string_view_literals;
  for (const std::string_view text :
       {"{}\0"sv, "{\"a\": 1}\n\0{\"format\": \"garbage\", anything"sv, "{\0}"sv, "\0{}"sv, "{\"a\0\": 1}"sv}) {
    const ParsedJson parsed = parseJson(text);
    CHECK_FALSE(parsed.readable);
    CHECK(firstProblem(text).find("json.syntax") != std::string::npos);
  }
  const auto problem = parseJson("{}\n\0"sv).problems.sorted().front();
  CHECK(problem.line == 2);
  CHECK(problem.column == 1);
}

TEST_CASE("bytes that are not UTF-8 are a syntax error", "[json]") {
  for (const char* bad : {"{\"a\": \"\xff\"}", "{\"a\": \"\xc0\xaf\"}", "{\"a\": \"\xed\xa0\x80\"}", "{\"\x80\": 1}"}) {
    const ParsedJson parsed = parseJson(bad);
    CHECK_FALSE(parsed.readable);
    CHECK(parsed.problems.sorted().size() == 1);
  }
}

TEST_CASE("numbers beyond range are refused, minus zero is zero", "[json]") {
  CHECK(firstProblem("{\"a\": 1e400}").find("json.number-too-large") != std::string::npos);
  const ParsedJson parsed = parseJson("[-0, -0.0, 18446744073709551615, 9007199254740993]");
  REQUIRE(parsed.readable);
  CHECK(writeJson(parsed.root.items()[0], 0) == "0");
  CHECK(writeJson(parsed.root.items()[1], 0) == "0");
  CHECK(parsed.root.items()[2].asNumber() == 18446744073709551615.0);
  CHECK(parsed.root.items()[3].asInteger() == 9007199254740993);
}

TEST_CASE("nesting beyond the limit is refused where it passes it", "[json]") {
  const std::string deep(kMaximumJsonDepth, '[');
  CHECK(parseJson(deep + std::string(kMaximumJsonDepth, ']')).readable);
  const std::string tooDeep = "[\"[[\",\n[" + deep;
  const ParsedJson parsed = parseJson(tooDeep);
  CHECK_FALSE(parsed.readable);
  const auto problem = parsed.problems.sorted().front();
  CHECK(problem.message.id == "json.too-deep");
  CHECK(problem.line == 2);
  CHECK(problem.column == kMaximumJsonDepth);
  CHECK_FALSE(parseJson(std::string(1'000'000, '[')).readable);
  CHECK_FALSE(parseJson(std::string(500'000, '{')).readable);
}

TEST_CASE("a file beyond the size limit is refused without being read", "[json]") {
  const std::string large(kMaximumJsonBytes + 1, ' ');
  const ParsedJson parsed = parseJson(large);
  CHECK_FALSE(parsed.readable);
  CHECK(parsed.problems.sorted().front().message.id == "json.too-large");
}

TEST_CASE("every truncation is one problem with a place", "[json]") {
  const std::string text = R"({"a": [1, {"b": "\u00e9\n"}, null], "c": -1.5e3})";
  for (std::size_t length = 0; length < text.size(); ++length) {
    const ParsedJson parsed = parseJson(std::string_view(text).substr(0, length));
    CHECK_FALSE(parsed.readable);
    const auto problems = parsed.problems.sorted();
    REQUIRE(problems.size() == 1);
    CHECK(problems.front().line == 1);
    CHECK(problems.front().column >= 1);
  }
}

TEST_CASE("positions run in document order", "[json]") {
  const ParsedJson parsed = parseJson(R"({"a": [10, 20], "b": {"c": 30}})");
  const Value& root = parsed.root;
  CHECK(root.order() == 0);
  CHECK(root.find("a")->order() < root.find("a")->items()[0].order());
  CHECK(root.find("a")->items()[1].order() < root.find("b")->order());
  CHECK(root.find("b")->order() < root.find("b")->find("c")->order());
}

TEST_CASE("pointers escape what RFC 6901 asks", "[json]") {
  CHECK(pointerTo("", "a/b~c") == "/a~1b~0c");
  CHECK(pointerTo("/x", std::size_t{3}) == "/x/3");
}

namespace {

std::string manyKeys(std::size_t count) {
  std::string text = "{\"list\": [{";
  for (std::size_t i = 0; i < count; ++i) text += (i > 0 ? ",\"k" : "\"k") + std::to_string(i) + "\":0";
  return text + "}]}";
}

}  // namespace

TEST_CASE("an object of too many keys, a key too long and too many values are refused at their place", "[json]") {
  CHECK(parseJson(manyKeys(kMaximumJsonKeys)).readable);
  CHECK_FALSE(parseJson(manyKeys(kMaximumJsonKeys + 1)).readable);
  CHECK(firstProblem(manyKeys(kMaximumJsonKeys + 1)) == "/list/0 json.too-many-keys limit=1000");
  CHECK(firstProblem(manyKeys(300'000)) == "/list/0 json.too-many-keys limit=1000");

  const auto withKey = [](std::size_t length) { return "{\"a\": {\"" + std::string(length, 'k') + "\": 1}}"; };
  CHECK(parseJson(withKey(kMaximumJsonKeyBytes)).readable);
  CHECK(firstProblem(withKey(kMaximumJsonKeyBytes + 1)) == "/a json.key-too-long limit=200");

  const auto values = [](std::size_t count) {
    std::string text = "[0";
    for (std::size_t i = 2; i < count; ++i) text += ",0";
    return text + "]";
  };
  CHECK(parseJson(values(kMaximumJsonValues)).readable);
  CHECK_FALSE(parseJson(values(kMaximumJsonValues + 1)).readable);
  CHECK(firstProblem(values(kMaximumJsonValues + 1)) == " json.too-many-values limit=500000");
}
