#include "core/units/climate.h"

#include <cmath>

#include "core/base/text.h"

namespace core::units {

using base::Message;

base::Result<Temperature, Message> parseTemperature(std::string_view text) {
  const bool fahrenheit = base::endsWith(text, " F");
  if (!fahrenheit && !base::endsWith(text, " C")) return Message("temperature.malformed");
  const auto number = base::parseDecimal(text.substr(0, text.size() - 2));
  if (!number) return Message("temperature.malformed");
  return temperatureInCelsius(fahrenheit ? (*number - 32) * 5 / 9 : *number);
}

base::Result<Temperature, Message> temperatureInCelsius(double celsius) {
  if (!std::isfinite(celsius)) return Message("temperature.malformed");
  if (celsius < -20 || celsius > 60) return Message("temperature.out-of-range").with("celsius", celsius);
  return Temperature::celsius(celsius);
}

base::Result<Humidity, Message> parseHumidity(std::string_view text) {
  if (!base::endsWith(text, " %")) return Message("humidity.malformed");
  const auto number = base::parseDecimal(text.substr(0, text.size() - 2));
  if (!number) return Message("humidity.malformed");
  return humidityInPercent(*number);
}

base::Result<Humidity, Message> humidityInPercent(double percent) {
  if (!std::isfinite(percent)) return Message("humidity.malformed");
  if (percent <= 0 || percent >= 100) return Message("humidity.out-of-range").with("percent", percent);
  return Humidity::percent(percent);
}

}  // namespace core::units
