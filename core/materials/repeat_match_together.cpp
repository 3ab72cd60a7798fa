// Several bands at once. A band's corners see the sum of what its own grounds and those inside it gained; so what each
// band shall have gained in all is chosen first, from the few sums that close it or keep it, with the least change
// from band to band, and each band's own grounds take the difference.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <map>

#include "core/materials/repeat_match_internal.h"

namespace core::materials::detail {
namespace {

// What a band may have gained in all. `free`: anything.
struct Choices {
  bool free = true;
  std::vector<Closing> sums;
};

Nm nmOf(double mm) { return static_cast<Nm>(std::llround(mm * static_cast<double>(units::kNanometresPerMillimetre))); }

void add(Choices& choices, const Closing& sum) {
  const auto same = [&](const Closing& other) { return other.by == sum.by && other.flip == sum.flip; };
  if (std::none_of(choices.sums.begin(), choices.sums.end(), same)) choices.sums.push_back(sum);
}

// The two sums either way from each of the anchors at which the corners close: -mismatch + n p, and half a repeat more
// with another centring.
Choices closingAt(double mismatch, double repeat, const std::vector<Nm>& anchors, bool flips) {
  Choices choices{false, {}};
  for (const Nm anchor : anchors) {
    const double at = static_cast<double>(anchor) / static_cast<double>(units::kNanometresPerMillimetre);
    for (const bool flip : {false, true}) {
      if (flip && !flips) continue;
      const double first = -mismatch + (flip ? repeat / 2 : 0);
      const double below = first + std::floor((at - first) / repeat) * repeat;
      for (const double sum : {below - repeat, below, below + repeat, below + 2 * repeat}) {
        add(choices, {nmOf(sum), flip});
      }
    }
  }
  return choices;
}

// A band that meets may gain what leaves it no more open than it is.
Choices keepingAt(double mismatch, double repeat, const std::vector<Nm>& anchors) {
  Choices choices = closingAt(mismatch, repeat, anchors, false);
  const std::vector<Closing> closed = choices.sums;
  const Nm off = std::abs(nmOf(mismatch));
  for (const Closing& sum : closed) {
    add(choices, {sum.by - off, false});
    add(choices, {sum.by + off, false});
    for (const Nm anchor : anchors) {
      if (std::abs(anchor - sum.by) < off) add(choices, {anchor, false});
    }
  }
  return choices;
}

struct Plan {
  std::vector<Closing> sums;  // one for each band so far
  Nm cost = 0;
  int flips = 0;
};

// Of the plans that end in the same sum what comes after costs the same, so the best few of each are gone on with: the
// cheapest plan over any number of bands is among them.
std::vector<Plan> bestOfEachSum(std::vector<Plan> plans) {
  constexpr int kOfEach = 4;
  constexpr std::size_t kInAll = 256;
  std::stable_sort(plans.begin(), plans.end(),
                   [](const Plan& a, const Plan& b) { return a.cost != b.cost ? a.cost < b.cost : a.flips < b.flips; });
  std::map<Nm, int> met;
  std::erase_if(plans, [&](const Plan& plan) { return ++met[plan.sums.back().by] > kOfEach; });
  if (plans.size() > kInAll) plans.resize(kInAll);
  return plans;
}

// The plans of least change from band to band, best first.
std::vector<Plan> plans(const std::vector<Choices>& bands) {
  constexpr std::size_t kTried = 32;
  std::vector<Plan> all = {Plan{}};
  for (const Choices& choices : bands) {
    std::vector<Plan> longer;
    for (const Plan& plan : all) {
      const Nm before = plan.sums.empty() ? 0 : plan.sums.back().by;
      for (const Closing& sum : choices.free ? std::vector<Closing>{{before, false}} : choices.sums) {
        longer.push_back(plan);
        longer.back().sums.push_back(sum);
        longer.back().cost += std::abs(sum.by - before);
        longer.back().flips += sum.flip ? 1 : 0;
      }
    }
    all = bestOfEachSum(std::move(longer));
  }
  if (all.size() > kTried) all.resize(kTried);
  return all;
}

// The share of a band's gain that its sides get, in quarters; top and bottom get the rest. Any share costs the same.
using Quarters = Nm;
constexpr std::array<Quarters, 3> kManners = {4, 0, 2};
constexpr std::array<Quarters, 5> kFineManners = {4, 0, 2, 1, 3};

void gain(BandChange& band, Nm by, Quarters quarters) {
  const Nm sides = quarters == 4 ? by : by / 4 * quarters + (quarters == 2 ? by % 4 / 2 : 0);
  band.sides += sides;
  band.topBottom -= by - sides;
}

// Every band that has to gain in each of the manners; in one manner for all where that would be many. Returns whether
// there is room for one.
template <std::size_t kCount>
bool inEveryManner(const Trial& trial, const std::vector<Closing>& sums, MatchKind kind,
                   const std::array<Quarters, kCount>& manners, std::vector<Candidate>& found) {
  const design::Job& job = trial.job();
  Change start;
  start.bands.resize(job.bands.size());
  std::vector<std::pair<std::size_t, Nm>> gains;
  Nm before = 0;
  for (std::size_t i = 0; i < sums.size(); ++i) {
    if (sums[i].flip) flipCentring(job.bands[i], start.bands[i]);
    if (sums[i].by != before) gains.emplace_back(i, sums[i].by - before);
    before = sums[i].by;
  }
  bool isRoom = false;
  constexpr std::size_t kMany = 4;
  const bool many = gains.size() > kMany;
  std::size_t ways = 1;
  for (std::size_t i = 0; i < (many ? 1 : gains.size()); ++i) ways *= kCount;
  for (std::size_t way = 0; way < ways; ++way) {
    Change change = start;
    std::size_t rest = way;
    for (const auto& [band, by] : gains) {
      gain(change.bands[band], by, manners[rest % kCount]);
      if (!many) rest /= kCount;
    }
    if (!trial.allows(change, false)) continue;
    found.push_back({kind, change});
    isRoom = true;
  }
  return isRoom;
}

// Of more bands the finer manners would be too many.
constexpr std::size_t kFewBands = 3;

void tryAll(const Trial& trial, const std::vector<Choices>& bands, MatchKind kind, std::vector<Candidate>& found) {
  // Later plans cost more, but may open less elsewhere or bring no notice.
  constexpr int kEnough = 6;
  int withRoom = 0;
  const std::vector<Plan> all = plans(bands);
  for (std::size_t i = 0; i < all.size() && withRoom < kEnough; ++i) {
    if (inEveryManner(trial, all[i].sums, kind, kManners, found)) {
      ++withRoom;
    } else if (bands.size() <= kFewBands) {
      withRoom += inEveryManner(trial, all[i].sums, kind, kFineManners, found);
    }
  }
}

}  // namespace

void collectTogether(const Trial& trial, std::size_t band, std::vector<Candidate>& found) {
  const design::Job& job = trial.job();
  std::vector<Nm> anchors = {0};
  std::vector<double> mismatches(job.bands.size());
  std::vector<bool> meets(job.bands.size()), canMeet(job.bands.size());
  for (std::size_t i = 0; i < job.bands.size(); ++i) {
    const auto mismatch = trial.mismatch(i);
    canMeet[i] = mismatch.has_value();
    if (!mismatch) continue;
    mismatches[i] = *mismatch;
    meets[i] = i != band && std::fabs(*mismatch) <= kMismatchShows;
    if (meets[i]) continue;
    for (const Closing& closing : closings(*mismatch, *job.bands[i].repeat)) anchors.push_back(closing.by);
  }
  const auto choicesOf = [&](std::size_t i) {
    const double repeat = job.bands[i].repeat->inMillimetres();
    return meets[i] ? keepingAt(mismatches[i], repeat, anchors) : closingAt(mismatches[i], repeat, anchors, true);
  };
  std::vector<Choices> keep(job.bands.size()), close(job.bands.size());
  bool anyMeeting = false, anyOpen = false;
  for (std::size_t i = 0; i < job.bands.size(); ++i) {
    if (!canMeet[i]) continue;
    close[i] = choicesOf(i);
    if (meets[i]) keep[i] = close[i];
    anyMeeting = anyMeeting || meets[i];
    anyOpen = anyOpen || (i != band && !meets[i]);
  }
  // One centring or the other for this band; both are worth telling.
  for (const bool flip : {false, true}) {
    keep[band] = choicesOf(band);
    std::erase_if(keep[band].sums, [&](const Closing& sum) { return sum.flip != flip; });
    if (anyMeeting) tryAll(trial, keep, MatchKind::OthersKept, found);
  }
  if (anyOpen) tryAll(trial, close, MatchKind::AllClose, found);
}

}  // namespace core::materials::detail
