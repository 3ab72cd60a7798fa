#pragma once
// Spans and rooms by their numbers.
#include "core/units/climate.h"
#include "core/units/duration.h"
#include "core/units/span.h"

namespace tests {

inline core::units::Span minutes(int early, int likely, int late) {
  using core::units::Duration;
  return {Duration::minutes(early), Duration::minutes(likely), Duration::minutes(late)};
}

inline core::units::Room room(double celsius, double percent) {
  return {core::units::Temperature::celsius(celsius), core::units::Humidity::percent(percent)};
}

}  // namespace tests
