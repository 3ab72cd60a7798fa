// The bench without a face, for what it calls: the real store, the real rules of sounding, and a clock that runs so
// fast that a job's waits pass in seconds. It works one job by script, hears what is called after a while, and says
// each thing on a file descriptor as it happens:
//   up -          it is at work
//   owed KEY      due and unheard when the program came up
//   sounded KEY   called, or called again
//   heard KEY     that it was heard, once this is kept
//   calling_bench DATA JOB RECIPES FD
// A key is job, wait, the instant the wait began, and the class of the alert.
#include <unistd.h>

#include <QCoreApplication>
#include <QFile>
#include <QThread>
#include <cstdio>
#include <string>

#include "app/clocks/system_clock.h"
#include "app/convert/text.h"
#include "app/stores/data_dir.h"
#include "app/stores/sqlite_event_store.h"
#include "app/workbench/library_loader.h"
#include "app/workbench/workbench.h"
#include "core/alerts/sounding.h"
#include "core/jobs/bench_place.h"
#include "tests/support/files.h"

namespace {

using app::workbench::Workbench;
using core::alerts::ScheduledAlert;
using core::alerts::Sounding;
using core::jobs::BenchPlace;

// Eight hours a second.
constexpr std::int64_t kTimes = 28'800;
constexpr std::array<std::int64_t, core::alerts::kTones> kLengths = {250'000'000, 600'000'000, 1'000'000'000,
                                                                     3'400'000'000};

// From the first life in that folder on: counted from the machine's boot, a few hours of uptime would be more years
// than a clock is believed to run.
class HurriedClock : public app::clocks::Clock {
 public:
  explicit HurriedClock(const QString& folder) {
    QFile file(folder + QStringLiteral("/hurried-from"));
    if (file.open(QIODevice::ReadOnly)) m_from = file.readAll().toLongLong();
    if (m_from > 0) return;
    m_from = m_clock.now().boottimeNanoseconds;
    file.close();
    if (file.open(QIODevice::WriteOnly | QIODevice::Truncate)) file.write(QByteArray::number(qlonglong(m_from)));
  }
  core::waits::ClockReading now() const override {
    auto reading = m_clock.now();
    reading.boottimeNanoseconds = (reading.boottimeNanoseconds - m_from) * kTimes;
    reading.utcMilliseconds = 1'764'000'000'000 + reading.boottimeNanoseconds / 1'000'000;
    return reading;
  }
  std::string zone() const override { return m_clock.zone(); }

 private:
  app::clocks::SystemClock m_clock;
  std::int64_t m_from = 0;
};

int fail(const std::string& what) {
  std::fprintf(stderr, "calling_bench: %s\n", what.c_str());
  return 3;
}

class Calling {
 public:
  Calling(Workbench& bench, const HurriedClock& clock, std::string job, int descriptor)
      : m_bench(bench), m_clock(clock), m_job(std::move(job)), m_descriptor(descriptor), m_sounding(kLengths) {}

  int work() {
    say("up -");
    m_sounding.publish(m_bench.schedule());
    turn(true);
    for (int round = 1;; ++round) {
      m_sounding.publish(m_bench.schedule());
      turn(false);
      const BenchPlace place = core::jobs::benchPlace(m_bench.at(m_job));
      if (place.kind == BenchPlace::Kind::Finished) return 0;
      if (place.kind == BenchPlace::Kind::Stuck) return fail("stuck");
      if (!m_sounding.due().alerts.empty() && round % 3 == 0) {
        const ScheduledAlert alert = m_sounding.due().alerts.front();
        const std::string key = keyOf(alert);
        if (!m_bench.submit(core::intents::OfJob{m_job, core::intents::Hear{alert.wait, alert.alert}}).id.empty())
          return fail("not heard");
        say("heard " + key);
      } else if (place.kind == BenchPlace::Kind::Missed) {
        if (!m_bench.submit(core::intents::OfJob{m_job, core::intents::MendMissed{place.wait}}).id.empty())
          return fail("not mended");
      } else if (place.kind == BenchPlace::Kind::Step) {
        finish(*place.step);
      }
      QThread::usleep(500);
      if (round % 8 == 0) m_bench.heartbeat();
    }
  }

 private:
  void finish(std::size_t index) {
    const auto& step = m_bench.job(m_job)->plan->workflow.steps[index];
    core::intents::FinishStep intent;
    intent.step = step.id;
    intent.checked = static_cast<std::int64_t>(step.checks.size());
    // Refused where the window has closed in this very moment: the next round finds it missed.
    static_cast<void>(m_bench.submit(core::intents::OfJob{m_job, intent}));
  }
  void turn(bool owed) {
    const auto turn = m_sounding.turn(m_clock.now().boottimeNanoseconds, {true, Sounding::Voice::Absent});
    for (const ScheduledAlert& alert : m_sounding.due().alerts) {
      if (alert.level == core::alerts::Level::Low) continue;
      if (owed) say("owed " + keyOf(alert));
      if (turn.call && !m_sounding.due().bladeInHand) say("sounded " + keyOf(alert));
    }
  }
  std::string keyOf(const ScheduledAlert& alert) const {
    const auto& run = m_bench.job(m_job)->waits.at(alert.wait);
    return alert.job + '|' + alert.wait + '|' + std::to_string(run.started.boottimeNanoseconds) + '|' +
           std::string(core::intents::name(alert.alert));
  }
  void say(const std::string& what) const {
    const std::string line = what + '\n';
    if (write(m_descriptor, line.data(), line.size()) != static_cast<ssize_t>(line.size())) _exit(4);
  }

  Workbench& m_bench;
  const HurriedClock& m_clock;
  const std::string m_job;
  const int m_descriptor;
  Sounding m_sounding;
};

}  // namespace

int main(int argc, char* argv[]) {
  QCoreApplication application(argc, argv);
  const QStringList words = QCoreApplication::arguments();
  if (words.size() != 5) return 2;
  const auto folder = app::stores::dataDirectory(words[1]);
  if (!folder) return fail(core::base::dump(folder.error()));
  auto store = app::stores::SqliteEventStore::open(app::stores::recordFile(folder.value()));
  if (!store) return fail(core::base::dump(store.error()));
  const auto text = tests::readWholeFile(app::convert::fromQt(words[2]));
  if (!text) return fail("no job file");
  const HurriedClock clock(folder.value());
  Workbench bench(*store.value(), clock, app::workbench::loadLibrary(words[3], QString()).library, "this-tablet");
  const auto trouble = bench.load();
  if (!trouble.id.empty()) return fail(core::base::dump(trouble));
  const auto taken = bench.takeIn(*text);
  if (taken.jobId.empty()) return fail("the job was not taken in");
  return Calling(bench, clock, taken.jobId, words[4].toInt()).work();
}
