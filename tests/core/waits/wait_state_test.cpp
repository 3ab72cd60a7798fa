#include "core/waits/wait_state.h"

#include "tests/support/catch.h"

using namespace core;
using units::Duration;
using waits::Phase;
using waits::Verdict;

namespace {

units::Span minutes(int early, int likely, int late) {
  return {Duration::minutes(early), Duration::minutes(likely), Duration::minutes(late)};
}

waits::WaitState after(const waits::WaitTerms& terms, int elapsed) {
  const waits::ClockReading start{0, "boot", 0, true};
  const waits::ClockReading now{0, "boot", elapsed * 60'000'000'000LL, true};
  return waits::waitState(terms, start, {}, now);
}

}  // namespace

TEST_CASE("a drying wait opens when it is likely and is over at the late end", "[waits]") {
  const waits::WaitTerms terms{minutes(10, 25, 60), std::nullopt, {}, {}, waits::Basis::Label};
  CHECK(after(terms, 24).phase == Phase::Waiting);
  CHECK_FALSE(after(terms, 24).holds());
  CHECK(after(terms, 25).phase == Phase::Open);
  CHECK(after(terms, 25).holds());
  CHECK(after(terms, 60).phase == Phase::Over);
}

TEST_CASE("the touch test decides", "[waits]") {
  waits::WaitTerms terms{minutes(10, 25, 60), std::nullopt, {}, {}, waits::Basis::Label};
  terms.looks = {{Duration::minutes(12), Verdict::Dry}};
  CHECK(after(terms, 12).phase == Phase::Over);
  terms.looks = {{Duration::minutes(40), Verdict::NotYet}};
  const auto later = after(terms, 41);
  CHECK(later.phase == Phase::Waiting);
  CHECK(later.opens.likely == Duration::minutes(50));
  CHECK(later.opens.early == Duration::minutes(40));
  CHECK(later.opens.late >= later.opens.likely);
}

TEST_CASE("a tack window opens, calls in time for the act, and closes", "[waits]") {
  const waits::WaitTerms terms{
      minutes(30, 40, 60), minutes(90, 120, 200), Duration::minutes(12), {}, waits::Basis::Label};
  CHECK(after(terms, 39).phase == Phase::Waiting);
  CHECK(after(terms, 40).phase == Phase::Open);
  CHECK(after(terms, 40).closingAt == Duration::minutes(78));
  CHECK(after(terms, 78).phase == Phase::Closing);
  CHECK(after(terms, 78).holds());
  CHECK(after(terms, 120).phase == Phase::Closed);
  CHECK_FALSE(after(terms, 120).holds());
}

TEST_CASE("a verdict of tacky opens early, one of past it closes", "[waits]") {
  waits::WaitTerms terms{minutes(30, 40, 60), minutes(90, 120, 200), Duration::minutes(12), {}, waits::Basis::Label};
  terms.looks = {{Duration::minutes(32), Verdict::Tacky}};
  CHECK(after(terms, 32).holds());
  terms.looks.push_back({Duration::minutes(50), Verdict::PastIt});
  CHECK(after(terms, 50).phase == Phase::Closed);
  terms.looks = {{Duration::minutes(125), Verdict::Tacky}};
  CHECK(after(terms, 126).holds());
}

TEST_CASE("a window never closes before it opened", "[waits]") {
  waits::WaitTerms terms{minutes(1, 2, 3), minutes(3, 4, 5), Duration::minutes(1), {}, waits::Basis::Label};
  terms.looks = {{Duration::minutes(10), Verdict::NotYet}};
  const auto state = after(terms, 10);
  CHECK(state.phase == Phase::Waiting);
  CHECK(state.closes->early >= state.opens.early);
  CHECK(state.closes->likely >= state.opens.likely);
}

TEST_CASE("an open time runs from the start and its closing is called", "[waits]") {
  const waits::WaitTerms terms{minutes(0, 0, 0), minutes(3, 5, 8), Duration::minutes(1), {}, waits::Basis::Label};
  CHECK(after(terms, 0).phase == Phase::Open);
  CHECK(after(terms, 2).phase == Phase::Closing);
  CHECK(after(terms, 5).phase == Phase::Closed);
}
