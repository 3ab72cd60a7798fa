#pragma once
// A length as a whole number of nanometres (int64). Nanometres hold every decimal millimetre a maker writes
// and every inch fraction down to 1/64 exactly (1 in = 25.4 mm exactly, the 1959 yard and pound agreement;
// 25 400 000 nm / 64 = 396 875 nm). 1/128 in is not exact and is refused.
//
// Sums and differences are exact. Products of two lengths and anything derived by angles are computed in
// double millimetres by whoever needs them; this type has no multiplication by another length on purpose.
#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/message.h"
#include "core/base/result.h"

namespace core::units {

inline constexpr std::int64_t kNanometresPerMillimetre = 1'000'000;
inline constexpr std::int64_t kNanometresPerInch = 25'400'000;

class Length {
 public:
  constexpr Length() = default;
  static constexpr Length nanometres(std::int64_t count) { return Length(count); }
  static constexpr Length wholeMillimetres(std::int64_t count) { return Length(count * kNanometresPerMillimetre); }

  constexpr std::int64_t inNanometres() const { return m_nanometres; }
  // The nearest double: off by at most half a unit in the last place.
  constexpr double inMillimetres() const {
    return static_cast<double>(m_nanometres) / static_cast<double>(kNanometresPerMillimetre);
  }

  friend constexpr Length operator+(Length a, Length b) { return Length(a.m_nanometres + b.m_nanometres); }
  friend constexpr Length operator-(Length a, Length b) { return Length(a.m_nanometres - b.m_nanometres); }
  friend constexpr Length operator-(Length a) { return Length(-a.m_nanometres); }
  friend constexpr Length operator*(std::int64_t count, Length a) { return Length(count * a.m_nanometres); }
  friend constexpr auto operator<=>(Length, Length) = default;

 private:
  constexpr explicit Length(std::int64_t count) : m_nanometres(count) {}
  std::int64_t m_nanometres = 0;
};

inline constexpr Length kLongestLength = Length::wholeMillimetres(10'000);

enum class LengthUnit { Millimetre, Centimetre, Inch };

struct ParsedLength {
  Length length;
  LengthUnit unit = LengthUnit::Millimetre;
};

// Reads "310 mm", "31.5 cm", "12 3/8 in", "12-3/8 in", "12.375 in", "3/32 in", each with an optional leading minus. One
// space before the unit, a point as decimal sign, fraction denominators 2 to 64 in powers of two and for inches only.
// The result is exact: a length that is not whole in nanometres is refused, as is anything beyond 10 m. Returns the
// length, or the message with the reason and {text}; length.no-space has {meant}, length.other-unit {unit} beside it.
base::Result<ParsedLength, base::Message> parseLength(std::string_view text);

}  // namespace core::units
