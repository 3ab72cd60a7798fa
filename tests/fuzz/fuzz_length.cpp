// A length of any bytes: refused with a message, or exact: written out again as decimal millimetres it reads back as
// the same nanometres, and what is shown of it is within half a step.
#include <cmath>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/check.h"
#include "core/units/length.h"
#include "core/units/length_display.h"

using namespace core::units;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto parsed = parseLength({reinterpret_cast<const char*>(data), size});
  if (!parsed) {
    ENSURE(!parsed.error().id.empty());
    return 0;
  }
  const std::int64_t nanometres = parsed.value().length.inNanometres();
  const std::int64_t magnitude = nanometres < 0 ? -nanometres : nanometres;
  ENSURE(magnitude <= kLongestLength.inNanometres());
  std::string decimals = std::to_string(magnitude % kNanometresPerMillimetre);
  decimals.insert(0, 6 - decimals.size(), '0');
  const std::string again =
      (nanometres < 0 ? "-" : "") + std::to_string(magnitude / kNanometresPerMillimetre) + '.' + decimals + " mm";
  const auto reread = parseLength(again);
  ENSURE(reread);
  ENSURE(reread.value().length == parsed.value().length);
  const double millimetres = parsed.value().length.inMillimetres();
  for (const UnitSystem system : {UnitSystem::Millimetres, UnitSystem::Inches}) {
    const double step = system == UnitSystem::Millimetres ? 0.1 : 25.4 / 32;
    ENSURE(std::fabs(roundedLength(millimetres, system, Rounding::Nearest) - millimetres) <= step / 2 + 1e-6);
    ENSURE(roundedLength(millimetres, system, Rounding::Down) <= millimetres + 1e-6);
    ENSURE(roundedLength(millimetres, system, Rounding::Up) >= millimetres - 1e-6);
    ENSURE(!lengthText(millimetres, system, Rounding::Nearest).empty());
  }
  return 0;
}
