// What closing one band's corners does to those of another.
#include <cmath>

#include "tests/core/materials/matched.h"
#include "tests/support/catch.h"

using namespace core;
using namespace tests;
using materials::MatchKind;
using units::Length;

namespace {

Length tenths(int count) { return Length::nanometres(count * std::int64_t{100'000}); }

// The example's band, and another outside it.
std::string twoBands(const std::string& outer) {
  std::string text = changed(workedExample(), R"("grain": "along" } ])", R"("grain": "along" },
    { "id": "outer", "paper": "reed-block print", )" + outer + " } ]");
  return changed(text, R"("region": "outside:inner")", R"("region": "outside:outer")");
}

}  // namespace

TEST_CASE("an inner band's change that opens an outer one ranks after one that keeps it closed") {
  // Both see 35. The outer band's repeat of 7 meets; the inner one's of 24 wants 1, with another centring.
  const auto match = matchIn(twoBands(R"("offset": "6 mm", "width": "5 mm", "repeat": "7 mm")"), 0);
  const auto& first = match.options.front();
  CHECK(first.kind == MatchKind::OthersKept);
  CHECK(first.cost == tenths(20));  // 1 more at the inner band's sides, 1 less at the outer's
  REQUIRE(first.others.size() == 1);
  CHECK(!first.opensOthers);
  CHECK(first.others[0].after == Approx(0).margin(1e-9));
  bool opening = false;
  for (const auto& option : match.options) {
    if (option.opensOthers) {
      opening = true;
      CHECK(says(option.disturbs, "match.opens-band"));
    } else {
      CHECK(!opening);
    }
  }
  CHECK(opening);
}

TEST_CASE("several open bands can be closed at once") {
  // Inner: 35 of 24, outer: 35 of 11, that is 2 open. Inner +1 on ground; outer -2 in all: 1 and 3 more the other way.
  const auto match = matchIn(twoBands(R"("offset": "6 mm", "width": "5 mm", "repeat": "11 mm")"), 0);
  const materials::MatchOption* all = nullptr;
  for (const auto& option : match.options) {
    if (option.kind == MatchKind::AllClose && all == nullptr) all = &option;
  }
  REQUIRE(all != nullptr);
  CHECK(std::fabs(all->figures.mismatch) < 1e-9);
  REQUIRE(all->others.size() == 1);
  CHECK(std::fabs(all->others[0].after) < 1e-9);
  // 1 at the inner band; the outer, now 3 open, or 2.5 the other way with its centring changed.
  CHECK(all->cost == tenths(35));
}

TEST_CASE("every option tells what becomes of the other bands") {
  const auto match = matchIn(twoBands(R"("offset": "6 mm", "width": "5 mm", "repeat": "11 mm")"), 1);
  CHECK(match.mismatch == Approx(2));
  REQUIRE(!match.options.empty());
  bool throughInner = false, further = false;
  for (const auto& option : match.options) {
    REQUIRE(option.others.size() == 1);
    CHECK(option.others[0].band == 0);
    CHECK(option.others[0].before == Approx(11));
    CHECK(says(option.disturbs, "match.opens-further") == std::fabs(option.others[0].after) > 11.000001);
    further = further || says(option.disturbs, "match.opens-further");
    for (const auto& change : option.changes) throughInner = throughInner || change.band == 0;
  }
  CHECK(throughInner);
  CHECK(further);
}

TEST_CASE("a plain band between is moved along and counts for nothing") {
  const auto match = matchIn(twoBands(R"("offset": "6 mm", "width": "5 mm")"), 0);
  CHECK(match.options.front().others.empty());
  CHECK(match.options.front().cost == tenths(10));
}
