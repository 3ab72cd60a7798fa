// What a job may hold, and what must not come of it.
#include <algorithm>

#include "core/base/json.h"
#include "core/design/design.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;

namespace {

using base::Value;
using Lines = std::vector<std::string>;

Value document() {
  const auto json = base::parseJson(demoJobText());
  REQUIRE(json.readable);
  return json.root;
}

Lines problemsOf(const Value& job) { return problemLines(base::writeJson(job, 0)); }

std::string idOf(const std::string& prefix, std::size_t i) { return prefix + std::to_string(i); }

// A list of `count` items, each `item` with an id of its own.
Value listOf(std::size_t count, const Value& item) {
  Value list = Value::array();
  for (std::size_t i = 0; i < count; ++i) {
    Value one = item;
    list.append(one.set("id", Value::text(idOf("x", i))));
  }
  return list;
}

bool tells(const Lines& lines, const std::string& line) {
  return std::find(lines.begin(), lines.end(), line) != lines.end();
}

}  // namespace

TEST_CASE("each list of a job is told where it holds one more than it may", "[limits]") {
  const struct {
    const char* key;
    std::size_t most;
  } lists[] = {{"bands", design::kMostBands},         {"lines", design::kMostLines},
               {"spandrels", design::kMostSpandrels}, {"washes", design::kMostWashes},
               {"leaf", design::kMostLeafFields},     {"stock", design::kMostStock}};
  for (const auto& list : lists) {
    INFO(list.key);
    const std::string told = std::string("/") + list.key +
                             " read.too-many-items count=" + std::to_string(list.most + 1) +
                             " most=" + std::to_string(list.most);
    Value job = document();
    job.set(list.key, listOf(list.most + 1, Value::object()));
    CHECK(tells(problemsOf(job), told));
    job.set(list.key, listOf(list.most, Value::object()));
    for (const std::string& line : problemsOf(job)) CHECK(line.find("read.too-many-items") == std::string::npos);
  }
  Value job = document();
  Value roles = Value::object();
  for (std::size_t i = 0; i <= design::kMostRoles; ++i) roles.set(idOf("role", i), Value::text("x"));
  job.set("techniques", roles);
  CHECK(tells(problemsOf(job), "/techniques read.too-many-items count=101 most=100"));
}

TEST_CASE("no text of a job is longer than it may be or holds what commands a display", "[limits]") {
  for (const char* key : {"title", "reference", "client"}) {
    INFO(key);
    Value job = document();
    CHECK(problemsOf(job.set(key, Value::text(std::string(200, 'x')))).empty());
    CHECK(problemsOf(job.set(key, Value::text(std::string(201, 'x')))) ==
          Lines{std::string("/") + key + " read.text-too-long count=201 most=200"});
    CHECK(problemsOf(job.set(key, Value::text("26\xE2\x80\xAE"))) ==
          Lines{std::string("/") + key + " read.control-character code=U+202E"});
  }
}

TEST_CASE("a job kept from before texts had limits still opens, fit to be shown", "[limits]") {
  Value job = document();
  job.set("title", Value::text(std::string(3'000'000, 'x')));
  job.set("client", Value::text("Harbour\x1b[2J"));
  const std::string text = base::writeJson(job, 0);
  CHECK_FALSE(design::readDesign(text).design);
  const auto kept = design::readDesign(text, base::Source::Kept);
  REQUIRE(kept.design);
  CHECK(kept.design->job.title.size() == 203);
  CHECK(kept.design->job.client == "Harbour\\u001b[2J");
}

TEST_CASE("what would have to be cut longer than ten metres is told where it comes from", "[limits]") {
  CHECK(problemLines(demoJobWith(R"("trim": "6 mm")", R"("trim": "10000 mm")")).front() ==
        "/bands/0/trim job.strip-too-long band=inner length=20367mm most=10000mm");
  CHECK(problemLines(demoJobWith(R"("repeat": "24 mm")", R"("repeat": "10000 mm")")).front() ==
        "/bands/0/repeat job.strip-too-long-with-repeat band=inner length=10379mm most=10000mm");
  CHECK(tells(problemLines(demoJobWith(R"("sides": "70 mm")", R"("sides": "4900 mm")")),
              "/mount/borders job.mount-too-wide length=10116mm most=10000mm"));
}

namespace {

// One board round a window of 99 lobes, lines round it, and leaf within all of them.
std::string intricate(int lines, int fields) {
  const auto list = [](int count, const auto& item) {
    std::string all;
    for (int i = 0; i < count; ++i) all += (i > 0 ? "," : "") + item(i);
    return all;
  };
  const auto line = [](int i) {
    return R"({"id": "l)" + std::to_string(i) + R"(", "along": "window", "gap": ")" + std::to_string(1 + 3 * i) +
           R"( mm", "width": "1 mm", "colour": "red"})";
  };
  const auto field = [](int i) {
    return R"({"id": "f)" + std::to_string(i) + R"(", "region": "inside:b", "method": "laid", "size": "oil"})";
  };
  return R"({"format": "mountwright-job/1", "artwork": {"width": "1000 mm", "height": "1000 mm"}, "mount": {"window":
    {"shape": "arch", "head": "multifoil", "lobes": 99, "overlap": "3 mm"}, "boards": [{"id": "top", "thickness":
    "1.5 mm"}], "borders": {"sides": "1000 mm", "weighting": "4:3"}}, "bands": [{"id": "b", "paper": "plain", "offset":
    "400 mm", "width": "10 mm"}], "lines": [)" +
         list(lines, line) + R"(], "leaf": [)" + list(fields, field) + "]}";
}

}  // namespace

TEST_CASE("a piece on which more meets than can be laid out is told so, once and where it ended", "[limits]") {
  CHECK(problemLines(intricate(6, 1)).empty());
  CHECK(problemLines(intricate(60, 40)) == Lines{"/leaf/0 job.too-much-to-place"});
}

TEST_CASE("several layouts can share one effort, and moving an outline is part of it", "[limits]") {
  base::Problems problems;
  const auto read = design::readDesign(intricate(6, 0));
  REQUIRE(read.design);
  // Each of the six lines is the window's outline moved thrice.
  design::Effort effort(60'000'000);
  CHECK_FALSE(design::layOut(read.design->job, design::AsMade(), effort, problems).lines.empty());
  CHECK(problems.sorted().empty());
  CHECK_FALSE(effort.spent());
  int more = 0;
  for (; !effort.spent() && more < 10; ++more) design::layOut(read.design->job, design::AsMade(), effort, problems);
  CHECK(more == 2);
  REQUIRE(problems.sorted().size() == 1);
  CHECK(problems.sorted()[0].message.id == "job.too-much-to-place");
  // What is no layout says so.
  base::Problems again;
  CHECK(design::layOut(read.design->job, design::AsMade(), effort, again).boards.empty());
  CHECK(again.hasErrors());
}
