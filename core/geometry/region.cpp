#include "core/geometry/region.h"

#include <algorithm>

#include "core/geometry/run.h"

namespace core::geometry {
namespace {

// Strips thinner than this hold rounding alone.
constexpr double kThinnest = 1e-11;

void sortUnique(std::vector<double>& values) {
  std::sort(values.begin(), values.end());
  values.erase(
      std::unique(values.begin(), values.end(), [](double kept, double next) { return next - kept < kThinnest; }),
      values.end());
}

class Sweep {
 public:
  Sweep(const std::vector<Patch>& inside, const std::vector<Patch>& without) : m_wanted(inside.size()) {
    for (const auto* patches : {&inside, &without}) {
      for (const Patch& patch : *patches) {
        add(patch.outer);
        add(patch.inner);
      }
    }
    for (const Run& run : m_runs) {
      m_heights.push_back(run.top);
      m_heights.push_back(run.bottom);
    }
    for (std::size_t i = 0; i < m_runs.size(); ++i) {
      for (std::size_t k = i + 1; k < m_runs.size(); ++k) {
        // Parts of one outline do not cross.
        if (m_runs[i].outline != m_runs[k].outline) addCrossings(m_runs[i], m_runs[k], m_heights);
      }
    }
    sortUnique(m_heights);
    std::sort(m_runs.begin(), m_runs.end(), [](const Run& a, const Run& b) { return a.top < b.top; });
  }

  double area() {
    double total = 0;
    for (std::size_t i = 0; i + 1 < m_heights.size(); ++i) total += strip(m_heights[i], m_heights[i + 1]);
    return total;
  }

 private:
  struct Met {
    double x;
    const Run* run;
  };

  void add(const Outline& outline) {
    for (const Segment& segment : outline.segments()) cutIntoRuns(segment, m_outlines, m_runs);
    ++m_outlines;
  }

  double strip(double top, double bottom) {
    meet((top + bottom) / 2);
    m_in.assign(m_outlines, false);
    m_otherwise = m_wanted;
    double total = 0;
    const Run* from = nullptr;
    for (const Met& met : m_met) {
      cross(met.run->outline);
      const bool counted = m_wanted > 0 && m_otherwise == 0;
      if (counted && from == nullptr) {
        from = met.run;
      } else if (!counted && from != nullptr) {
        // The ends of a strip may lie a hair beyond those of the run.
        total += integral(*met.run, top, bottom) - integral(*from, top, bottom);
        from = nullptr;
      }
    }
    return total;
  }

  // The runs met at that height, from the left. Strips come downwards, and from one to the next little changes.
  void meet(double height) {
    std::erase_if(m_met, [&](const Met& met) { return met.run->bottom <= height; });
    for (; m_next < m_runs.size() && m_runs[m_next].top <= height; ++m_next) {
      if (m_runs[m_next].bottom > height) m_met.push_back({0, &m_runs[m_next]});
    }
    for (Met& met : m_met) met.x = met.run->xAt(height);
    for (std::size_t i = 1; i < m_met.size(); ++i) {
      const Met moving = m_met[i];
      std::size_t at = i;
      for (; at > 0 && moving.x < m_met[at - 1].x; --at) m_met[at] = m_met[at - 1];
      m_met[at] = moving;
    }
  }

  static double integral(const Run& run, double top, double bottom) {
    return run.integral(std::max(top, run.top), std::min(bottom, run.bottom));
  }

  bool isIn(std::size_t patch) const { return m_in[2 * patch] && !m_in[2 * patch + 1]; }

  void cross(std::size_t outline) {
    const std::size_t patch = outline / 2;
    const bool was = isIn(patch);
    m_in[outline] = !m_in[outline];
    if (isIn(patch) == was) return;
    const bool asWanted = isIn(patch) == (patch < m_wanted);
    if (asWanted) {
      --m_otherwise;
    } else {
      ++m_otherwise;
    }
  }

  std::size_t m_wanted;
  std::size_t m_outlines = 0;
  std::vector<Run> m_runs;
  std::vector<double> m_heights;
  std::vector<Met> m_met;
  std::size_t m_next = 0;  // run not yet met
  std::vector<bool> m_in;
  std::size_t m_otherwise = 0;  // patches on whose wrong side one is: those wanted are to be in, the others not
};

}  // namespace

double area(const std::vector<Patch>& inside, const std::vector<Patch>& without) {
  return Sweep(inside, without).area();
}

}  // namespace core::geometry
