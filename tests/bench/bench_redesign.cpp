// What a redesign costs: a job of an ogee window under three boards with two bands, six lines and leaf, read, laid out
// and measured anew, as at every change on the drawing; and its moves of the window's outline beside those of a general
// geometry library that knows chords alone. Medians over many runs. Fails where a goal is missed.
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <functional>

#include "core/base/check.h"
#include "core/base/text.h"
#include "core/design/design.h"
#include "core/geometry/move.h"
#include "core/geometry/region.h"
#include "core/geometry/window_form.h"
#include "tests/support/planar.h"

namespace {

using namespace core;

constexpr double kFrame = 1e6 / 60;  // microseconds
constexpr double kChordHeight = 0.005;

constexpr std::string_view kJob = R"({
  "format": "mountwright-job/1",
  "artwork": { "width": "246 mm", "height": "406 mm", "thickness": "0.3 mm" },
  "mount": {
    "window": { "shape": "arch", "head": "ogee", "rise": "180 mm", "radius": "80 mm", "overlap": "3 mm" },
    "boards": [ { "id": "top", "thickness": "2 mm" },
                { "id": "middle", "thickness": "1.5 mm", "reveal": "6 mm" },
                { "id": "under", "thickness": "1.5 mm", "reveal": "5 mm" } ],
    "borders": { "sides": "110 mm", "weighting": "4:3" }
  },
  "bands": [ { "id": "inner", "paper": "wave", "offset": "24 mm", "width": "14 mm", "repeat": "24 mm", "motif": "mirror" },
             { "id": "outer", "paper": "reed", "offset": "8 mm", "width": "10 mm", "repeat": "18 mm" } ],
  "lines": [ { "id": "a", "along": "window", "gap": "3 mm", "width": "0.5 mm", "colour": "copper" },
             { "id": "b", "along": "window", "gap": "6 mm", "width": "1 mm", "colour": "copper" },
             { "id": "c", "along": "band:inner.inner", "gap": "0 mm", "width": "1 mm", "colour": "copper" },
             { "id": "d", "along": "band:inner.outer", "gap": "0 mm", "width": "1 mm", "colour": "copper" },
             { "id": "e", "along": "band:outer.inner", "gap": "0 mm", "width": "1 mm", "colour": "copper" },
             { "id": "f", "along": "band:outer.outer", "gap": "2 mm", "width": "1 mm", "colour": "copper" } ],
  "leaf": [ { "id": "field", "region": "inside:inner", "method": "scattered", "coverage": 0.15, "size": "methylCellulose" } ]
})";

// Microseconds a run: the median, and how long the slow ones take.
struct Times {
  double median = 0, p99 = 0;
};

Times timesOf(int runs, const std::function<void()>& work) {
  std::vector<double> times;
  for (int i = 0; i < runs; ++i) {
    const auto start = std::chrono::steady_clock::now();
    work();
    times.push_back(std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - start).count());
  }
  std::sort(times.begin(), times.end());
  return {times[times.size() / 2], times[times.size() * 99 / 100]};
}

void print(const char* what, const Times& times) {
  std::printf("%-40s median %8.1f us  p99 %8.1f us  %6.2f %% of a frame\n", what, times.median, times.p99,
              100 * times.median / kFrame);
}

// Chords to a quarter turn that stay so near to the largest circle of the outline.
int chordsToQuarter(const geometry::Outline& outline) {
  double radius = 0;
  for (const auto& segment : outline.segments()) {
    if (const auto* arc = std::get_if<geometry::Arc>(&segment)) radius = std::max(radius, arc->radius);
  }
  return static_cast<int>(std::ceil(std::acos(-1.0) / 2 / (2 * std::acos(1 - kChordHeight / radius))));
}

}  // namespace

int main() {
  const auto read = design::readDesign(kJob);
  for (const auto& problem : read.problems.sorted()) std::printf("%s\n", base::dump(problem).c_str());
  ENSURE(read.design);
  double kept = 0;
  const Times whole = timesOf(2000, [&] { kept += design::readDesign(kJob).design->layout.outerWidth; });
  const Times layout = timesOf(2000, [&] {
    base::Problems problems;
    kept += design::layOut(read.design->job, problems).outerWidth;
  });
  print("redesign: read, laid out, measured", whole);
  const std::string ogee = R"("shape": "arch", "head": "ogee", "rise": "180 mm", "radius": "80 mm")";
  const std::string oval = base::replaceAll(std::string(kJob), ogee, R"("shape": "oval")");
  ENSURE(oval != kJob && design::readDesign(oval).design);
  const Times ovals = timesOf(500, [&] { kept += design::readDesign(oval).design->layout.outerWidth; });
  print("the same with an oval window", ovals);
  print("laid out alone", layout);

  const auto form = geometry::construct(read.design->job.window.form, 240, 400).value();
  const double distances[] = {5, 6.5, 11, 12.5, 14.5, 16, 17.5, 18, 20.5, 21, 21.5, 23, 24, -1, -2, -3};
  const Times ours = timesOf(2000, [&] {
    for (const double d : distances) kept += geometry::moved(form.outline, d).value().segments().size();
  });
  const tests::Planar planar;
  const auto polygon = planar.polygon(tests::Planar::chords(form.outline, chordsToQuarter(form.outline)));
  const Times theirs = timesOf(200, [&] {
    for (const double d : distances) kept += planar.parts(planar.moved(polygon, d, 4));
  });
  print("sixteen moves of the outline", ours);
  print("the same by chords of 0.005 mm", theirs);
  const auto face = geometry::moved(form.outline, 12.5).value();
  const auto outer = geometry::moved(form.outline, 30).value();
  const Times sweep = timesOf(2000, [&] {
    kept += geometry::area({{geometry::outlineOf(outer.bounds()), face}}, {{outer, {}}});
  });
  print("an area by sweep", sweep);
  const double share = std::max(whole.median, ovals.median) / kFrame;
  const double faster = theirs.median / ours.median;
  std::printf("redesign %.2f %% of a frame (goal under 5); moves %.0f times faster (goal 10)  [%g]\n", 100 * share,
              faster, kept);
  return share < 0.05 && faster >= 10 ? 0 : 1;
}
