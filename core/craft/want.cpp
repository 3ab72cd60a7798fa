#include "core/craft/want.h"

namespace core::craft {

const std::vector<MeasureTraits>& measures() {
  static const std::vector<MeasureTraits> kMeasures = {
      {Measure::Lap, "lap", Quantity::Length, "/mount/window/overlap"},
      {Measure::CornerLap, "cornerLap", Quantity::Length, "/mount/window/overlap"},
      {Measure::Air, "air", Quantity::Length, "/package/spacer"},
      {Measure::Artwork, "artwork", Quantity::Length, "/artwork/thickness"},
      {Measure::Support, "support", Quantity::Length, "/package/support"},
      {Measure::Glazing, "glazing", Quantity::Length, "/package/glazing"},
      {Measure::BackMount, "backMount", Quantity::Length, "/package/backMount"},
      {Measure::Backing, "backing", Quantity::Length, "/package/backing"},
      {Measure::Play, "play", Quantity::Length, "/mount/rebate/allowanceTotal"},
      {Measure::Temperature, "temperature", Quantity::Temperature, "/room/temperature"},
      {Measure::Humidity, "humidity", Quantity::Humidity, "/room/humidity"},
  };
  return kMeasures;
}

const MeasureTraits& traitsOf(Measure measure) { return measures()[static_cast<std::size_t>(measure)]; }

}  // namespace core::craft
