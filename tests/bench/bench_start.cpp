// From the start of the process to its first picture on the screen, and what it then has in memory: the bench on a job
// and on many, beside an empty Qt Quick window on the same machine.
//   tests/support/with_sound.sh tests/support/with_display.sh <build>/bin/bench_start MOUNTWRIGHT EMPTY_WINDOW [ROUNDS]
#include <QElapsedTimer>
#include <QFile>
#include <QGuiApplication>
#include <QPixmap>
#include <QProcess>
#include <QScreen>
#include <QTemporaryDir>
#include <QThread>
#include <algorithm>
#include <cstdio>
#include <vector>

#include "app/clocks/system_clock.h"
#include "app/stores/data_dir.h"
#include "app/stores/sqlite_event_store.h"
#include "app/workbench/library_loader.h"
#include "tests/support/many_jobs.h"

namespace {

constexpr int kLongest = 20'000;      // ms
constexpr unsigned long kSettle = 2;  // seconds until memory is looked at

struct Start {
  double milliseconds = 0;
  double kilobytes = 0;
};

double median(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  return values[values.size() / 2];
}

// A point that every window covers, and that is black where there is none.
bool painted() {
  const QImage point = QGuiApplication::primaryScreen()->grabWindow(0, 3, 3, 1, 1).toImage();
  return !point.isNull() && qGray(point.pixel(0, 0)) > 128;
}

double resident(qint64 process) {
  QFile status(QStringLiteral("/proc/%1/status").arg(process));
  if (!status.open(QIODevice::ReadOnly)) return 0;
  for (const QByteArray& line : status.readAll().split('\n')) {
    if (line.startsWith("VmRSS:")) return line.mid(6).simplified().split(' ').value(0).toDouble();
  }
  return 0;
}

Start startOf(const QString& program, const QStringList& arguments) {
  QElapsedTimer timer;
  QProcess process;
  process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
  timer.start();
  process.start(program, arguments);
  while (!painted() && timer.elapsed() < kLongest) QThread::usleep(500);
  Start start;
  start.milliseconds = static_cast<double>(timer.nsecsElapsed()) / 1e6;
  QThread::sleep(kSettle);
  start.kilobytes = resident(process.processId());
  process.terminate();
  if (!process.waitForFinished(5000)) process.kill();
  process.waitForFinished();
  for (timer.start(); painted() && timer.elapsed() < kLongest;) QThread::msleep(1);
  return start;
}

bool prepare(const QString& data, int jobs) {
  auto store = app::stores::SqliteEventStore::open(app::stores::recordFile(data));
  if (!store) return false;
  const app::clocks::SystemClock clock;
  const auto library = app::workbench::loadLibrary(PROJECT_ROOT "/recipes", QString()).library;
  return tests::makeManyJobs({jobs, 200, std::min(jobs, 12)}, *store.value(), clock, library, tests::plainJob()) > 0;
}

}  // namespace

int main(int count, char** arguments) {
  const QGuiApplication application(count, arguments);
  const QStringList given = QCoreApplication::arguments();
  if (given.size() < 3) return 2;
  const int rounds = given.size() > 3 ? given[3].toInt() : 9;
  const QString job = QStringLiteral(PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json");
  QTemporaryDir one, many;
  if (!prepare(many.path(), 500)) {
    std::fprintf(stderr, "the jobs could not be made\n");
    return 1;
  }
  const QStringList recipes = {QStringLiteral("--recipes"), QStringLiteral(PROJECT_ROOT "/recipes")};
  const std::vector<std::pair<const char*, QStringList>> benches = {
      {"bench, one job", QStringList{QStringLiteral("--data"), one.path()} + recipes + QStringList{job}},
      {"bench, twelve jobs in hand of 500", QStringList{QStringLiteral("--data"), many.path()} + recipes}};
  std::vector<std::vector<Start>> starts(benches.size() + 1);
  // By turns, so that what else the machine does falls on all of them. The first of each takes its job in.
  for (int round = 0; round <= rounds; ++round) {
    std::vector<Start> these = {startOf(given[2], {})};
    for (const auto& [name, words] : benches) these.push_back(startOf(given[1], words));
    for (std::size_t i = 0; round > 0 && i < these.size(); ++i) starts[i].push_back(these[i]);
  }
  const auto middle = [&](std::size_t i, double Start::*of) {
    std::vector<double> values;
    for (const Start& start : starts[i]) values.push_back(start.*of);
    return median(values);
  };
  for (std::size_t i = 0; i < starts.size(); ++i) {
    std::printf("%-34s %6.0f ms (%.2f times), %5.1f MB (%.2f times)\n", i == 0 ? "empty window" : benches[i - 1].first,
                middle(i, &Start::milliseconds), middle(i, &Start::milliseconds) / middle(0, &Start::milliseconds),
                middle(i, &Start::kilobytes) / 1024, middle(i, &Start::kilobytes) / middle(0, &Start::kilobytes));
  }
  return 0;
}
