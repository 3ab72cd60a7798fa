// The bench without a face: a real program over the real store and the machine's own clocks, with its own
// composition root. It works one job by script as fast as the record lets it, and acknowledges every act on a file
// descriptor once it is kept. What it does next depends on the record alone, so that it goes on after a kill as if
// nothing had happened.
//
//   scripted_bench work DATA JOB RECIPES FD   works on to the end: "ack <intent> <place>" a line
//   scripted_bench state DATA JOB RECIPES     says where the job stands, one fact a line, and leaves
#include <unistd.h>

#include <QCoreApplication>
#include <cmath>
#include <cstdio>
#include <optional>
#include <set>
#include <string>

#include "app/clocks/system_clock.h"
#include "app/convert/text.h"
#include "app/stores/data_dir.h"
#include "app/stores/sqlite_event_store.h"
#include "app/workbench/library_loader.h"
#include "app/workbench/workbench.h"
#include "core/design/as_made.h"
#include "core/jobs/bench_place.h"
#include "tests/support/files.h"

namespace {

using app::workbench::Workbench;
using core::jobs::BenchPlace;
using core::jobs::JobAt;

int fail(const std::string& what) {
  std::fprintf(stderr, "scripted_bench: %s\n", what.c_str());
  return 3;
}

// Kind and step or wait, without spaces.
std::string placeText(const JobAt& job) {
  const BenchPlace place = core::jobs::benchPlace(job);
  const auto& steps = job.state().plan->workflow.steps;
  switch (place.kind) {
    case BenchPlace::Kind::Step: return "step:" + steps[*place.step].id;
    case BenchPlace::Kind::Waiting: return "waiting:" + place.wait;
    case BenchPlace::Kind::Missed: return "missed:" + place.wait;
    case BenchPlace::Kind::Finished: return "finished";
    case BenchPlace::Kind::Stuck: return "stuck";
  }
  return "";
}

// The place, how many measures hold, and the sum of all figures that rest on them to the last bit.
std::string placeAndFigures(const JobAt& job) {
  double sum = 0;
  for (const auto& figure : job.state().design->figures.all()) sum += figure.value;
  char bits[64];
  std::snprintf(bits, sizeof bits, "|%zu|%a", job.state().measures.size(), sum);
  return placeText(job) + bits;
}

std::size_t actsIn(const core::jobs::JobState& state) {
  std::set<std::string> intents;
  for (const auto& line : state.log) intents.insert(line.intentId);
  return intents.size();
}

core::intents::Intent finish(const core::workflow::WorkflowStep& step) {
  core::intents::FinishStep intent;
  intent.step = step.id;
  intent.checked = static_cast<std::int64_t>(step.checks.size());
  return intent;
}

// The next measure a step asks for, a twenty-fifth of a millimetre off what was computed: it must change what follows.
std::optional<core::intents::Intent> measure(const core::jobs::JobState& state,
                                             const core::workflow::WorkflowStep& step) {
  for (const std::string& id : step.asMade) {
    const auto* figure = state.design->figures.find(id);
    if (figure == nullptr || !core::design::isPinnable(id) || state.measures.contains(id)) continue;
    const auto value = core::units::Length::nanometres(std::llround(figure->value * 1e6) + 40'000);
    return core::intents::EnterAsMade{step.id, id, value, ""};
  }
  return std::nullopt;
}

// One in nine acts is taken back and done again; steps are begun before they are finished, measures entered; waits are
// ended by touch.
core::intents::Intent nextIntent(const JobAt& job) {
  const core::jobs::JobState& state = job.state();
  if (!state.lastUndo.empty()) return core::intents::Undo{state.lastUndo};
  if (!state.lastIntent.empty() && actsIn(state) % 9 == 0) return core::intents::Undo{state.lastIntent};
  const BenchPlace place = core::jobs::benchPlace(job);
  if (place.kind == BenchPlace::Kind::Missed) return core::intents::MendMissed{place.wait};
  if (place.kind == BenchPlace::Kind::Waiting) {
    const bool window = state.waits.at(place.wait).wait->closes.has_value();
    return core::intents::LookAt{place.wait, window ? core::intents::Verdict::Tacky : core::intents::Verdict::Dry};
  }
  const auto& step = state.plan->workflow.steps[*place.step];
  if (state.steps[*place.step].status == core::jobs::StepStatus::Ahead) return core::intents::BeginStep{step.id};
  if (const auto entered = measure(state, step)) return *entered;
  return finish(step);
}

int work(Workbench& bench, const std::string& jobText, int descriptor) {
  bench.onCommitted = [&](const std::string& intentId) {
    const std::string line = "ack " + intentId + " " + placeAndFigures(bench.at(bench.jobs().back().id)) + "\n";
    if (write(descriptor, line.data(), line.size()) != static_cast<ssize_t>(line.size())) _exit(4);
  };
  const auto taken = bench.takeIn(jobText);
  for (const auto& refusal : taken.refusals) return fail(core::base::dump(refusal));
  if (taken.jobId.empty()) return fail("the job was not taken in");
  for (;;) {
    const JobAt job = bench.at(taken.jobId);
    const std::string place = placeText(job);
    if (place == "finished") return 0;
    if (place == "stuck") return fail("stuck");
    core::base::Message refusal = bench.submit(core::intents::OfJob{taken.jobId, nextIntent(job)});
    // Beginning is refused where an open window would be missed meanwhile; the script is quicker than that.
    if (refusal.id == "record.would-miss-window") {
      const BenchPlace now = core::jobs::benchPlace(bench.at(taken.jobId));
      refusal = bench.submit(
          core::intents::OfJob{taken.jobId, finish(bench.job(taken.jobId)->plan->workflow.steps[*now.step])});
    }
    if (!refusal.id.empty()) return fail(place + ": " + core::base::dump(refusal));
  }
}

int sayState(const Workbench& bench) {
  if (bench.jobs().empty()) {
    std::puts("place none");
    return 0;
  }
  const std::string job = bench.jobs().back().id;
  if (bench.job(job) == nullptr) return fail(core::base::dump(bench.jobs().back().trouble));
  const JobAt at = bench.at(job);
  std::printf("place %s\n", placeAndFigures(at).c_str());
  for (const auto& [id, run] : at.state().waits) {
    const core::waits::WaitState state = at.waitState(run);
    const auto left = state.opens.likely - state.elapsed.time;
    std::printf("wait %s %s %lld %lld %zu %d\n", id.c_str(), run.step->id.c_str(),
                static_cast<long long>(left.inMilliseconds()),
                static_cast<long long>(state.opens.likely.inMilliseconds()), run.looks.size(),
                state.elapsed.known() ? 1 : 0);
  }
  return 0;
}

}  // namespace

int main(int argc, char* argv[]) {
  QCoreApplication application(argc, argv);
  const QStringList words = QCoreApplication::arguments();
  const bool works = words.size() == 6 && words[1] == "work";
  if (!works && !(words.size() == 5 && words[1] == "state")) return 2;
  const auto folder = app::stores::dataDirectory(words[2]);
  if (!folder) return fail(core::base::dump(folder.error()));
  auto store = app::stores::SqliteEventStore::open(app::stores::recordFile(folder.value()));
  if (!store) return fail(core::base::dump(store.error()));
  const auto text = tests::readWholeFile(app::convert::fromQt(words[3]));
  if (!text) return fail("no job file");
  const app::clocks::SystemClock clock;
  Workbench bench(*store.value(), clock, app::workbench::loadLibrary(words[4], QString()).library, "this-tablet");
  const auto trouble = bench.load();
  if (!trouble.id.empty()) return fail(core::base::dump(trouble));
  return works ? work(bench, *text, words[5].toInt()) : sayState(bench);
}
