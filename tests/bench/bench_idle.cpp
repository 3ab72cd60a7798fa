// What the open bench costs while nothing happens and four waits run, beside an empty Qt Quick window on the same
// machine: voluntary switches and processor time of the process, its threads and its children.
//   tests/support/with_sound.sh tests/support/with_display.sh <build>/bin/bench_idle MOUNTWRIGHT EMPTY_WINDOW [SECONDS]
#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QThread>
#include <cstdio>

#include "app/clocks/system_clock.h"
#include "app/stores/data_dir.h"
#include "app/stores/sqlite_event_store.h"
#include "app/workbench/library_loader.h"
#include "app/workbench/workbench.h"
#include "core/jobs/bench_place.h"
#include "tests/support/files.h"

namespace {

constexpr int kSettle = 8;  // seconds
constexpr std::size_t kWaits = 4;

struct Cost {
  double switches = 0;
  double seconds = 0;  // of a core
};

QByteArray contents(const QString& path) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

void add(Cost& cost, qint64 process) {
  const QString root = QStringLiteral("/proc/%1").arg(process);
  for (const QString& task : QDir(root + QStringLiteral("/task")).entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
    const QString folder = root + QStringLiteral("/task/") + task;
    // The first number of schedstat is the time on a core in nanoseconds.
    cost.seconds += contents(folder + QStringLiteral("/schedstat")).split(' ').value(0).toDouble() / 1e9;
    for (const QByteArray& line : contents(folder + QStringLiteral("/status")).split('\n')) {
      if (line.startsWith("voluntary_ctxt_switches:")) cost.switches += line.mid(24).trimmed().toDouble();
    }
    for (const QByteArray& child : contents(folder + QStringLiteral("/children")).split(' ')) {
      if (!child.trimmed().isEmpty()) add(cost, child.toLongLong());
    }
  }
}

// Per second, after the start has settled.
Cost costOf(const QString& program, const QStringList& arguments, int seconds) {
  QProcess process;
  process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
  process.start(program, arguments);
  if (!process.waitForStarted()) return {};
  QThread::sleep(kSettle);
  Cost before;
  add(before, process.processId());
  QThread::sleep(static_cast<unsigned long>(seconds));
  Cost after;
  add(after, process.processId());
  process.terminate();
  if (!process.waitForFinished(5000)) process.kill();
  process.waitForFinished();
  return {(after.switches - before.switches) / seconds, (after.seconds - before.seconds) / seconds};
}

std::size_t running(const app::workbench::Workbench& bench) {
  std::size_t count = 0;
  for (const auto& entry : bench.jobs()) {
    const auto job = bench.at(entry.id);
    for (const auto& [id, run] : job.state().waits) {
      count += job.matters(run) && job.waitState(run).phase == core::waits::Phase::Waiting ? 1 : 0;
    }
  }
  return count;
}

// A record in which four waits run that have long to go.
bool prepare(const QString& data) {
  auto store = app::stores::SqliteEventStore::open(app::stores::recordFile(data));
  if (!store) return false;
  const app::clocks::SystemClock clock;
  app::workbench::Workbench bench(
      *store.value(), clock, app::workbench::loadLibrary(PROJECT_ROOT "/recipes", QString()).library, "this-tablet");
  if (!bench.load().id.empty()) return false;
  const auto text = tests::readWholeFile(PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json");
  const std::string job = text ? bench.takeIn(*text).jobId : "";
  while (!job.empty() && running(bench) < kWaits) {
    const auto place = core::jobs::benchPlace(bench.at(job));
    if (place.kind != core::jobs::BenchPlace::Kind::Step) return false;
    const auto& step = bench.job(job)->plan->workflow.steps[*place.step];
    core::intents::FinishStep intent;
    intent.step = step.id;
    intent.checked = static_cast<std::int64_t>(step.checks.size());
    if (!bench.submit(core::intents::OfJob{job, intent}).id.empty()) return false;
  }
  return running(bench) >= kWaits;
}

}  // namespace

int main(int count, char** arguments) {
  QCoreApplication application(count, arguments);
  const QStringList given = QCoreApplication::arguments();
  if (given.size() < 3) return 2;
  const int seconds = given.size() > 3 ? given[3].toInt() : 30;
  QTemporaryDir data;
  if (!prepare(data.path())) {
    std::fprintf(stderr, "four waits could not be set to run\n");
    return 1;
  }
  const Cost empty = costOf(given[2], {}, seconds);
  const Cost bench = costOf(
      given[1],
      {QStringLiteral("--data"), data.path(), QStringLiteral("--recipes"), QStringLiteral(PROJECT_ROOT "/recipes")},
      seconds);
  std::printf("empty window: %.2f switches a second, %.3f %% of a core\n", empty.switches, empty.seconds * 100);
  std::printf("bench, %zu waits: %.2f switches a second, %.3f %% of a core\n", kWaits, bench.switches,
              bench.seconds * 100);
  std::printf("more: %.2f switches a second, %.3f %% of a core\n", bench.switches - empty.switches,
              (bench.seconds - empty.seconds) * 100);
  return 0;
}
