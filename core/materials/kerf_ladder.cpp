#include "core/materials/kerf_ladder.h"

#include <algorithm>
#include <map>

#include "core/units/length.h"

namespace core::materials {
namespace {

constexpr std::int64_t kTenth = units::kNanometresPerMillimetre / 10;
constexpr std::int64_t kSixtyFourth = units::kNanometresPerInch / 64;

// Whether the rung is on the coarse ladder too; those are searched thoroughly.
std::map<std::int64_t, bool> allRungs() {
  std::map<std::int64_t, bool> rungs;
  for (std::int64_t i = 0; i <= 40; ++i) rungs[i * kTenth] = i % 10 == 0;
  for (std::int64_t i = 1; i <= 16; ++i) rungs[i * kSixtyFourth] = i == 8;
  for (std::int64_t i = 9; i <= 20; ++i) rungs[i * 5 * kTenth] = i == 12 || i == 20;
  // The saw benches' usual 3.2 mm.
  rungs[32 * kTenth] = true;
  for (std::int64_t kerf = 140 * kTenth; kerf < 2 * units::kLongestLength.inNanometres(); kerf += kerf / 2) {
    rungs[kerf] = true;
  }
  return rungs;
}

}  // namespace

std::vector<Rung> rungsFrom(std::int64_t kerf, bool isCoarse) {
  static const std::map<std::int64_t, bool> all = allRungs();
  std::vector<Rung> rungs;
  for (auto rung = all.lower_bound(kerf); rung != all.end(); ++rung) {
    if (rung->second || !isCoarse) rungs.push_back({rung->first, rung->second});
  }
  return rungs;
}

}  // namespace core::materials
