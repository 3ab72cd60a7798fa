// What closing one band's corners does to those of another.
#include <cmath>

#include "core/design/layout.h"
#include "tests/core/materials/every_change.h"
#include "tests/core/materials/matched.h"
#include "tests/core/materials/tight_jobs.h"
#include "tests/support/catch.h"

using namespace core;
using namespace tests;
using materials::MatchKind;
using units::Length;

namespace {

// The example's band, and another outside it.
std::string twoBands(const std::string& outer) {
  std::string text = changed(workedExample(), R"("grain": "along" } ])", R"("grain": "along" },
    { "id": "outer", "paper": "reed-block print", )" + outer + " } ]");
  return changed(text, R"("region": "outside:inner")", R"("region": "outside:outer")");
}

// The least change of grounds, in mm, that closes the corners of every band: every sum each band can close at, and of
// what each band gains every quarter at its sides, the rest at top and bottom. Above `most` where there is none up to
// it.
class EveryClosing {
 public:
  EveryClosing(const design::Job& job, double most) : m_job(job), m_best(most) {
    base::Problems problems;
    m_layout = design::layOut(job, problems);
    go(job, 0, 0, 0);
  }
  double best() const { return m_best; }

 private:
  void go(const design::Job& job, std::size_t band, double before, double cost) {
    if (band == m_job.bands.size()) {
      base::Problems problems;
      design::layOut(job, problems);
      if (!problems.hasErrors()) m_best = cost;
      return;
    }
    const design::Band& own = m_job.bands[band];
    const double p = own.repeat->inMillimetres();
    for (const bool flip : {false, true}) {
      const double off = phase(own, m_layout.bands[band]) + (flip ? p / 2 : 0);
      const double reach = m_best - cost;
      for (double n = std::ceil((before - reach + off) / p); n * p - off <= before + reach; ++n) {
        const double gain = n * p - off - before;
        for (int quarter = 0; quarter <= 4; ++quarter) {
          if (cost + std::fabs(gain) >= m_best - 1e-6) continue;
          const auto by = static_cast<std::int64_t>(std::llround(gain * 1e6));
          const std::int64_t sides = by / 4 * quarter;
          design::Job changed = job;
          design::Band& next = changed.bands[band];
          next.offsetSides = next.offsetSides + Length::nanometres(sides);
          next.offsetTopBottom = next.offsetTopBottom - Length::nanometres(by - sides);
          if (flip) {
            next.centreVertical =
                next.centreVertical == design::Centring::Motif ? design::Centring::Ground : design::Centring::Motif;
          }
          if (next.offsetSides < Length() || next.offsetTopBottom < Length()) continue;
          go(changed, band + 1, before + gain, cost + std::fabs(gain));
        }
      }
    }
  }

  const design::Job& m_job;
  design::Layout m_layout;
  double m_best;
};

}  // namespace

TEST_CASE("an inner band's change that opens an outer one ranks after one that keeps it closed") {
  // Both see 35. The outer band's repeat of 7 meets; the inner one's of 24 wants 1, with another centring.
  const auto match = matchIn(twoBands(R"("offset": "6 mm", "width": "5 mm", "repeat": "7 mm")"), 0);
  const auto& first = match.options.front();
  CHECK(first.kind == MatchKind::OthersKept);
  CHECK(first.cost == tenths(20));  // 1 more at the inner band's sides, 1 less at the outer's
  REQUIRE(first.others.size() == 1);
  CHECK(!first.opensOthers);
  CHECK(first.others[0].after == Approx(0).margin(1e-9));
  bool opening = false;
  for (const auto& option : match.options) {
    if (option.opensOthers) {
      opening = true;
      CHECK(says(option.disturbs, "match.opens-band"));
    } else {
      CHECK(!opening);
    }
  }
  CHECK(opening);
}

TEST_CASE("several open bands can be closed at once") {
  // Inner: 35 of 24, outer: 35 of 11, that is 2 open. Inner +1 on ground; outer -2 in all: 1 and 3 more the other way.
  const auto match = matchIn(twoBands(R"("offset": "6 mm", "width": "5 mm", "repeat": "11 mm")"), 0);
  const materials::MatchOption* all = nullptr;
  for (const auto& option : match.options) {
    if (option.kind == MatchKind::AllClose && all == nullptr) all = &option;
  }
  REQUIRE(all != nullptr);
  CHECK(std::fabs(all->figures.mismatch) < 1e-9);
  REQUIRE(all->others.size() == 1);
  CHECK(std::fabs(all->others[0].after) < 1e-9);
  // 1 at the inner band; the outer, now 3 open, or 2.5 the other way with its centring changed.
  CHECK(all->cost == tenths(35));
}

TEST_CASE("where open corners of another band come to miss by more it is said, and by how much") {
  const auto match = matchIn(twoBands(R"("offset": "6 mm", "width": "5 mm", "repeat": "11 mm")"), 0);
  bool further = false;
  for (const auto& option : match.options) {
    REQUIRE(option.others.size() == 1);
    CHECK(option.others[0].before == Approx(2));
    const double after = std::fabs(option.others[0].after);
    CHECK(says(option.disturbs, "match.opens-further") == (after > 2.000001));
    for (const auto& message : option.disturbs) {
      if (message.id != "match.opens-further") continue;
      further = true;
      CHECK(std::get<base::Millimetres>(*message.argument("by")).value == Approx(after));
      CHECK(std::get<base::Millimetres>(*message.argument("was")).value == Approx(2));
    }
  }
  CHECK(further);
}

TEST_CASE("every option tells what becomes of the other bands") {
  const auto match = matchIn(twoBands(R"("offset": "6 mm", "width": "5 mm", "repeat": "11 mm")"), 1);
  CHECK(match.mismatch == Approx(2));
  REQUIRE(!match.options.empty());
  bool throughInner = false;
  for (const auto& option : match.options) {
    REQUIRE(option.others.size() == 1);
    CHECK(option.others[0].band == 0);
    CHECK(option.others[0].before == Approx(11));
    for (const auto& change : option.changes) throughInner = throughInner || change.band == 0;
  }
  CHECK(throughInner);
}

TEST_CASE("a plain band between is moved along and counts for nothing") {
  const auto match = matchIn(twoBands(R"("offset": "6 mm", "width": "5 mm")"), 0);
  CHECK(match.options.front().others.empty());
  CHECK(match.options.front().cost == tenths(10));
}

namespace {

// Three bands whose repeats miss, and leaf within the first, round a window with lines round it.
std::string threeRound(const std::string& shape, int lines) {
  std::string text = R"({"format": "mountwright-job/1", "artwork": {"width": "1000 mm", "height": "987.3 mm"}, "mount":
    {"window": {)" + shape +
                     R"(, "overlap": "3 mm"}, "boards": [{"id": "top", "thickness": "1.5 mm"}], "borders":
    {"top": "1000 mm", "bottom": "1000 mm", "sides": "1000 mm"}}, "lines": [)";
  for (int i = 0; i < lines; ++i) {
    text += std::string(i > 0 ? "," : "") + R"({"id": "l)" + std::to_string(i) + R"(", "along": "window", "gap": ")" +
            std::to_string(1 + 3 * i) + R"( mm", "width": "1 mm", "colour": "red"})";
  }
  text += R"(], "bands": [)";
  for (int i = 0; i < 3; ++i) {
    text += std::string(i > 0 ? "," : "") + R"({"id": "b)" + std::to_string(i) + R"(", "paper": "print", "offset": ")" +
            (i > 0 ? "20" : "100") + R"( mm", "width": "10 mm", "repeat": "24 mm"})";
  }
  return text + R"(], "leaf": [{"id": "field", "region": "inside:b0", "method": "scattered", "coverage": 0.2,
    "size": "methylCellulose"}]})";
}

}  // namespace

TEST_CASE("on a piece too intricate to try every change, what was tried is offered and the rest told") {
  const auto usual = matchIn(threeRound(R"("shape": "oval")", 2), 0);
  CHECK_FALSE(usual.options.empty());
  CHECK_FALSE(says(usual.notes, "match.not-all-tried"));
  const auto intricate = matchIn(threeRound(R"("shape": "arch", "head": "multifoil", "lobes": 99)", 8), 0);
  CHECK(says(intricate.notes, "match.not-all-tried"));
}

TEST_CASE("where a change of the grounds closes three open bands, one as small is offered") {
  TightJobs jobs(20'260'951, 50'000, 3);
  constexpr double kMost = 14;
  int compared = 0;
  int closed = 0;
  for (int i = 0; i < 4000 && compared < 40; ++i) {
    const design::Job job = jobs.job();
    if (job.bands.size() < 3) continue;
    base::Problems problems;
    const design::Layout layout = design::layOut(job, problems);
    if (problems.hasErrors()) continue;
    bool areOpen = true;
    for (std::size_t b = 0; b < job.bands.size(); ++b) {
      areOpen = areOpen && canMeet(job.bands[b]) &&
                std::fabs(phase(job.bands[b], layout.bands[b])) > materials::kMismatchShows;
    }
    if (!areOpen) continue;
    ++compared;
    INFO(i);
    const double least = EveryClosing(job, kMost).best();
    if (least >= kMost) continue;
    ++closed;
    double offered = 1e9;
    for (const auto& option : materials::matchOf(job, layout, 0).options) {
      bool all = std::fabs(option.figures.mismatch) < 1e-5;
      for (const auto& other : option.others) all = all && std::fabs(other.after) < 1e-5;
      if (all) offered = std::min(offered, option.cost.inMillimetres());
    }
    CHECK(offered <= least + 1e-4);
  }
  CHECK(compared > 20);
  CHECK(closed > 5);
}
