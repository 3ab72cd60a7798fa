// Several bands at once. A band's corners see the sum of what its own grounds and those inside it gained; so what each
// band shall have gained in all is chosen first, from the few sums that close it or keep it, with the least change
// from band to band, and each band's own grounds take the difference.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <limits>

#include "core/materials/repeat_match_internal.h"

namespace core::materials::detail {
namespace {

// What a band may have gained in all. `free`: anything.
struct Choices {
  bool free = true;
  std::vector<Closing> sums;
};

Nm nmOf(double mm) { return static_cast<Nm>(std::llround(mm * static_cast<double>(units::kNanometresPerMillimetre))); }

// The sums next to each of the anchors at which the corners close: -mismatch + n p, and half a repeat more with
// another centring.
Choices closingAt(double mismatch, double repeat, const std::vector<Nm>& anchors, bool flips) {
  Choices choices{false, {}};
  for (const Nm anchor : anchors) {
    const double at = static_cast<double>(anchor) / static_cast<double>(units::kNanometresPerMillimetre);
    for (const bool flip : {false, true}) {
      if (flip && !flips) continue;
      const double first = -mismatch + (flip ? repeat / 2 : 0);
      const double below = first + std::floor((at - first) / repeat) * repeat;
      for (const double sum : {below, below + repeat}) choices.sums.push_back({nmOf(sum), flip});
    }
  }
  return choices;
}

struct Step {
  Closing sum;
  Nm cost = 0;
  int flips = 0;
  std::size_t from = 0;  // in the band inside
};

bool better(const Step& a, const Step& b) { return a.cost != b.cost ? a.cost < b.cost : a.flips < b.flips; }

// The least change from band to band.
std::vector<Closing> leastSums(const std::vector<Choices>& bands) {
  std::vector<std::vector<Step>> steps = {{Step{}}};
  for (const Choices& choices : bands) {
    const std::vector<Step>& before = steps.back();
    std::vector<Step> now;
    if (choices.free) {
      for (std::size_t i = 0; i < before.size(); ++i) {
        now.push_back({{before[i].sum.by, false}, before[i].cost, before[i].flips, i});
      }
    }
    for (const Closing& sum : choices.sums) {
      Step best;
      best.cost = std::numeric_limits<Nm>::max();
      for (std::size_t i = 0; i < before.size(); ++i) {
        const Step step{sum, before[i].cost + std::abs(sum.by - before[i].sum.by), before[i].flips + (sum.flip ? 1 : 0),
                        i};
        if (better(step, best)) best = step;
      }
      now.push_back(best);
    }
    steps.push_back(std::move(now));
  }
  std::vector<Closing> sums(bands.size());
  std::size_t at = static_cast<std::size_t>(std::min_element(steps.back().begin(), steps.back().end(), better) -
                                            steps.back().begin());
  for (std::size_t i = bands.size(); i-- > 0;) {
    sums[i] = steps[i + 1][at].sum;
    at = steps[i + 1][at].from;
  }
  return sums;
}

enum class Manner { Sides, TopBottom, Halves };
constexpr std::array kManners = {Manner::Sides, Manner::TopBottom, Manner::Halves};

void gain(BandChange& band, Nm by, Manner manner) {
  const Nm sides = manner == Manner::Sides ? by : manner == Manner::TopBottom ? 0 : by / 2;
  band.sides += sides;
  band.topBottom -= by - sides;
}

// Every band that has to gain in each of the three manners; in one manner for all where that would be many.
void inEveryManner(const Trial& trial, const std::vector<Closing>& sums, MatchKind kind,
                   std::vector<Candidate>& found) {
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
  constexpr std::size_t kMany = 4;
  const bool many = gains.size() > kMany;
  std::size_t ways = 1;
  for (std::size_t i = 0; i < (many ? 1 : gains.size()); ++i) ways *= kManners.size();
  for (std::size_t way = 0; way < ways; ++way) {
    Change change = start;
    std::size_t rest = way;
    for (const auto& [band, by] : gains) {
      gain(change.bands[band], by, kManners[rest % kManners.size()]);
      if (!many) rest /= kManners.size();
    }
    if (trial.allows(change, false)) found.push_back({kind, change});
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
  // A band that meets may stay as it is, also where it meets only so far as not to show.
  const auto choicesOf = [&](std::size_t i) {
    return closingAt(meets[i] ? 0 : mismatches[i], job.bands[i].repeat->inMillimetres(), anchors, !meets[i]);
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
    if (anyMeeting) inEveryManner(trial, leastSums(keep), MatchKind::OthersKept, found);
  }
  if (anyOpen) inEveryManner(trial, leastSums(close), MatchKind::AllClose, found);
}

}  // namespace core::materials::detail
