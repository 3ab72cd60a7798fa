// How long the list of jobs takes to open with many jobs in the record, beside an empty one: a process from its start,
// over techniques and record, to the lines in their order. With many it must not take more than one and a half times as
// long as with none. Told beside it: what follows before the schedule of alerts stands, how long the whole program
// takes to its screens, what an act costs, and how much memory.
//   <build>/bin/bench_jobs [JOBS] [EVENTS] [IN HAND] [ROUNDS] [FOLDER TO LEAVE THE RECORDS IN]
#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QFileInfo>
#include <QProcess>
#include <QTemporaryDir>
#include <algorithm>
#include <cstdio>
#include <memory>

#include "app/clocks/system_clock.h"
#include "app/stores/data_dir.h"
#include "app/stores/sqlite_event_store.h"
#include "app/workbench/job_search.h"
#include "app/workbench/library_loader.h"
#include "app/workbench/workbench.h"
#include "core/base/json.h"
#include "tests/support/files.h"
#include "tests/support/many_jobs.h"

namespace {

constexpr double kMost = 1.5;

double median(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  return values[values.size() / 2];
}

// kB, from the line of /proc/self/status that begins so.
long memory(const char* name) {
  QFile status(QStringLiteral("/proc/self/status"));
  if (!status.open(QIODevice::ReadOnly)) return 0;
  for (const QByteArray& line : status.readAll().split('\n')) {
    if (line.startsWith(name))
      return line.mid(static_cast<int>(qstrlen(name))).simplified().split(' ').value(0).toLong();
  }
  return 0;
}

template <typename Act>
double timed(Act act) {
  QElapsedTimer timer;
  timer.start();
  act();
  return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

struct Opened {
  std::unique_ptr<app::stores::SqliteEventStore> store;
  std::unique_ptr<app::workbench::Workbench> bench;
  double lines = 0;     // ms from the techniques to the lines
  double schedule = 0;  // ms more until what runs is folded
  std::size_t count = 0;
};

Opened open(const QString& path, const app::clocks::Clock& clock) {
  Opened opened;
  QElapsedTimer timer;
  timer.start();
  auto library = app::workbench::loadLibrary(QStringLiteral(PROJECT_ROOT "/recipes"), QString()).library;
  auto store = app::stores::SqliteEventStore::open(path);
  if (!store) {
    std::printf("the record does not open: %s\n", core::base::dump(store.error()).c_str());
    std::exit(2);
  }
  opened.store = std::move(store).value();
  opened.bench = std::make_unique<app::workbench::Workbench>(*opened.store, clock, std::move(library), "this-tablet");
  if (const auto trouble = opened.bench->load(); !trouble.id.empty()) {
    std::printf("the record does not load: %s\n", core::base::dump(trouble).c_str());
    std::exit(2);
  }
  opened.count = app::workbench::searched(opened.bench->jobs(), "", app::workbench::Shelf::Bench).size();
  opened.lines = static_cast<double>(timer.nsecsElapsed()) / 1e6;
  (void)opened.bench->schedule();
  opened.schedule = static_cast<double>(timer.nsecsElapsed()) / 1e6 - opened.lines;
  return opened;
}

// ms from the start of a process of this very program until it says that its lines stand.
double linesOpen(const QString& path) {
  QProcess process;
  QElapsedTimer timer;
  timer.start();
  process.start(QCoreApplication::applicationFilePath(), {QStringLiteral("--lines"), path});
  if (!process.waitForReadyRead(60'000)) std::exit(2);
  const double taken = static_cast<double>(timer.nsecsElapsed()) / 1e6;
  process.waitForFinished();
  return taken;
}

// ms from the start of the program until its screens stand, as `--self-test` has it; that opens no window.
double programOpens(const QString& data) {
  QProcess program;
  QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
  environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
  environment.insert(QStringLiteral("QT_QUICK_BACKEND"), QStringLiteral("software"));
  program.setProcessEnvironment(environment);
  QElapsedTimer timer;
  timer.start();
  program.start(QCoreApplication::applicationDirPath() + QStringLiteral("/mountwright"),
                {QStringLiteral("--self-test"), QStringLiteral("--data"), data, QStringLiteral("--recipes"),
                 QStringLiteral(PROJECT_ROOT "/recipes")});
  if (!program.waitForFinished(60'000) || program.exitCode() != 0) {
    std::printf("the program does not open:\n%s\n", program.readAllStandardError().constData());
    std::exit(2);
  }
  return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

void sayActs(const char* where, const QString& path, const app::clocks::Clock& clock, const std::string& jobText) {
  Opened opened = open(path, clock);
  app::workbench::Workbench& bench = *opened.bench;
  std::string job;
  const double takingIn = timed([&] { job = bench.takeIn(jobText).jobId; });
  if (job.empty()) std::exit(2);
  std::vector<double> acts;
  std::vector<double> rooms;
  for (int i = 0; i < 15; ++i) {
    const auto intent = tests::nextAct(bench.at(job));
    acts.push_back(timed([&] {
      if (!bench.submit(core::intents::OfJob{job, intent}).id.empty()) std::exit(2);
    }));
    const core::intents::EnterRoom room{
        {core::units::Temperature::celsius(18 + i % 3), core::units::Humidity::percent(50)}, false};
    rooms.push_back(timed([&] {
      if (!bench.submit(core::intents::OfShop{room}).id.empty()) std::exit(2);
    }));
  }
  std::printf("%s: taking a job in %.1f ms; an act on it %.1f ms, one of the whole bench %.1f ms (medians)\n", where,
              takingIn, median(acts), median(rooms));
}

}  // namespace

int main(int count, char** arguments) {
  QCoreApplication application(count, arguments);
  const QStringList given = QCoreApplication::arguments();
  const app::clocks::SystemClock clock;
  if (given.value(1) == QStringLiteral("--lines")) {
    auto library = app::workbench::loadLibrary(QStringLiteral(PROJECT_ROOT "/recipes"), QString()).library;
    auto store = app::stores::SqliteEventStore::open(given.value(2));
    if (!store) return 2;
    app::workbench::Workbench bench(*store.value(), clock, std::move(library), "this-tablet");
    if (!bench.load().id.empty()) return 2;
    const auto lines = app::workbench::searched(bench.jobs(), "", app::workbench::Shelf::Bench);
    std::printf("%zu\n", lines.size());
    std::fflush(stdout);
    std::_Exit(0);
  }
  const auto number = [&](int place, int otherwise) { return given.size() > place ? given[place].toInt() : otherwise; };
  tests::ManyJobs many;
  many.jobs = number(1, 500);
  many.events = static_cast<std::size_t>(number(2, 200));
  many.inHand = number(3, 12);
  const int rounds = std::max(3, number(4, 15));

  QTemporaryDir goes;
  const QDir folder(given.size() > 5 ? given[5] : goes.path());
  const QString withMany = folder.filePath(QStringLiteral("many"));
  const QString withNone = folder.filePath(QStringLiteral("none"));
  for (const QString& data : {withMany, withNone}) {
    if (!app::stores::dataDirectory(data)) return 2;
  }
  const QString full = app::stores::recordFile(withMany);
  const QString empty = app::stores::recordFile(withNone);
  const std::string text = tests::plainJob();
  const auto library = app::workbench::loadLibrary(QStringLiteral(PROJECT_ROOT "/recipes"), QString()).library;
  double building = 0;
  std::size_t events = 0;
  {
    auto store = app::stores::SqliteEventStore::open(full);
    if (!store || text.empty()) return 2;
    building = timed([&] { events = tests::makeManyJobs(many, *store.value(), clock, library, text); });
  }
  std::printf("%d jobs, %d of them in hand, %zu events in one transaction (%.1f s), %.1f MB\n", many.jobs, many.inHand,
              events, building / 1e3, static_cast<double>(QFileInfo(full).size()) / 1e6);
  if (events == 0) return 2;
  {
    const Opened first = open(full, clock);
    std::printf("the first opening, with no summary yet: %.0f ms\n", first.lines + first.schedule);
  }
  std::vector<double> processFull, processEmpty, programFull, programEmpty, linesFull, linesEmpty, schedule;
  for (int round = 0; round < rounds; ++round) {
    processEmpty.push_back(linesOpen(empty));
    processFull.push_back(linesOpen(full));
    programEmpty.push_back(programOpens(withNone));
    programFull.push_back(programOpens(withMany));
    const Opened none = open(empty, clock);
    linesEmpty.push_back(none.lines);
    const long before = memory("VmRSS:");
    const Opened all = open(full, clock);
    linesFull.push_back(all.lines);
    schedule.push_back(all.schedule);
    if (all.count != static_cast<std::size_t>(many.jobs) || none.count != 0) return 2;
    if (round == 0)
      std::printf("memory: %ld kB, %ld kB of it for the jobs\n", memory("VmRSS:"), memory("VmRSS:") - before);
  }
  const double ratio = median(processFull) / median(processEmpty);
  std::printf(
      "from the start of the process to the lines: %.1f ms with %d jobs, %.1f ms with none: %.2f times (at most "
      "%.1f)\n",
      median(processFull), many.jobs, median(processEmpty), ratio, kMost);
  std::printf("of it techniques, record, workbench, lines: %.1f ms and %.1f ms\n", median(linesFull),
              median(linesEmpty));
  std::printf("after it the jobs in hand and the schedule: %.1f ms\n", median(schedule));
  std::printf("the whole program to its screens, with what is in hand on them: %.0f ms and %.0f ms\n",
              median(programFull), median(programEmpty));
  std::printf("the most memory so far, first opening and all: %ld kB\n", memory("VmHWM:"));
  sayActs("with many", full, clock, text);
  sayActs("with none", empty, clock, text);
  return ratio <= kMost ? 0 : 1;
}
