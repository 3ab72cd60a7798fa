#include "core/units/money.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/base/check.h"
#include "core/base/text.h"

namespace core::units {
namespace {

constexpr std::int64_t kMost = std::numeric_limits<std::int64_t>::max();
constexpr std::size_t kDecimals = 4;
constexpr std::size_t kMostDigits = 9;  // before the point: as many as kDearest has

// Both zero or more.
std::int64_t sum(std::int64_t a, std::int64_t b) { return a > kMost - b ? kMost : a + b; }
std::int64_t product(std::int64_t a, std::int64_t b) { return b != 0 && a > kMost / b ? kMost : a * b; }

std::int64_t numberOf(std::string_view digits) {
  std::int64_t number = 0;
  for (const char c : digits) number = number * 10 + (c - '0');
  return number;
}

bool isCurrency(std::string_view text) {
  return text.size() == 3 && std::all_of(text.begin(), text.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
}

std::string padded(std::int64_t number, std::size_t digits) {
  const std::string text = std::to_string(number);
  return std::string(digits - std::min(digits, text.size()), '0') + text;
}

}  // namespace

Money operator+(Money a, Money b) {
  ENSURE(a.m_parts >= 0 && b.m_parts >= 0);
  return Money(sum(a.m_parts, b.m_parts));
}

Money Money::times(std::int64_t count, std::int64_t of) const {
  ENSURE(m_parts >= 0 && count >= 0 && of > 0 && of <= 1'000'000'000);
  // Divided before it is multiplied, with what is left over by each division kept, so that nothing grows beyond the
  // result but by a factor of `of`.
  const std::int64_t wholes = count / of;
  const std::int64_t part = count % of;
  const std::int64_t quotient = m_parts / of;
  const std::int64_t rest = m_parts % of;
  const std::int64_t last = (rest * part + of / 2) / of;
  return Money(sum(sum(product(m_parts, wholes), product(quotient, part)), last));
}

std::optional<Money> parseMoney(std::string_view text) {
  const std::size_t point = text.find('.');
  const std::string_view whole = text.substr(0, point);
  const std::string_view decimals = point == std::string_view::npos ? "0" : text.substr(point + 1);
  if (!base::isDigits(whole) || !base::isDigits(decimals) || decimals.size() > kDecimals ||
      whole.size() > kMostDigits) {
    return std::nullopt;
  }
  std::string parts(decimals);
  parts.resize(kDecimals, '0');
  const Money money = Money::parts(numberOf(whole) * kPartsOfMoney + numberOf(parts));
  if (money > kDearest) return std::nullopt;
  return money;
}

std::optional<Money> moneyOf(double number) {
  if (!(number >= 0) || number > kDearest.approximately()) return std::nullopt;
  const Money money = Money::parts(std::llround(number * static_cast<double>(kPartsOfMoney)));
  if (money.approximately() != number) return std::nullopt;
  return money;
}

std::string exactText(Money money) {
  std::string text = std::to_string(money.inParts() / kPartsOfMoney);
  std::string decimals = padded(money.inParts() % kPartsOfMoney, kDecimals);
  while (!decimals.empty() && decimals.back() == '0') decimals.pop_back();
  return decimals.empty() ? text : text + '.' + decimals;
}

std::string shownText(Money money) {
  ENSURE(money.inParts() >= 0);
  constexpr std::int64_t kHundredth = kPartsOfMoney / 100;
  const std::int64_t hundredths =
      money.inParts() / kHundredth + (money.inParts() % kHundredth >= kHundredth / 2 ? 1 : 0);
  return std::to_string(hundredths / 100) + '.' + padded(hundredths % 100, 2);
}

std::optional<Price> parsePrice(std::string_view text, std::string_view measure) {
  if (!measure.empty()) {
    const std::string suffix = '/' + std::string(measure);
    if (!base::endsWith(text, suffix)) return std::nullopt;
    text.remove_suffix(suffix.size());
  }
  Price price;
  if (const std::size_t space = text.find(' '); space != std::string_view::npos) {
    price.currency = text.substr(space + 1);
    if (!isCurrency(price.currency)) return std::nullopt;
    text = text.substr(0, space);
  }
  const auto money = parseMoney(text);
  if (!money) return std::nullopt;
  price.money = *money;
  return price;
}

}  // namespace core::units
