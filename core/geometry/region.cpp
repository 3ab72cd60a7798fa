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
        // Of one outline nothing crosses.
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
    const double middle = (top + bottom) / 2;
    m_met.clear();
    for (const Run& run : m_runs) {
      if (run.top > middle) break;
      if (run.bottom > middle) m_met.push_back({run.xAt(middle), &run});
    }
    std::sort(m_met.begin(), m_met.end(), [](const Met& a, const Met& b) { return a.x < b.x; });
    m_in.assign(m_outlines, false);
    double total = 0;
    const Run* from = nullptr;
    for (const Met& met : m_met) {
      m_in[met.run->outline] = !m_in[met.run->outline];
      const bool counted = isCounted();
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

  static double integral(const Run& run, double top, double bottom) {
    return run.integral(std::max(top, run.top), std::min(bottom, run.bottom));
  }

  bool isIn(std::size_t patch) const { return m_in[2 * patch] && !m_in[2 * patch + 1]; }

  bool isCounted() const {
    if (m_wanted == 0) return false;
    for (std::size_t patch = 0; 2 * patch < m_outlines; ++patch) {
      if (isIn(patch) != (patch < m_wanted)) return false;
    }
    return true;
  }

  std::size_t m_wanted;
  std::size_t m_outlines = 0;
  std::vector<Run> m_runs;
  std::vector<double> m_heights;
  std::vector<Met> m_met;
  std::vector<bool> m_in;
};

}  // namespace

double area(const std::vector<Patch>& inside, const std::vector<Patch>& without) {
  return Sweep(inside, without).area();
}

}  // namespace core::geometry
