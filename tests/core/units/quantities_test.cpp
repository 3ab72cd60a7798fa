#include <limits>

#include "core/units/angle.h"
#include "core/units/climate.h"
#include "core/units/duration.h"
#include "core/units/span.h"
#include "tests/support/catch.h"

using namespace core::units;

TEST_CASE("common bevels are exact", "[angle]") {
  CHECK(Angle::degrees(45).tangent() == 1.0);
  CHECK(Angle::degrees(30).sine() == 0.5);
  CHECK(Angle::degrees(90).sine() == 1.0);
  CHECK(Angle::degrees(60).tangent() == Approx(1.7320508075688772).epsilon(1e-15));
}

TEST_CASE("durations are read with their unit", "[duration]") {
  CHECK(parseDuration("25 min").value() == Duration::minutes(25));
  CHECK(parseDuration("1.5 h").value() == Duration::minutes(90));
  CHECK(parseDuration("30 s").value() == Duration::milliseconds(30'000));
  CHECK(parseDuration("2 d").value() == Duration::minutes(2880));
  CHECK(parseDuration("4 weeks").value() == Duration::minutes(40'320));
  CHECK(parseDuration("10000 h").value() == Duration::minutes(600'000));
  CHECK(parseDuration("25").error().id == "duration.malformed");
  CHECK(parseDuration("-1 min").error().id == "duration.malformed");
  CHECK(parseDuration("10001 h").error().id == "duration.too-long");
  CHECK(parseDuration("0.0001 s").error().id == "duration.too-fine");
}

TEST_CASE("a room is a room", "[climate]") {
  CHECK(parseTemperature("19 C").value().inCelsius() == 19);
  CHECK(parseTemperature("68 F").value().inCelsius() == Approx(20));
  CHECK(parseTemperature("-40 C").error().id == "temperature.out-of-range");
  CHECK(parseTemperature("19").error().id == "temperature.malformed");
  CHECK(parseTemperature("19 K").error().id == "temperature.malformed");
  CHECK(parseHumidity("58 %").value().inPercent() == 58);
  for (const char* bad : {"0 %", "100 %", "140 %", "-5 %"})
    CHECK(parseHumidity(bad).error().id == "humidity.out-of-range");
  CHECK(parseHumidity("58").error().id == "humidity.malformed");
}

TEST_CASE("a measured room has the limits of a written one", "[climate]") {
  for (const double ends : {-20.0, 60.0, 19.5}) CHECK(temperatureInCelsius(ends).value().inCelsius() == ends);
  for (const double beyond : {-20.01, 60.01, 1e9}) {
    CHECK(temperatureInCelsius(beyond).error().id == "temperature.out-of-range");
  }
  for (const double inside : {0.1, 58.0, 99.9}) CHECK(humidityInPercent(inside).value().inPercent() == inside);
  for (const double beyond : {0.0, 100.0, 140.0, -1.0}) {
    CHECK(humidityInPercent(beyond).error().id == "humidity.out-of-range");
  }
  const double none = std::numeric_limits<double>::quiet_NaN();
  const double endless = std::numeric_limits<double>::infinity();
  for (const double bad : {none, endless, -endless}) {
    CHECK(temperatureInCelsius(bad).error().id == "temperature.malformed");
    CHECK(humidityInPercent(bad).error().id == "humidity.malformed");
  }
}

TEST_CASE("quantiles pass through what was stated and never run backwards", "[span]") {
  const Span span{Duration::minutes(10), Duration::minutes(25), Duration::minutes(60)};
  CHECK(quantile(span, 0.1) == span.early);
  CHECK(quantile(span, 0.5) == span.likely);
  CHECK(quantile(span, 0.9) == span.late);
  Duration last;
  for (double p = 0.02; p <= 0.98; p += 0.01) {
    CHECK(quantile(span, p) >= last);
    last = quantile(span, p);
  }
  CHECK(quantile({Duration(), Duration(), Duration()}, 0.02) == Duration());
}
