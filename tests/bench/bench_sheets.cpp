// What cutting sheets costs and how well it uses them: sixty pieces on mixed stock, with a knife and with a saw, beside
// a general nesting library that lays the same pieces on the same sheets in the same run. The library places by the
// pieces' outlines and need not cut from edge to edge, which makes its task easier; it knows one kind of sheet at a
// time, so it is asked for each kind and its best answer counts. Fails where we are slower than the library or take
// more of the sheets.
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <functional>
#include <limits>
#include <random>
#include <vector>

#include "core/cutting/sheet_cutting.h"
#include "tests/support/nesting.h"

namespace {

using namespace core::cutting;

constexpr int kPieces = 60;
constexpr int kTasks = 5;

struct Task {
  std::vector<WantedPiece> pieces;
  std::vector<StockSheet> stock;
};

// Whole millimetres: mounts, their backs and strips; boards as they are sold.
Task taskOf(std::mt19937& random, double kerf) {
  const auto between = [&](int least, int most) {
    return Length::wholeMillimetres(least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1)));
  };
  Task task;
  for (int i = 0; i < kPieces; ++i) {
    task.pieces.push_back({"piece", between(60, 500), between(60, 400), true});
  }
  static constexpr int kSheets[][2] = {{1120, 815}, {1220, 920}, {1020, 610}, {815, 560}};
  for (const auto& [width, height] : kSheets) {
    StockSheet sheet;
    sheet.width = Length::wholeMillimetres(width);
    sheet.height = Length::wholeMillimetres(height);
    sheet.kerf = Length::nanometres(std::llround(kerf * 1e6));
    task.stock.push_back(sheet);
  }
  return task;
}

double millisecondsOf(const std::function<void()>& work) {
  const auto start = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

double areaOf(const StockSheet& sheet) { return sheet.width.inMillimetres() * sheet.height.inMillimetres(); }

double areaOf(const Task& task) {
  double area = 0;
  for (const WantedPiece& piece : task.pieces) area += piece.width.inMillimetres() * piece.height.inMillimetres();
  return area;
}

// The sheets' area the library takes of one kind, in tenths of a millimetre inside.
double nested(const Task& task, const StockSheet& sheet) {
  const auto tenths = [](Length length) { return length.inNanometres() / 100'000; };
  std::vector<tests::NestedRectangle> rectangles;
  for (const WantedPiece& piece : task.pieces) rectangles.push_back({tenths(piece.width), tenths(piece.height)});
  const int sheets = tests::sheetsToNest(rectangles, {tenths(sheet.width), tenths(sheet.height)}, tenths(sheet.kerf));
  return sheets < 0 ? std::numeric_limits<double>::infinity() : sheets * areaOf(sheet);
}

double median(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  return values[values.size() / 2];
}

struct Compared {
  std::vector<double> ours, theirs, gaps;  // milliseconds; milliseconds; part of the worth
  double needed = 0, ourArea = 0, theirArea = 0;
  int proven = 0;
};

void compare(const Task& task, Compared& compared) {
  CuttingPlan plan;
  compared.ours.push_back(millisecondsOf([&] { plan = cutSheets(task.pieces, task.stock); }));
  compared.needed += areaOf(task);
  for (const CutSheet& sheet : plan.sheets) compared.ourArea += areaOf(task.stock[sheet.stock]);
  compared.gaps.push_back(plan.gap());
  compared.proven += plan.exact;
  double best = std::numeric_limits<double>::infinity();
  compared.theirs.push_back(millisecondsOf([&] {
    for (const StockSheet& sheet : task.stock) best = std::min(best, nested(task, sheet));
  }));
  compared.theirArea += best;
}

bool report(const char* what, const Compared& compared) {
  std::printf(
      "%-34s ours: median %8.1f ms  longest %8.1f ms  used %5.1f %%  gap to the bound %4.1f %%  proven %d of %d\n",
      what, median(compared.ours), *std::max_element(compared.ours.begin(), compared.ours.end()),
      100 * compared.needed / compared.ourArea, 100 * median(compared.gaps), compared.proven, kTasks);
  std::printf("%-34s nesting library: median %8.1f ms  used %5.1f %%\n", "", median(compared.theirs),
              100 * compared.needed / compared.theirArea);
  return median(compared.ours) <= median(compared.theirs) && compared.ourArea <= compared.theirArea;
}

}  // namespace

int main() {
  bool isGood = true;
  for (const double kerf : {0.0, 3.2}) {
    std::mt19937 random(20'260'901);
    Compared mixed, single;
    for (int i = 0; i < kTasks; ++i) {
      Task task = taskOf(random, kerf);
      compare(task, mixed);
      task.stock.resize(1);
      compare(task, single);
    }
    std::printf("kerf %.1f mm, %d pieces\n", kerf, kPieces);
    isGood = report("four kinds of sheet", mixed) && isGood;
    isGood = report("one kind of sheet", single) && isGood;
  }
  return isGood ? 0 : 1;
}
