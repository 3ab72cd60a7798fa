#pragma once
// Every two measures tried on a grid of a tenth of a millimetre, for both centrings.
#include <cmath>
#include <set>

#include "core/materials/repeat_match.h"
#include "tests/support/catch.h"

namespace tests {

inline constexpr int kTenth = 100'000;  // nanometres

inline std::multiset<std::string> notices(const core::base::Problems& problems) {
  std::multiset<std::string> all;
  for (const auto& problem : problems.sorted()) all.insert(problem.pointer + ' ' + problem.message.id);
  return all;
}

// The pattern's phase by its definition, from the layout.
inline double phase(const core::design::Band& band, const core::design::BandLayout& placed) {
  const double p = band.repeat->inMillimetres();
  const double shift = band.centreHorizontal == band.centreVertical ? 0 : p / 2;
  const double whole = ((placed.outer.width - placed.outer.height) / 2 + shift) / p;
  return (whole - std::round(whole)) * p;
}

inline bool canMeet(const core::design::Band& band) { return band.repeat && band.motif == core::design::Motif::Mirror; }

class BruteForce {
 public:
  BruteForce(const core::design::Job& job, std::size_t band) : m_job(job), m_band(band) {
    core::base::Problems problems;
    m_layout = core::design::layOut(job, problems);
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

  bool change(core::design::Job& job, std::size_t measure, int tenths) const {
    const core::units::Length by = core::units::Length::nanometres(static_cast<std::int64_t>(tenths) * kTenth);
    const std::size_t bands = m_job.bands.size();
    if (measure < 2 * bands) {
      core::design::Band& band = job.bands[measure / 2];
      core::units::Length& offset = measure % 2 == 0 ? band.offsetSides : band.offsetTopBottom;
      offset = offset + by;
      return offset >= core::units::Length();
    }
    auto& borders = std::get<core::design::FourBorders>(job.borders.entry);
    core::units::Length& width = job.bands[m_band].width;
    if (measure == 2 * bands) return (width = width + by) > core::units::Length();
    core::units::Length& one = measure == 2 * bands + 1 ? borders.left : borders.top;
    core::units::Length& two = measure == 2 * bands + 1 ? borders.right : borders.bottom;
    return (one = one + by) > core::units::Length() && (two = two + by) > core::units::Length();
  }

  bool fits(bool flip, std::size_t first, int a, std::size_t second, int b, double tolerance) const {
    core::design::Job job = m_job;
    if (!change(job, first, a) || !change(job, second, b)) return false;
    core::design::Band& own = job.bands[m_band];
    if (flip) {
      own.centreVertical = own.centreVertical == core::design::Centring::Motif ? core::design::Centring::Ground
                                                                               : core::design::Centring::Motif;
    }
    core::base::Problems problems;
    const core::design::Layout layout = core::design::layOut(job, problems);
    if (problems.hasErrors()) return false;
    for (const std::string& notice : notices(problems)) {
      if (!m_notices.contains(notice)) return false;
    }
    for (std::size_t i = 0; i < job.bands.size(); ++i) {
      if (i == m_band || !canMeet(job.bands[i])) continue;
      const double before = std::fabs(phase(m_job.bands[i], m_layout.bands[i]));
      const double after = std::fabs(phase(job.bands[i], layout.bands[i]));
      if (before <= core::materials::kMismatchShows && after > before + 1e-6) return false;
    }
    REQUIRE(std::fabs(phase(own, layout.bands[m_band])) <= tolerance + 1e-9);
    return true;
  }

  const core::design::Job& m_job;
  std::size_t m_band;
  core::design::Layout m_layout;
  std::multiset<std::string> m_notices;
  int m_best = 0;
};

}  // namespace tests
