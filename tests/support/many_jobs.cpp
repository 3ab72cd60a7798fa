#include "tests/support/many_jobs.h"

#include <map>
#include <vector>

#include "app/convert/content_hash.h"
#include "app/convert/uuid.h"
#include "app/workbench/workbench.h"
#include "core/base/json.h"
#include "core/base/text.h"
#include "core/jobs/bench_place.h"
#include "tests/support/files.h"
#include "tests/support/memory_event_store.h"

namespace tests {
namespace {

using core::jobs::BenchPlace;
using core::record::Event;
using core::record::StoredText;

constexpr const char* kDevice = "another-tablet";

struct Worked {
  std::vector<Event> own;
  std::vector<Event> bench;
  std::vector<StoredText> texts;
};

bool aWaitRuns(const core::jobs::JobAt& job) {
  const BenchPlace place = core::jobs::benchPlace(job);
  if (place.done * 2 < place.all) return false;
  for (const auto& [id, run] : job.state().waits) {
    if (job.matters(run) && job.waitState(run).phase == core::waits::Phase::Waiting) return true;
  }
  return false;
}

// Works a job to its end or to where a wait runs, with so many takings back and doings again at its start.
Worked work(const app::clocks::Clock& clock, const app::workbench::Library& library, const std::string& text,
            bool toItsEnd, std::size_t again) {
  MemoryEventStore store;
  app::workbench::Workbench bench(store, clock, library, kDevice);
  Worked worked;
  if (!bench.load().id.empty()) return worked;
  const std::string job = bench.takeIn(text).jobId;
  const auto reached = [&] {
    const auto at = bench.at(job);
    return toItsEnd ? core::jobs::benchPlace(at).kind == BenchPlace::Kind::Finished : aWaitRuns(at);
  };
  for (int acts = 0; !reached(); ++acts) {
    if (acts > 2000 || !bench.submit(core::intents::OfJob{job, nextAct(bench.at(job))}).id.empty()) return worked;
    for (; again > 0; --again) {
      const auto* state = bench.job(job);
      const std::string last = state->lastUndo.empty() ? state->lastIntent : state->lastUndo;
      if (!bench.submit(core::intents::OfJob{job, core::intents::Undo{last}}).id.empty()) return worked;
    }
  }
  for (const Event& event : store.all()) {
    (core::base::startsWith(event.stream, "bench/") ? worked.bench : worked.own).push_back(event);
  }
  for (const auto& [hash, one] : store.texts()) worked.texts.push_back(one);
  return worked;
}

// The same with exactly so many events of its own; none where it has more without doing anything twice.
Worked workedTo(std::size_t events, const app::clocks::Clock& clock, const app::workbench::Library& library,
                const std::string& text, bool toItsEnd) {
  const std::size_t least = work(clock, library, text, toItsEnd, 0).own.size();
  if (least == 0 || least > events) return {};
  // Taken back an odd number of times the first act would be undone and done anew, which is one event more.
  Worked worked = work(clock, library, text, toItsEnd, (events - least) / 2 * 2);
  while (!worked.own.empty() && worked.own.size() < events) {
    Event heard = worked.own.back();
    heard.eventId += "-more";
    heard.intentId += "-more";
    heard.type = core::record::Heard::kType;
    heard.payload = core::base::Value::object();
    heard.payload.set("wait", core::base::Value::text("none"));
    heard.hlc.counter += 1;
    worked.own.push_back(heard);
  }
  return worked;
}

}  // namespace

std::string plainJob() {
  const auto text = readWholeFile(PROJECT_ROOT "/recipes/jobs/pilots-chart.job.json");
  if (!text) return "";
  const core::base::ParsedJson whole = core::base::parseJson(*text);
  core::base::Value plain = core::base::Value::object();
  for (const auto& [key, value] : whole.root.members()) {
    if (key != "leaf") plain.set(key, value);
  }
  return core::base::writeJson(plain, 2) + "\n";
}

core::intents::Intent nextAct(const core::jobs::JobAt& job) {
  const BenchPlace place = core::jobs::benchPlace(job);
  const auto& state = job.state();
  if (place.kind == BenchPlace::Kind::Missed) return core::intents::MendMissed{place.wait};
  if (place.kind == BenchPlace::Kind::Waiting) {
    const bool window = state.waits.at(place.wait).wait->closes.has_value();
    return core::intents::LookAt{place.wait, window ? core::intents::Verdict::Tacky : core::intents::Verdict::Dry};
  }
  const auto& step = state.plan->workflow.steps[place.step.value_or(0)];
  core::intents::FinishStep finish;
  finish.step = step.id;
  finish.checked = static_cast<std::int64_t>(step.checks.size());
  return finish;
}

std::size_t makeManyJobs(const ManyJobs& many, core::record::EventStore& store, const app::clocks::Clock& clock,
                         const app::workbench::Library& library, const std::string& jobText) {
  const Worked done = workedTo(many.events, clock, library, jobText, true);
  const Worked inHand = workedTo(many.events, clock, library, jobText, false);
  if (done.own.empty() || inHand.own.empty()) return 0;
  std::vector<Event> events = done.bench;
  std::vector<StoredText> texts = done.texts;
  const auto position = store.position(kDevice);
  if (!position) return 0;
  std::int64_t sequence = position.value().deviceSequence;
  for (Event& event : events) event.deviceSequence = ++sequence;
  core::record::Hlc hlc = done.own.back().hlc;
  const std::int64_t now = clock.now().utcMilliseconds;
  for (int number = 0; number < many.jobs; ++number) {
    const bool running = number % std::max(1, many.jobs / std::max(1, many.inHand)) == 0 &&
                         number / std::max(1, many.jobs / std::max(1, many.inHand)) < many.inHand;
    const std::string stream = "job/" + app::convert::newUuid(now);
    const std::string mark = "-" + std::to_string(number);
    const std::string text =
        core::base::replaceAll(core::base::replaceAll(jobText, "\"26-", "\"" + std::to_string(number) + "-"),
                               "\"title\": \"", "\"title\": \"" + std::to_string(number) + ". ");
    const std::string hash = app::convert::contentHash(text);
    texts.push_back({hash, "job", mark, text});
    for (Event event : running ? inHand.own : done.own) {
      hlc = core::record::tick(hlc, now);
      event.eventId = app::convert::newUuid(now);
      event.deviceSequence = ++sequence;
      event.hlc = hlc;
      event.intentId += mark;
      event.stream = stream;
      const std::string undone = core::record::textOf(event.payload, "intent");
      if (!undone.empty()) event.payload.set("intent", core::base::Value::text(undone + mark));
      if (event.type == core::record::JobTakenIn::kType) {
        event.payload.set("job", core::base::Value::text(hash));
        event.payload.set("title", core::base::Value::text("Job" + mark));
        event.payload.set("reference", core::base::Value::text("26" + mark));
      }
      events.push_back(std::move(event));
    }
  }
  return store.append(events, texts).ok() ? events.size() : 0;
}

}  // namespace tests
