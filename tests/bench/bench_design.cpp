// What a change at the desk costs, from the key to all that the screen shows: the change kept in a real record, the
// design read, laid out, composed and rehearsed, its fields and its drawing made anew; and an edge drawn by hand, as at
// every move of the finger. Medians over many, against one frame of a screen that shows sixty a second; beside it the
// writing of a row into an SQLite file alone, which no change can do without. Fails where a drawn edge takes more than
// a frame, or a change more than the row and a frame.
#include <QCoreApplication>
#include <QTemporaryDir>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>

#include "app/stores/sqlite_event_store.h"
#include "app/viewmodels/desk/design_view_model.h"
#include "app/workbench/library_loader.h"
#include "tests/support/fake_clock.h"
#include "tests/support/files.h"

namespace {

constexpr double kFrame = 1e6 / 60;  // microseconds
constexpr int kRuns = 200;

struct Times {
  double median = 0, p99 = 0;
};

Times timesOf(const std::function<void(int)>& work) {
  std::vector<double> times;
  for (int i = 0; i < kRuns; ++i) {
    const auto start = std::chrono::steady_clock::now();
    work(i);
    times.push_back(std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - start).count());
  }
  std::sort(times.begin(), times.end());
  return {times[times.size() / 2], times[times.size() * 99 / 100]};
}

void print(const char* what, const Times& times) {
  std::printf("%-44s median %8.1f us  p99 %8.1f us  %6.2f %% of a frame\n", what, times.median, times.p99,
              100 * times.median / kFrame);
}

}  // namespace

int main(int argc, char** argv) {
  const QCoreApplication application(argc, argv);
  const QTemporaryDir folder;
  tests::FakeClock clock;
  auto store = app::stores::SqliteEventStore::open(folder.filePath(QStringLiteral("record.sqlite")));
  if (!store) return 3;
  auto library = app::workbench::loadLibrary(QStringLiteral(PROJECT_ROOT "/recipes"), QString());
  app::workbench::Workbench workbench(*store.value(), clock, std::move(library.library), "this-tablet");
  if (!workbench.load().id.empty()) return 3;
  const auto text = tests::readWholeFile(PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json");
  if (!text) return 3;
  const std::string begun = workbench.newId();
  const core::intents::BeginDesign begin{core::base::parseJson(*text).root, ""};
  if (!workbench.submit(core::intents::OfDesign{begun, begin}).id.empty()) return 3;
  app::viewmodels::DesignViewModel design(workbench, clock);
  if (!design.open(begun) || !design.complete()) return 3;

  // A row and a commit like an event's, in a file of its own.
  const Times row = timesOf([&](int) { static_cast<void>(workbench.heartbeat()); });
  print("a row kept alone", row);

  // The width of the work, now this, now that.
  design.chooseSection(0);
  const Times change = timesOf([&](int run) {
    design.chooseField(0);
    for (const int digit : {3, 0, run % 10}) design.digit(digit);
    if (!design.keep()) std::exit(3);
  });
  print("a change kept, computed and shown", change);

  design.leaveField();
  design.look(app::viewmodels::DesignViewModel::View::Face);
  const double wide = design.drawing().piece->width;
  const double high = design.drawing().piece->height;
  if (!design.grab({0, high / 2}, 3) && !design.grab({wide, high / 2}, 3)) return 3;
  const Times moved = timesOf([&](int run) { design.drag({-0.5 * (run % 40), high / 2}); });
  print("an edge drawn by hand, each move", moved);

  const bool good = moved.median < kFrame && change.median < row.median + kFrame;
  std::printf("%s\n", good ? "within the goal" : "MISSED");
  return good ? 0 : 1;
}
