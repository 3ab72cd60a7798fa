#include "core/waits/drying.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/waits/psychrometrics.h"

namespace core::waits {

using base::Message;
using units::Humidity;
using units::Temperature;

namespace {

using units::kColdestDrying;
using units::kDampestDrying;
using units::kDriestDrying;
using units::kWarmestDrying;
constexpr double kLeastDeficit = 200;

// Asked the other way round ("not at least"), so that what is no number is refused as well.
std::optional<Message> outside(DryingModel model, const Room& room) {
  const double celsius = room.temperature.inCelsius();
  const double percent = room.humidity.inPercent();
  if (model == DryingModel::None) return std::nullopt;
  if (!(celsius >= kColdestDrying)) return Message("room.too-cold").with("celsius", celsius);
  if (!(celsius <= kWarmestDrying)) return Message("room.too-warm").with("celsius", celsius);
  if (model == DryingModel::Oxidation) return std::nullopt;
  if (!(percent >= kDriestDrying)) return Message("room.too-dry").with("percent", percent);
  if (!(percent <= kDampestDrying) || !(vapourPressureDeficit(room) >= kLeastDeficit)) {
    return Message("room.too-damp").with("percent", percent);
  }
  return std::nullopt;
}

Factor evaporation(const Room& room, const Room& reference) {
  const double atAir = vapourPressureDeficit(reference) / vapourPressureDeficit(room);
  const double atWetBulb = wetBulbDeficit(reference) / wetBulbDeficit(room);
  const auto [least, most] = std::minmax(atAir, atWetBulb);
  return {least, std::clamp(std::sqrt(atAir * atWetBulb), least, most), most};
}

Factor oxidation(const Room& room, const Room& reference) {
  constexpr double kGas = 8.314462618e-3;  // kJ/(mol K)
  const double difference =
      1 / (room.temperature.inCelsius() + 273.15) - 1 / (reference.temperature.inCelsius() + 273.15);
  const auto factor = [&](double activation) { return std::exp(activation / kGas * difference); };
  return {std::min(factor(50), factor(90)), factor(70), std::max(factor(50), factor(90))};
}

double within(double value, double least, double most) { return std::fmin(std::fmax(value, least), most); }

}  // namespace

base::Result<Factor, Message> dryingFactor(DryingModel model, const Room& room, const Room& reference) {
  if (auto refusal = outside(model, room)) return *std::move(refusal);
  if (auto refusal = outside(model, reference)) return *std::move(refusal);
  switch (model) {
    case DryingModel::None: break;
    case DryingModel::Evaporation: return evaporation(room, reference);
    case DryingModel::Oxidation: return oxidation(room, reference);
  }
  return Factor{};
}

Room nearestWithin(DryingModel model, const Room& room) {
  if (!outside(model, room)) return room;
  Room moved = room;
  moved.temperature = Temperature::celsius(within(room.temperature.inCelsius(), kColdestDrying, kWarmestDrying));
  if (model != DryingModel::Evaporation) return moved;
  // A hair drier than the exact share, so that rounding cannot put it outside again.
  const double dampest = 100 * (1 - kLeastDeficit / saturationPressure(moved.temperature)) - 1e-9;
  moved.humidity =
      Humidity::percent(within(room.humidity.inPercent(), kDriestDrying, std::min(kDampestDrying, dampest)));
  return moved;
}

}  // namespace core::waits
