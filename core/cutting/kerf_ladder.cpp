#include "core/cutting/kerf_ladder.h"

#include <map>

#include "core/units/length.h"

namespace core::cutting {
namespace {

constexpr std::int64_t kTenth = units::kNanometresPerMillimetre / 10;
constexpr std::int64_t kWide = 60 * kTenth;
constexpr std::int64_t kSixtyFourth = units::kNanometresPerInch / 64;

// And whether they are common.
std::map<std::int64_t, bool> allRungs() {
  std::map<std::int64_t, bool> rungs;
  for (std::int64_t i = 0; i <= 40; ++i) rungs[i * kTenth] = i % 10 == 0;
  for (const std::int64_t i : {1, 2, 3, 4, 5, 6, 7, 8, 10, 12, 16}) rungs[i * kSixtyFourth] = i == 8;
  rungs[32 * kTenth] = true;  // a usual blade
  for (const std::int64_t tenths : {45, 50, 55, 60, 80, 100}) rungs[tenths * kTenth] = false;
  for (std::int64_t kerf = 150 * kTenth; kerf < 3 * units::kLongestLength.inNanometres(); kerf *= 3)
    rungs[kerf] = false;
  return rungs;
}

}  // namespace

std::vector<Rung> rungsDownTo(std::int64_t kerf, bool isCoarse) {
  static const std::map<std::int64_t, bool> all = allRungs();
  std::vector<Rung> rungs;
  for (auto rung = all.rbegin(); rung != all.rend() && rung->first >= kerf; ++rung) {
    if (rung->second || !isCoarse || rung->first >= kWide) rungs.push_back({rung->first, rung->second});
  }
  return rungs;
}

}  // namespace core::cutting
