#include "core/waits/telling.h"

#include <set>

#include "tests/core/waits/made_of.h"
#include "tests/support/catch.h"

using namespace core;
using namespace tests;
using units::Duration;
using waits::Telling;
using waits::Told;
using waits::Verdict;

namespace {

struct Stated {
  waits::WaitTerms terms;
  Told at(double minutes) const {
    const waits::ClockReading start{0, "boot", 0, true};
    const waits::ClockReading now{0, "boot", static_cast<std::int64_t>(minutes * 60e9), true};
    return waits::tell(terms, waits::waitState(terms, {}, start, {}, {}, now));
  }
  Telling tellingAt(double minutes) const { return at(minutes).telling; }
  Stated& looked(int minute, Verdict verdict) {
    terms.looks.push_back({Duration::minutes(minute), verdict});
    return *this;
  }
};

Stated stated(units::Span opens, std::optional<units::Span> closes = {}) {
  Stated made;
  made.terms.opens = opens;
  made.terms.closes = closes;
  return made;
}

// Minutes and hundredths, which are exact.
std::vector<std::pair<double, double>> outline(const Told& told, int until) {
  std::vector<std::pair<double, double>> points;
  for (const auto& point : waits::outlineOf(told, Duration::minutes(until)))
    points.emplace_back(std::round(point.at.inMinutes() * 10) / 10, std::round(point.height * 100) / 100);
  return points;
}
using Outline = std::vector<std::pair<double, double>>;

// One in five by 20, half by 40, four in five by 70.
Stated dries() {
  return stated({Duration::milliseconds(13'333 * 60 + 20), Duration::minutes(40), Duration::minutes(80)});
}

}  // namespace

TEST_CASE("a drying wait is told by its first test, its touch and what was found", "[waits]") {
  Stated wait = dries();
  CHECK(wait.tellingAt(0) == Telling::WideTest);
  CHECK(stated(minutes(20, 25, 40)).tellingAt(0) == Telling::FirstTest);
  CHECK(wait.tellingAt(19.9) == Telling::WideTest);
  CHECK(wait.tellingAt(20.1) == Telling::TestNow);
  // However long it is left, an estimate never says that it is dry.
  CHECK(wait.tellingAt(2000) == Telling::TestNow);
  wait.looked(22, Verdict::NotYet);
  CHECK(wait.tellingAt(22) == Telling::TestAgain);
  CHECK(wait.at(22).lookedAt == Duration::minutes(22));
  CHECK(wait.at(22).early > Duration::minutes(22));
  wait.looked(50, Verdict::Dry);
  CHECK(wait.tellingAt(51) == Telling::Ready);
}

TEST_CASE("late over three times early is wide, and not before", "[waits]") {
  CHECK(stated(minutes(30, 30, 30)).tellingAt(0) == Telling::FirstTest);
  CHECK(stated(minutes(20, 30, 80)).at(0).late == Duration::milliseconds(67'500 * 60));
  CHECK(stated(minutes(20, 30, 80)).tellingAt(0) == Telling::FirstTest);
  CHECK(stated(minutes(20, 30, 84)).tellingAt(0) == Telling::WideTest);
}

TEST_CASE("a tack window is told from its coming to its end", "[waits]") {
  Stated tacks = stated(minutes(30, 40, 60), minutes(90, 120, 200));
  CHECK(tacks.tellingAt(0) == Telling::TackAhead);
  CHECK(tacks.tellingAt(33) == Telling::TackNow);
  CHECK(tacks.tellingAt(90) == Telling::MayClose);
  CHECK(tacks.tellingAt(179) == Telling::MayClose);
  CHECK(tacks.tellingAt(180) == Telling::LikelyClosed);
  CHECK(tacks.at(0).closes->early == Duration::minutes(90));
  CHECK(tacks.at(0).closes->late == Duration::minutes(180));
  tacks.looked(33, Verdict::NotYet);
  CHECK(tacks.tellingAt(33) == Telling::TestAgain);
  tacks.looked(45, Verdict::Tacky);
  CHECK(tacks.tellingAt(46) == Telling::TackOpen);
  tacks.looked(60, Verdict::PastIt);
  CHECK(tacks.tellingAt(61) == Telling::PastIt);
}

TEST_CASE("paste is open from the start, and minutes are counted only under ten", "[waits]") {
  const Stated paste = stated(minutes(0, 0, 0), minutes(15, 20, 28));
  CHECK(paste.tellingAt(0) == Telling::PasteOpen);
  CHECK(paste.tellingAt(5) == Telling::PasteOpen);
  CHECK(paste.tellingAt(5.1) == Telling::LastMinutes);
  CHECK(paste.tellingAt(14) == Telling::LastMinutes);
  // Less than a minute is no number of minutes.
  CHECK(paste.tellingAt(14.1) == Telling::MayClose);
  CHECK(paste.tellingAt(26) == Telling::LikelyClosed);
}

TEST_CASE("where it is not known how long the machine was off, that is told, and no phase", "[waits]") {
  const waits::WaitTerms terms = stated(minutes(60, 90, 120)).terms;
  const waits::ClockReading start{1'800'000'000'000, "one", 0, false};
  waits::ClockLog log;
  log.heartbeats = {start, {1'800'000'000'000, "two", 0, false}};
  log.opened = start;
  const waits::ClockReading now{1'800'000'000'000 + 600'000, "two", 600'000'000'000, false};
  const auto state = waits::waitState(terms, {}, start, {}, log, now);
  REQUIRE_FALSE(state.elapsed.known());
  const Told told = waits::tell(terms, state);
  CHECK(told.passed == state.elapsed.most);
  CHECK(told.telling == (state.elapsed.most < state.lookAt ? Telling::About : Telling::TestNow));
}

TEST_CASE("an outline stands two, five and eight tenths high, goes on level, and is full only by touch", "[waits]") {
  Stated wait = dries();
  CHECK(outline(wait.at(0), 180) == Outline{{20, 0}, {20, 0.2}, {40, 0.5}, {70, 0.8}, {180, 0.8}});
  // Begun: cut off at the present.
  CHECK(outline(wait.at(30), 60) == Outline{{0, 0.35}, {10, 0.5}, {40, 0.8}, {60, 0.8}});
  CHECK(outline(wait.at(0), 15).empty());
  wait.looked(30, Verdict::Dry);
  CHECK(outline(wait.at(31), 60) == Outline{{0, 1}, {60, 1}});
}

TEST_CASE("a window's outline falls to half where half are closed and to two tenths where it is likely gone",
          "[waits]") {
  Stated tacks = stated(minutes(30, 40, 60), minutes(90, 120, 200));
  CHECK(outline(tacks.at(0), 240) ==
        Outline{{32.5, 0}, {32.5, 0.2}, {40, 0.5}, {55, 0.8}, {90, 0.8}, {102, 0.8}, {120, 0.5}, {180, 0.2}, {180, 0}});
  tacks.looked(40, Verdict::Tacky);
  // Counted again from the touch: an hour early, eighty minutes half.
  CHECK(outline(tacks.at(40), 80) == Outline{{0, 1}, {60, 1}, {80, 0.5}});
  tacks.looked(60, Verdict::PastIt);
  CHECK(outline(tacks.at(61), 240).empty());
}

TEST_CASE("every telling has a name of its own, by which its words are found", "[waits]") {
  std::set<std::string_view> names;
  for (int i = 0; i < waits::kTellings; ++i) names.insert(waits::name(static_cast<Telling>(i)));
  CHECK(names.size() == static_cast<std::size_t>(waits::kTellings));
  CHECK_FALSE(names.contains(""));
}
