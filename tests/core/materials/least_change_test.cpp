// The least change against every pair of measures tried on a grid of a tenth, for both centrings.
#include <cmath>
#include <cstdlib>
#include <random>
#include <set>

#include "core/design/design.h"
#include "core/materials/repeat_match.h"
#include "tests/support/catch.h"

using namespace core;
using materials::MatchOption;
using units::Length;

namespace {

constexpr int kTenth = 100'000;  // nanometres

// Jobs with little room: narrow borders, small grounds, lines about the band. Sizes are multiples of `grain` nm, the
// artwork's and the repeat's of twice that, so that halves lie on the grain.
class Maker {
 public:
  Maker(unsigned seed, int grain, int mostBands) : m_random(seed), m_grain(grain), m_mostBands(mostBands) {}

  int whole(int least, int most) { return std::uniform_int_distribution<int>(least, most)(m_random); }
  Length length(int least, int most, int multiple = 1) {
    const int unit = m_grain * multiple;
    return Length::nanometres(static_cast<std::int64_t>(unit) *
                              whole(least * (1'000'000 / unit), most * (1'000'000 / unit)));
  }

  design::Job job() {
    design::Job job;
    job.artwork.width = job.artwork.sheet.width = length(120, 260, 2);
    job.artwork.height = job.artwork.sheet.height = length(120, 260, 2);
    job.window.distance = length(2, 4);
    design::Board board;
    board.id = "only";
    board.thickness = Length::wholeMillimetres(2);
    board.bevelAngle = units::Angle::degrees(45);
    board.place.pointer = "/mount/boards/0";
    job.boards = {board};
    job.borders.place.pointer = "/mount/borders";
    job.borders.entry = design::FourBorders{length(22, 34), length(22, 34), length(22, 34), length(22, 34)};
    for (int i = 0, count = whole(1, m_mostBands); i < count; ++i) job.bands.push_back(band(i));
    if (job.bands.size() > 1 && whole(0, 1) == 0) meet(job, whole(0, 1));
    if (whole(0, 2) == 0) job.lines.push_back(line("inside", "/lines/0", design::Edge::Window, length(0, 1)));
    if (whole(0, 2) == 0) job.lines.push_back(line("outside", "/lines/1", design::Edge::Window, length(14, 28)));
    return job;
  }

 private:
  design::Band band(int index) {
    design::Band band;
    band.id = "band" + std::to_string(index);
    band.place.pointer = "/bands/" + std::to_string(index);
    band.offsetSides = length(0, 4);
    band.offsetTopBottom = whole(0, 1) == 0 ? band.offsetSides : length(0, 4);
    band.width = length(3, 8);
    band.repeat = length(4, 24, 2);
    band.motif = whole(0, 4) == 0 && index == 1 ? design::Motif::Plain : design::Motif::Mirror;
    if (whole(0, 2) == 0) band.centreVertical = design::Centring::Ground;
    if (whole(0, 3) == 0) band.centreHorizontal = design::Centring::Ground;
    return band;
  }
  design::Line line(const char* id, const char* pointer, design::Edge along, Length gap) {
    design::Line line;
    line.id = id;
    line.place.pointer = pointer;
    line.along = along;
    line.gap = gap;
    line.width = Length::nanometres(500'000);
    return line;
  }
  // Makes one band's corners meet.
  static void meet(design::Job& job, int index) {
    base::Problems problems;
    const design::Layout layout = design::layOut(job, problems);
    if (problems.hasErrors()) return;
    auto& band = job.bands[static_cast<std::size_t>(index)];
    const auto off = materials::cornerMismatch(band, layout.bands[static_cast<std::size_t>(index)]);
    if (!off) return;
    const Length by = Length::nanometres(std::llround(*off * 1e6));
    (by > Length() ? band.offsetTopBottom : band.offsetSides) =
        (by > Length() ? band.offsetTopBottom + by : band.offsetSides - by);
  }

  std::mt19937 m_random;
  int m_grain;
  int m_mostBands;
};

std::multiset<std::string> notices(const base::Problems& problems) {
  std::multiset<std::string> all;
  for (const auto& problem : problems.sorted()) all.insert(problem.pointer + ' ' + problem.message.id);
  return all;
}

// The handbook's formula, worked from the layout.
double phase(const design::Band& band, const design::BandLayout& placed) {
  const double p = band.repeat->inMillimetres();
  const double shift = band.centreHorizontal == band.centreVertical ? 0 : p / 2;
  const double whole = ((placed.outer.width - placed.outer.height) / 2 + shift) / p;
  return (whole - std::round(whole)) * p;
}

bool canMeet(const design::Band& band) { return band.repeat && band.motif == design::Motif::Mirror; }

class BruteForce {
 public:
  BruteForce(const design::Job& job, std::size_t band) : m_job(job), m_band(band) {
    base::Problems problems;
    m_layout = design::layOut(job, problems);
    m_notices = notices(problems);
  }

  // The least cost, in tenths, of a change of at most two measures that leaves at most `tolerance`, breaks nothing and
  // brings no notice; -1 where there is none.
  int least(double tolerance) {
    const double p = m_job.bands[m_band].repeat->inMillimetres();
    const double now = phase(m_job.bands[m_band], m_layout.bands[m_band]);
    const int range = static_cast<int>(p * 10) + 20;
    m_best = 2 * range + 1;
    const int none = m_best;
    const std::size_t measures = 2 * m_job.bands.size() + 3;
    for (const bool flip : {false, true}) {
      const double start = now + (flip ? p / 2 : 0);
      for (std::size_t first = 0; first < measures; ++first) {
        for (std::size_t second = first + 1; second < measures; ++second) {
          for (int size = 0; size <= std::min(range, m_best - 1); ++size) {
            for (const int a : {size, -size}) {
              for (int other = 0; other <= range && size + other < m_best; ++other) {
                for (const int b : {other, -other}) {
                  const double off = start + (gain(first) * a + gain(second) * b) * 0.1;
                  if (std::fabs(off - std::round(off / p) * p) > tolerance) continue;
                  if (size + other < m_best && fits(flip, first, a, second, b, tolerance)) m_best = size + other;
                }
              }
            }
          }
        }
      }
    }
    return m_best == none ? -1 : m_best;
  }

 private:
  // What a measure does to half the difference of the outer edge.
  int gain(std::size_t measure) const {
    const std::size_t band = measure / 2;
    if (band >= m_job.bands.size() || band > m_band) return 0;
    return measure % 2 == 0 ? 1 : -1;
  }

  bool change(design::Job& job, std::size_t measure, int tenths) const {
    const Length by = Length::nanometres(static_cast<std::int64_t>(tenths) * kTenth);
    const std::size_t bands = m_job.bands.size();
    if (measure < 2 * bands) {
      design::Band& band = job.bands[measure / 2];
      Length& offset = measure % 2 == 0 ? band.offsetSides : band.offsetTopBottom;
      offset = offset + by;
      return offset >= Length();
    }
    auto& borders = std::get<design::FourBorders>(job.borders.entry);
    Length& width = job.bands[m_band].width;
    if (measure == 2 * bands) return (width = width + by) > Length();
    Length& one = measure == 2 * bands + 1 ? borders.left : borders.top;
    Length& two = measure == 2 * bands + 1 ? borders.right : borders.bottom;
    return (one = one + by) > Length() && (two = two + by) > Length();
  }

  bool fits(bool flip, std::size_t first, int a, std::size_t second, int b, double tolerance) const {
    design::Job job = m_job;
    if (!change(job, first, a) || !change(job, second, b)) return false;
    design::Band& own = job.bands[m_band];
    if (flip) {
      own.centreVertical =
          own.centreVertical == design::Centring::Motif ? design::Centring::Ground : design::Centring::Motif;
    }
    base::Problems problems;
    const design::Layout layout = design::layOut(job, problems);
    if (problems.hasErrors()) return false;
    for (const std::string& notice : notices(problems)) {
      if (!m_notices.contains(notice)) return false;
    }
    for (std::size_t i = 0; i < job.bands.size(); ++i) {
      if (i == m_band || !canMeet(job.bands[i])) continue;
      const double before = std::fabs(phase(m_job.bands[i], m_layout.bands[i]));
      const double after = std::fabs(phase(job.bands[i], layout.bands[i]));
      if (before <= materials::kMismatchShows && after > before + 1e-6) return false;
    }
    REQUIRE(std::fabs(phase(own, layout.bands[m_band])) <= tolerance + 1e-9);
    return true;
  }

  const design::Job& m_job;
  std::size_t m_band;
  design::Layout m_layout;
  std::multiset<std::string> m_notices;
  int m_best = 0;
};

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
  Maker maker(seed, grain, mostBands);
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
