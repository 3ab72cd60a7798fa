#include "core/waits/wait_state.h"

#include "tests/core/waits/made_of.h"
#include "tests/support/catch.h"

using namespace core;
using namespace tests;
using units::Duration;
using waits::Phase;
using waits::Verdict;

namespace {

waits::WaitTerms terms(units::Span opens, std::optional<units::Span> closes = {}, int act = 0) {
  waits::WaitTerms made;
  made.opens = opens;
  made.closes = closes;
  made.actionTime = Duration::minutes(act);
  return made;
}

const waits::ClockReading kStart{0, "boot", 0, true};

waits::ClockReading minute(double minutes) { return {0, "boot", static_cast<std::int64_t>(minutes * 60e9), true}; }

waits::WaitState after(const waits::WaitTerms& stated, double elapsed, const waits::RoomTrack& rooms = {},
                       const waits::Learned& learned = {}) {
  return waits::waitState(stated, learned, kStart, rooms, {}, minute(elapsed));
}

}  // namespace

TEST_CASE("a drying wait opens when it is likely and is over at the late end", "[waits]") {
  const auto dries = terms(minutes(10, 25, 60));
  CHECK(after(dries, 24).phase == Phase::Waiting);
  CHECK_FALSE(after(dries, 24).holds());
  CHECK(after(dries, 25).phase == Phase::Open);
  CHECK(after(dries, 25).holds());
  CHECK(after(dries, 60).phase == Phase::Over);
}

TEST_CASE("the touch test decides", "[waits]") {
  auto dries = terms(minutes(10, 25, 60));
  dries.looks = {{Duration::minutes(12), Verdict::Dry}};
  CHECK(after(dries, 12).phase == Phase::Over);
  dries.looks = {{Duration::minutes(40), Verdict::NotYet}};
  const auto later = after(dries, 41);
  CHECK(later.phase == Phase::Waiting);
  // Half of what was left of the span at forty minutes.
  CHECK(later.opens.likely.inMinutes() == Approx(54.4).margin(0.1));
  CHECK(later.opens.early > Duration::minutes(40));
  CHECK(later.opens.late >= later.opens.likely);
}

TEST_CASE("a tack window opens, calls in time for the act, and closes", "[waits]") {
  const auto tacks = terms(minutes(30, 40, 60), minutes(90, 120, 200), 12);
  CHECK(after(tacks, 39).phase == Phase::Waiting);
  CHECK(after(tacks, 40).phase == Phase::Open);
  CHECK(after(tacks, 40).closingAt == Duration::minutes(78));
  CHECK(after(tacks, 78).phase == Phase::Closing);
  CHECK(after(tacks, 78).holds());
  // Half have closed by then; it has likely closed once four in five have.
  CHECK(after(tacks, 120).phase == Phase::Closing);
  CHECK(after(tacks, 120).missedAt == Duration::minutes(180));
  CHECK(after(tacks, 179).holds());
  CHECK(after(tacks, 180).phase == Phase::Closed);
  CHECK_FALSE(after(tacks, 180).holds());
}

TEST_CASE("a verdict of tacky opens early, one of past it closes", "[waits]") {
  auto tacks = terms(minutes(30, 40, 60), minutes(90, 120, 200), 12);
  tacks.looks = {{Duration::minutes(32), Verdict::Tacky}};
  CHECK(after(tacks, 32).holds());
  tacks.looks.push_back({Duration::minutes(50), Verdict::PastIt});
  CHECK(after(tacks, 50).phase == Phase::Closed);
  // Found tacky after the likely closing: the finger counts, and the closing is counted again from there.
  tacks.looks = {{Duration::minutes(125), Verdict::Tacky}};
  CHECK(after(tacks, 126).holds());
  CHECK(after(tacks, 126).closes->likely == Duration::minutes(125 + 80));
  CHECK(after(tacks, 126).missedAt == Duration::minutes(125 + 125));
}

TEST_CASE("a window never closes before it opened", "[waits]") {
  auto tacks = terms(minutes(1, 2, 3), minutes(3, 4, 5), 1);
  tacks.looks = {{Duration::minutes(10), Verdict::NotYet}};
  const auto state = after(tacks, 10);
  CHECK(state.phase == Phase::Waiting);
  CHECK(state.closes->early >= state.opens.early);
  CHECK(state.closes->likely >= state.opens.likely);
}

TEST_CASE("an open time runs from the start and its closing is called", "[waits]") {
  const auto opens = terms(minutes(0, 0, 0), minutes(3, 5, 8), 1);
  CHECK(after(opens, 0).phase == Phase::Open);
  CHECK(after(opens, 2).phase == Phase::Closing);
  CHECK(after(opens, 7).phase == Phase::Closing);
  CHECK(after(opens, 8).phase == Phase::Closed);
}

TEST_CASE("looks are worth while at one in five and it should be so at four in five", "[waits]") {
  const auto tacks = terms(minutes(30, 40, 60), minutes(90, 120, 200), 12);
  CHECK(after(tacks, 0).lookAt == Duration::milliseconds(32'500 * 60));
  CHECK(after(tacks, 0).shouldBeAt == Duration::minutes(55));
}

TEST_CASE("the room stretches a drying wait and says so", "[waits]") {
  auto dries = terms(minutes(20, 40, 80));
  dries.model = waits::DryingModel::Evaporation;
  const auto state = after(dries, 1, {{kStart, room(20, 65), false}});
  CHECK(state.opens.likely.inMinutes() == Approx(66.4).margin(0.1));
  CHECK(state.basis == waits::Basis::Model);
  REQUIRE(state.why.size() == 1);
  CHECK(state.why[0].id == "why.room.cool-damp");
  CHECK(std::get<std::string>(*state.why[0].argument("factor")) == "1.66");
  // The model's own bracket widens the span.
  CHECK(state.opens.early.inMinutes() < 20 * 1.661);
  CHECK(state.opens.late.inMinutes() > 80 * 1.661);
}

TEST_CASE("a room that changes changes the rest of a wait and not the past", "[waits]") {
  auto dries = terms(minutes(40, 40, 40));
  dries.model = waits::DryingModel::Evaporation;
  const waits::RoomTrack both{{kStart, room(23, 50), false}, {minute(20), room(20, 65), false}};
  CHECK(after(dries, 25, both).opens.likely.inMinutes() == Approx(20 + 20 * 1.661).margin(0.05));
  // Before the reading nobody knew.
  CHECK(after(dries, 19, both).opens.likely == Duration::minutes(40));
}

TEST_CASE("the room a job was planned for holds until one is entered", "[waits]") {
  auto dries = terms(minutes(40, 40, 40));
  dries.model = waits::DryingModel::Evaporation;
  dries.planned = room(20, 65);
  CHECK(after(dries, 0).opens.likely.inMinutes() == Approx(66.4).margin(0.1));
  CHECK(after(dries, 0, {{kStart, room(23, 50), true}}).opens.likely == Duration::minutes(40));
}

TEST_CASE("outside the model's limits nothing is predicted and only the finger opens", "[waits]") {
  auto dries = terms(minutes(20, 40, 80));
  dries.model = waits::DryingModel::Evaporation;
  const waits::RoomTrack damp{{kStart, room(20, 92), false}};
  const auto state = after(dries, 5000, damp);
  REQUIRE(state.byTouch);
  CHECK(state.byTouch->id == "room.too-damp");
  CHECK(state.phase == Phase::Waiting);
  dries.looks = {{Duration::minutes(300), Verdict::Dry}};
  CHECK(after(dries, 300, damp).phase == Phase::Over);
  auto tacks = terms(minutes(20, 40, 80), minutes(90, 120, 200), 5);
  tacks.model = waits::DryingModel::Evaporation;
  CHECK(after(tacks, 5000, damp).phase == Phase::Waiting);
}

TEST_CASE("a maker's own times move the opening, and the width apart from it", "[waits]") {
  const auto tacks = terms(minutes(30, 40, 60), minutes(90, 120, 200), 12);
  const waits::Kind size{"size"};
  const waits::Beliefs slow(std::map<waits::Kind, std::vector<waits::Observation>>{
      {size, {{1.4, 1.4, 0}, {1.5, 1.5, 0}, {1.45, 1.45, 0}, {1.4, 1.5, 0}}}});
  const waits::Learned learned{slow.of(size), {}};
  const auto state = after(tacks, 0, {}, learned);
  CHECK(state.opens.likely > Duration::minutes(52));
  CHECK(state.closes->likely - state.opens.likely == Duration::minutes(80));
  CHECK(state.basis == waits::Basis::Learned);
  CHECK(state.why.back().id == "why.learned.slow");
  CHECK(std::get<std::int64_t>(*state.why.back().argument("percent")) == 45);
}

TEST_CASE("the quantiles of a wait keep their order whatever the room, the looks and the times", "[waits]") {
  auto tacks = terms(minutes(5, 20, 30), minutes(21, 60, 90), 7);
  tacks.model = waits::DryingModel::Evaporation;
  for (const double celsius : {-10.0, 9.0, 20.0, 37.0, 50.0}) {
    for (const double percent : {5.0, 25.0, 60.0, 84.0, 97.0}) {
      for (const int look : {0, 1, 15, 40, 400}) {
        tacks.looks.clear();
        if (look > 0) tacks.looks.push_back({Duration::minutes(look), Verdict::NotYet});
        const auto state = after(tacks, look + 1, {{kStart, room(celsius, percent), false}});
        CHECK(state.opens.early <= state.opens.likely);
        CHECK(state.opens.likely <= state.opens.late);
        CHECK(state.closes->early <= state.closes->likely);
        CHECK(state.closes->likely <= state.closes->late);
        CHECK(state.opens.early <= state.closes->early);
        CHECK(*state.closingAt >= state.opens.likely);
        CHECK(state.lookAt <= state.shouldBeAt);
      }
    }
  }
}
