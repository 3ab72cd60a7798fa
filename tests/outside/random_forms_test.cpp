// Ten thousand windows of every shape and head, with numbers drawn at random, beside the same windows drawn from what
// the shapes mean and measured by chords; and windows that cannot be drawn, which must be refused in words.
#include <map>
#include <random>

#include "core/geometry/region.h"
#include "tests/outside/by_definition.h"
#include "tests/support/catch.h"
#include "tests/support/files.h"

using namespace core::geometry;
using tests::ShapeEntry;

namespace {

struct Drawn {
  ShapeEntry entry;
  double width = 0, height = 0;
};

std::string nameOf(const ShapeEntry& entry) {
  return "shape " + std::to_string(int(entry.shape)) + " head " + std::to_string(int(entry.head));
}

// Any numbers at all, fitting or not; every shape and head as often.
Drawn anyWindow(std::mt19937& random) {
  const auto between = [&](double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
  };
  const auto entered = [&](double low, double high) { return tests::entered(between(low, high)); };
  Drawn drawn;
  drawn.width = tests::entered(between(20, 900)).inMillimetres();
  drawn.height = tests::entered(between(0.3, 3) * drawn.width).inMillimetres();
  const double half = drawn.width / 2;
  ShapeEntry& e = drawn.entry;
  const int kind = std::uniform_int_distribution<int>(0, 14)(random);
  e.shape = kind < 6 ? static_cast<Shape>(kind) : Shape::Arch;
  e.head = kind < 6 ? Head::Round : static_cast<Head>(kind - 6);
  if (e.shape == Shape::Round && random() % 8 != 0) drawn.height = drawn.width;
  e.corner = entered(0.5, 0.8 * half);
  e.rise = entered(0.02 * half, 3 * half);
  if (e.head == Head::Segmental || e.head == Head::Basket) e.rise = entered(0.02 * half, 1.2 * half);
  if (e.head == Head::Horseshoe) e.rise = entered(0.9 * half, 2.1 * half);
  if (e.head == Head::FourCentred) e.rise = entered(0.3 * half, 1.4 * half);
  e.radius = entered(0.02 * half, 1.3 * half);
  e.angle = between(1, 89);
  e.sideRadius = entered(0.1 * half, 1.05 * half);
  e.topRadius = entered(0.1 * half, 1.05 * half);
  e.topCentre = entered(0.01 * half, 1.8 * half);
  e.lobes = 3 + 2 * std::uniform_int_distribution<int>(0, 12)(random);
  return drawn;
}

// Within a nanometre of where it fits and where it does not: rounding may decide.
bool isOnTheEdge(const ShapeProblem& problem) {
  const auto* by = problem.message.argument("by");
  return by != nullptr && std::fabs(std::get<core::base::Millimetres>(*by).value) < 1e-6;
}

}  // namespace

TEST_CASE("ten thousand windows have the perimeter and area of their definitions") {
  std::mt19937 random(20'260'101);
  std::map<std::string, int> counted;
  int valid = 0;
  int refused = 0;
  double worst = 0;
  while (valid < 10'000) {
    const Drawn drawn = anyWindow(random);
    const auto& [entry, width, height] = drawn;
    INFO(nameOf(entry) << ' ' << width << " by " << height << " rise " << entry.rise.inMillimetres() << " radius "
                       << entry.radius.inMillimetres() << " angle " << entry.angle << " side "
                       << entry.sideRadius.inMillimetres() << " top " << entry.topRadius.inMillimetres() << " centre "
                       << entry.topCentre.inMillimetres());
    const auto form = construct(entry, width, height);
    const auto curves = tests::rightHalf(entry, width, height);
    if (!form) {
      if (curves && !isOnTheEdge(form.error())) FAIL("refused: " << core::base::dump(form.error().message));
      ++refused;
      continue;
    }
    if (!curves) FAIL("cannot be drawn");
    const tests::Measured expected = tests::measured(*curves, 400);
    const Outline& outline = form.value().outline;
    worst = std::max({worst, std::fabs(outline.perimeter() / expected.perimeter - 1),
                      std::fabs(outline.area() / expected.area - 1)});
    REQUIRE(outline.perimeter() == Approx(expected.perimeter).epsilon(1e-6));
    REQUIRE(outline.area() == Approx(expected.area).epsilon(1e-6));
    REQUIRE(area({{outline, {}}}, {}) == Approx(outline.area()).epsilon(1e-11));
    const Rectangle box = outline.bounds();
    REQUIRE(box.right - box.left == Approx(width).epsilon(1e-12));
    REQUIRE(box.bottom - box.top == Approx(height).epsilon(1e-12));
    REQUIRE(-box.top == Approx(expected.top).margin(1e-7));
    ++counted[nameOf(entry)];
    ++valid;
  }
  std::printf("%d windows of %zu kinds, %d refused, worst %.1e\n", valid, counted.size(), refused, worst);
  CHECK(counted.size() == 15);
  for (const auto& [kind, count] : counted) {
    INFO(kind);
    CHECK(count > 100);
  }
  CHECK(refused > 1000);
}

TEST_CASE("a window that cannot be drawn is refused in words, at a key of its own") {
  const auto words = tests::readWholeFile(PROJECT_ROOT "/app/words/catalogue_job.cpp");
  REQUIRE(words.has_value());
  std::mt19937 random(77);
  std::map<std::string, int> said;
  for (int i = 0; i < 20'000; ++i) {
    const Drawn drawn = anyWindow(random);
    if (tests::rightHalf(drawn.entry, drawn.width, drawn.height)) continue;
    const auto form = construct(drawn.entry, drawn.width, drawn.height);
    REQUIRE_FALSE(form.ok());
    const std::string id = form.error().message.id;
    ++said[id];
    const std::string key = form.error().key;
    INFO(id << " at " << key);
    const std::vector<std::string> keys = {"corner", "shape",      "head",      "rise",
                                           "radius", "sideRadius", "topRadius", "topCentre"};
    REQUIRE(std::find(keys.begin(), keys.end(), key) != keys.end());
    if (!isOnTheEdge(form.error())) {
      REQUIRE(std::get<core::base::Millimetres>(*form.error().message.argument("by")).value > 0);
    }
  }
  CHECK(said.size() == 9);
  for (const auto& [id, count] : said) {
    INFO(id);
    CHECK(count > 5);
    CHECK(words->find("{\"" + id + "\"") != std::string::npos);
  }
}
