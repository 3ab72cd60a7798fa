#pragma once
// Spans of time as whole milliseconds (int64), and the text form techniques use: "30 s", "25 min", "1.5 h",
// "2 d", "4 weeks".
#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/message.h"
#include "core/base/result.h"

namespace core::units {

class Duration {
 public:
  constexpr Duration() = default;
  static constexpr Duration milliseconds(std::int64_t count) { return Duration(count); }
  static constexpr Duration minutes(std::int64_t count) { return Duration(count * 60'000); }
  constexpr std::int64_t inMilliseconds() const { return m_milliseconds; }
  constexpr double inMinutes() const { return static_cast<double>(m_milliseconds) / 60'000.0; }

  friend constexpr Duration operator+(Duration a, Duration b) { return Duration(a.m_milliseconds + b.m_milliseconds); }
  friend constexpr Duration operator-(Duration a, Duration b) { return Duration(a.m_milliseconds - b.m_milliseconds); }
  friend constexpr auto operator<=>(Duration, Duration) = default;

 private:
  constexpr explicit Duration(std::int64_t count) : m_milliseconds(count) {}
  std::int64_t m_milliseconds = 0;
};

// Zero to 10 000 hours, one space before the unit (s, min, h, d, week, weeks). Exact to the millisecond;
// what is finer is refused.
base::Result<Duration, base::Message> parseDuration(std::string_view text);

}  // namespace core::units
