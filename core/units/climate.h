#pragma once
// Temperature and relative humidity of the room, as entered.
#include <string_view>

#include "core/base/message.h"
#include "core/base/result.h"

namespace core::units {

class Temperature {
 public:
  constexpr Temperature() = default;
  static constexpr Temperature celsius(double value) { return Temperature(value); }
  constexpr double inCelsius() const { return m_celsius; }
  friend constexpr bool operator==(Temperature, Temperature) = default;

 private:
  constexpr explicit Temperature(double value) : m_celsius(value) {}
  double m_celsius = 23;
};

class Humidity {
 public:
  constexpr Humidity() = default;
  static constexpr Humidity percent(double value) { return Humidity(value); }
  constexpr double inPercent() const { return m_percent; }
  friend constexpr bool operator==(Humidity, Humidity) = default;

 private:
  constexpr explicit Humidity(double value) : m_percent(value) {}
  double m_percent = 50;
};

// The climates in which drying can be predicted; outside of them a time would be a guess. Degrees Celsius, per cent.
// Source: paint makers' notes put film forming below 8 to 10 degrees and trouble above 35 to 38; the humidities are our
// judgement.
inline constexpr double kColdestDrying = 8;
inline constexpr double kWarmestDrying = 38;
inline constexpr double kDriestDrying = 20;
inline constexpr double kDampestDrying = 85;

struct Room {
  Temperature temperature;
  Humidity humidity;
  friend constexpr bool operator==(const Room&, const Room&) = default;
};

// "19 C", "66 F", "-2.5 C". A workshop is between -20 and 60 degrees Celsius; beyond that the entry is a
// mistake and refused.
base::Result<Temperature, base::Message> parseTemperature(std::string_view text);
// "58 %". A room is above 0 and below 100; a hygrometer that shows either end is not measuring.
base::Result<Humidity, base::Message> parseHumidity(std::string_view text);

// Applies the same limits to a number that is measured, not written. A number that is not finite is malformed.
base::Result<Temperature, base::Message> temperatureInCelsius(double celsius);
base::Result<Humidity, base::Message> humidityInPercent(double percent);

}  // namespace core::units
