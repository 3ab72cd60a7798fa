#include "core/shop/settings.h"

#include <algorithm>

#include "core/record/happening.h"
#include "tests/support/catch.h"

using core::base::Value;
using core::record::Event;
using core::shop::foldSettings;
using core::shop::Settings;

namespace {

Event chosen(std::int64_t at, const std::string& stream, const char* what, const char* value) {
  Event event;
  event.eventId = std::to_string(at);
  event.deviceId = "tablet";
  event.stream = stream;
  event.type = core::record::SettingChosen::kType;
  event.hlc = {at, 0};
  event.deviceSequence = at;
  event.payload = Value::object().set("what", Value::text(what)).set("value", Value::text(value));
  return event;
}

std::string refusal(const char* what, const char* value) {
  const auto decided = core::shop::decideSetting({what, value});
  return decided ? "" : core::base::dump(decided.error());
}

}  // namespace

TEST_CASE("the newest choice of each kind holds, whatever order the events come in") {
  std::vector<Event> events = {chosen(1, "bench/a", "units", "in"),       chosen(2, "bench/a", "units", "mm"),
                               chosen(3, "bench/a", "distance", "1.2 m"), chosen(4, "bench/a", "distance", "950 mm"),
                               chosen(5, "bench/b", "lamp", "yes"),       chosen(6, "bench/a", "introduced", "yes")};
  Settings expected;
  expected.distance = core::units::Length::wholeMillimetres(950);
  expected.introduced = true;
  do {
    REQUIRE(foldSettings(events, "bench/a") == expected);
  } while (std::next_permutation(events.begin(), events.end(),
                                 [](const Event& a, const Event& b) { return a.deviceSequence < b.deviceSequence; }));
  CHECK(foldSettings(events, "bench/b").lamp);
  CHECK(foldSettings(events, "bench/c") == Settings());
}

TEST_CASE("windows are marked from the corner until the maker says that the borders are set, and again from then on") {
  std::vector<Event> events;
  CHECK(foldSettings(events, "bench/a").marking == core::units::Marking::Marks);
  events.push_back(chosen(1, "bench/a", "marking", "borders"));
  CHECK(foldSettings(events, "bench/a").marking == core::units::Marking::Borders);
  CHECK(foldSettings(events, "bench/b").marking == core::units::Marking::Marks);
  events.push_back(chosen(2, "bench/a", "marking", "by eye"));
  CHECK(foldSettings(events, "bench/a").marking == core::units::Marking::Borders);
  events.push_back(chosen(3, "bench/a", "marking", "marks"));
  CHECK(foldSettings(events, "bench/a").marking == core::units::Marking::Marks);
  CHECK(refusal("marking", "borders") == "");
  CHECK(refusal("marking", "by eye").find("settings.cannot-be") != std::string::npos);
}

TEST_CASE("what cannot be set is refused, and left out where it stands in a record") {
  CHECK(refusal("distance", "300 mm") == "");
  CHECK(refusal("distance", "2 m") != "");
  CHECK(refusal("distance", "299 mm") != "");
  CHECK(refusal("distance", "afar") != "");
  CHECK(refusal("units", "ell").find("settings.cannot-be") != std::string::npos);
  CHECK(refusal("colour", "red").find("settings.no-such") != std::string::npos);
  const std::vector<Event> events = {chosen(1, "bench/a", "distance", "600 mm"), chosen(2, "bench/a", "distance", "-1"),
                                     chosen(3, "bench/a", "units", ""), chosen(4, "bench/a", "no", "yes")};
  Settings expected;
  expected.distance = core::units::Length::wholeMillimetres(600);
  CHECK(foldSettings(events, "bench/a") == expected);
}
