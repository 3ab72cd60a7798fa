// The least change against every pair of measures tried on a grid of a tenth, for both centrings.
#include <algorithm>
#include <cmath>

#include "core/materials/repeat_match.h"
#include "tests/core/materials/every_change.h"
#include "tests/core/materials/tight_jobs.h"
#include "tests/support/catch.h"

using namespace core;
using namespace tests;
using materials::MatchOption;
using units::Length;

namespace {

struct Counts {
  int tried = 0, closed = 0, withCentring = 0, twoMeasures = 0, room = 0, others = 0, none = 0;
};

// The best option that breaks nothing, of at most `measures` measures.
const MatchOption* best(const materials::RepeatMatch& match, std::size_t measures) {
  for (const MatchOption& option : match.options) {
    if (!option.opensOthers && !option.bringsNotice && option.changes.size() <= measures) return &option;
  }
  return nullptr;
}

template <typename Check>
Counts overRandomJobs(unsigned seed, int grain, int rounds, Check check, int mostBands = 2) {
  TightJobs maker(seed, grain, mostBands);
  Counts counts;
  while (counts.tried < rounds) {
    const design::Job job = maker.job();
    base::Problems problems;
    const design::Layout layout = design::layOut(job, problems);
    const std::size_t band = job.bands.size() - 1 - static_cast<std::size_t>(maker.whole(0, 1)) % job.bands.size();
    if (problems.hasErrors() || !canMeet(job.bands[band])) continue;
    const auto match = materials::matchOf(job, layout, band);
    if (match.state == materials::MatchState::Meets) continue;
    ++counts.tried;
    const MatchOption* two = best(match, 2);
    INFO("round " << counts.tried);
    check(job, band, match, two);
    if (two == nullptr) {
      ++counts.none;
      continue;
    }
    ++counts.closed;
    counts.withCentring += two->centrings.empty() ? 0 : 1;
    counts.twoMeasures += two->changes.size() == 2 ? 1 : 0;
    counts.room += two->kind == materials::MatchKind::Room ? 1 : 0;
    counts.others += two->kind == materials::MatchKind::OthersKept ? 1 : 0;
  }
  return counts;
}

}  // namespace

TEST_CASE("repeat match finds the true least change: every two measures on a tenth, both centrings") {
  const Counts counts =
      overRandomJobs(91, kTenth, 400, [](const auto& job, std::size_t band, const auto& match, const MatchOption* two) {
        const int brute = BruteForce(job, band).least(1e-9);
        CHECK((two != nullptr) == (brute >= 0));
        if (two == nullptr || brute < 0) return;
        CHECK(two->cost.inNanometres() == static_cast<std::int64_t>(brute) * kTenth);
        CHECK(best(match, 99)->cost <= two->cost);
      });
  CAPTURE(counts.closed, counts.withCentring, counts.twoMeasures, counts.room, counts.others, counts.none);
  CHECK(counts.closed > 350);
  CHECK(counts.withCentring > 40);
  CHECK(counts.twoMeasures > 25);
  CHECK(counts.room > 3);
  CHECK(counts.others > 10);
}

TEST_CASE("where the least change lies between tenths, no tenth is less by more than the grid") {
  // Sizes on the twentieth: a tenth off by at most half a step closes as near as the grid can.
  overRandomJobs(92, kTenth / 4, 200, [](const auto& job, std::size_t band, const auto&, const MatchOption* two) {
    const int brute = BruteForce(job, band).least(0.05 + 1e-9);
    if (two == nullptr || brute < 0) return;
    const double cost = two->cost.inMillimetres();
    CHECK(cost <= brute * 0.1 + 0.1 + 1e-9);
    if (job.bands.size() == 1) CHECK(cost >= brute * 0.1 - 0.2 - 1e-9);
  });
}

TEST_CASE("every option closes its corners and costs what its changes come to") {
  for (const int grain : {kTenth, kTenth / 4}) {
    overRandomJobs(
        93, grain, 150,
        [](const auto& job, std::size_t band, const auto& match, const MatchOption*) {
          for (const MatchOption& option : match.options) {
            CHECK(std::fabs(option.figures.mismatch) < 1e-9);
            Length sum;
            for (const auto& change : option.changes) sum = sum + std::max(change.by, -change.by);
            CHECK(sum == option.cost);
            CHECK(option.edits.size() >= 1);
            CHECK(option.says.size() == option.changes.size() + option.centrings.size());
            if (option.onSteps) CHECK(std::fabs(option.onSteps->mismatch) <= materials::kMismatchShows + 1e-9);
            for (const auto& other : option.others) CHECK(other.band != band);
            CHECK(option.others.size() < job.bands.size());
          }
        },
        3);
  }
}
