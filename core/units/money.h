#pragma once
// Money of one currency as whole ten-thousandths (int64), never as a floating number: sums and counts are exact,
// divisions are rounded once, half away from zero, to a ten-thousandth. An amount that would not fit becomes the
// greatest one there is (922 million million) instead of wrapping round.
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace core::units {

inline constexpr std::int64_t kPartsOfMoney = 10'000;

class Money {
 public:
  constexpr Money() = default;
  static constexpr Money parts(std::int64_t tenThousandths) { return Money(tenThousandths); }

  constexpr std::int64_t inParts() const { return m_parts; }
  // The nearest double, for comparing alone.
  constexpr double approximately() const { return static_cast<double>(m_parts) / static_cast<double>(kPartsOfMoney); }
  // This times count / of. Requires 0 <= count, 0 < of <= 1 000 000 000.
  Money times(std::int64_t count, std::int64_t of = 1) const;

  friend Money operator+(Money a, Money b);
  friend constexpr auto operator<=>(Money, Money) = default;

 private:
  constexpr explicit Money(std::int64_t tenThousandths) : m_parts(tenThousandths) {}
  std::int64_t m_parts = 0;
};

inline constexpr Money kDearest = Money::parts(100'000'000 * kPartsOfMoney);  // the most a single price may be

// Reads a plain decimal from 0 to kDearest with at most four decimals, such as "18.50" or "0.045", and nothing else.
std::optional<Money> parseMoney(std::string_view text);
// The money whose decimal text reads as this number; nothing where that has more than four decimals or is out of range.
std::optional<Money> moneyOf(double number);
// Exact, without trailing zeros: "18.5".
std::string exactText(Money money);
// Returns two decimals, halves rounded upwards: "18.50". Requires zero or more.
std::string shownText(Money money);

// A price as a maker writes it: "18.50", "18.50 GBP"; for a price of some measure "24/h", "24 GBP/h".
struct Price {
  Money money;
  std::string currency;  // three capital letters (ISO 4217), or "" where none is named
};
// `measure` is "" or the text that must follow the slash. Returns nothing for any other text.
std::optional<Price> parsePrice(std::string_view text, std::string_view measure);

}  // namespace core::units
