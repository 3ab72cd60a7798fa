#pragma once
// What a maker is told of a running wait: one state of a short table, the times that go with it, and its outline. Every
// screen, text and call that speaks of a wait reads it from here, so that no two of them can say different things.
#include <optional>
#include <string_view>
#include <vector>

#include "core/waits/wait_state.h"

namespace core::waits {

enum class Telling {
  FirstTest,     // drying: the first test lies ahead
  WideTest,      // the same, so uncertain that half and late say little
  TestNow,       // one in five is dry by now
  TestAgain,     // answered "not yet"
  Ready,         // touched and dry
  TackAhead,     // a tack window to come
  TackNow,       // it may be open
  TackOpen,      // found open by touch
  PasteOpen,     // open from the start, as paste is
  LastMinutes,   // open, and may close within minutes
  MayClose,      // one in ten has closed by now
  LikelyClosed,  // past its late closing
  PastIt,        // answered "past it"
  About,         // nobody knows how long the machine was off
  ByTouch,       // nothing is predicted in this room
};
inline constexpr int kTellings = static_cast<int>(Telling::ByTouch) + 1;
// "first-test", by which the words are found.
std::string_view name(Telling telling);

// The times are since the wait began.
struct Told {
  Telling telling = Telling::FirstTest;
  units::Duration passed;             // the present, as the times told are reckoned
  units::Duration early, half, late;  // one in five, half and four in five are true
  struct Closing {
    units::Duration early, half, late;  // one in ten, half and four in five have closed
    friend bool operator==(const Closing&, const Closing&) = default;
  };
  std::optional<Closing> closes;
  std::optional<units::Duration> lookedAt;  // the last touch test
  bool found = false;                       // true by touch, or from the start

  friend bool operator==(const Told&, const Told&) = default;
};

// A span whose late is more than so many times its early is wide.
inline constexpr int kWide = 3;
// Minutes are counted only below this.
inline constexpr units::Duration kLastMinutes = units::Duration::minutes(10);

Told tell(const WaitTerms& terms, const WaitState& state);

// How many of ten such waits are true at a time: nought to one.
struct OutlinePoint {
  units::Duration at;  // since the present
  double height = 0;

  friend bool operator==(const OutlinePoint&, const OutlinePoint&) = default;
};
// The outline from the present until so much later: two tenths at early, half at half, eight tenths at late, level on;
// half where half are closed, two tenths where it is likely gone. Only what was found by touch reaches full height. It
// begins and ends on the ground where the wait does so within that stretch. Empty where nothing stands in it.
std::vector<OutlinePoint> outlineOf(const Told& told, units::Duration until);

}  // namespace core::waits
