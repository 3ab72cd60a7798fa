// Files of jobs handed on, taken up for good: what a file brings is refused with a place, or opens, is handed on, is
// taken up by an empty record to the same state, and moves no other job. The sources are the bench's own; what they ask
// of Qt, a hash and a few words, stands in here.
#include <algorithm>
#include <cstdint>
#include <random>
#include <string>

#include "app/convert/content_hash.h"
#include "app/words/thing_words.h"
#include "app/workbench/record_exchange.h"
#include "core/alerts/alert_schedule.h"
#include "core/base/check.h"
#include "core/decisions/decide.h"
#include "core/decisions/offers.h"
#include "core/jobs/bench_place.h"
#include "core/jobs/standing.h"
#include "core/jobs/timeline.h"
#include "core/record/counting.h"
#include "core/shop/shop_print.h"
#include "tests/fuzz/record_mutator.h"
#include "tests/support/memory_event_store.h"
#include "tests/support/sha256.h"
#include "tests/support/tiny_job.h"

std::string app::convert::contentHash(std::string_view bytes) { return tests::sha256(bytes); }
core::workflow::ThingWords app::words::thingWords() { return {}; }

namespace {

using namespace core;
using app::workbench::PlanReader;
using record::Event;
using tests::MemoryEventStore;

constexpr const char* kHere = "here";
constexpr const char* kMine = "mine";
constexpr std::int64_t kNow = 1'764'000'000'000;

struct Opened {
  std::vector<Event> events;  // the job's own, and of benches what makes a difference to it
  jobs::JobState state;
  std::string jobHash;
};

// As the bench opens it: what does not open was not to be taken up.
Opened opened(MemoryEventStore& store, const std::string& job) {
  Opened opened;
  opened.events = store.load("job/" + job).value();
  std::vector<Event> bench;
  for (const Event& event : store.all()) {
    if (event.stream.rfind("bench/", 0) == 0) bench.push_back(event);
  }
  PlanReader plans(store);
  for (const intents::TakeIn& takenIn : app::workbench::plannedFrom(opened.events)) {
    auto plan = plans.read(job, takenIn);
    if (!plan) continue;
    opened.jobHash = takenIn.jobHash;
    const auto steps = jobs::shopSteps(*plan.value());
    std::vector<Event> all = opened.events;
    all.insert(all.end(), bench.begin(), bench.end());
    opened.state = jobs::fold(std::move(plan).value(), std::move(all));
    const auto more = record::benchEventsOf(bench, opened.events, steps);
    opened.events.insert(opened.events.end(), more.begin(), more.end());
    return opened;
  }
  ENSURE(false && "what was taken up opens");
  return opened;
}

std::string handedOn(MemoryEventStore& store, const std::string& job, const Opened& opened) {
  auto events = app::workbench::handedOn(opened.events, opened.jobHash);
  auto texts = app::workbench::textsOf(store, events);
  return record::writeRecord({job, std::move(texts), std::move(events)});
}

bool isRefused(const app::workbench::ReadyToImport& ready) {
  bool error = false;
  for (const base::Problem& problem : ready.problems) {
    error = error || problem.severity == base::Severity::Error;
    ENSURE(!problem.message.id.empty());
    ENSURE(problem.pointer.empty() || problem.pointer.front() == '/');
    ENSURE(problem.line == 0 || problem.column > 0);
  }
  ENSURE(error == ready.jobId.empty());
  return error;
}

// Whatever a maker looks at next.
void lookAt(const jobs::JobState& state, const std::vector<Event>& events) {
  const shop::Shop shop;
  for (const std::string& boot : {std::string("boot-1"), std::string("boot-2")}) {
    const waits::ClockReading now{kNow + 86'400'000, boot, 90'000'000'000'000, true};
    const jobs::JobAt at(state, shop, now);
    (void)jobs::benchPlace(at);
    (void)decisions::offers(at);
    (void)alerts::alertsOf(at);
  }
  for (const auto& entry : jobs::timelineOf(state, shop, events, jobs::Order::NewestFirst)) {
    ENSURE(!entry.what.id.empty());
  }
}

// A record of this bench with a job of its own, worked with its own paste and with nothing else.
MemoryEventStore ownRecord() {
  MemoryEventStore store;
  std::string job(tests::kTinyJob);
  job.replace(job.find("Reed bed"), 8, "Mud flat");
  const std::vector<std::string> texts = {job, tests::kTinyPaste, tests::kTinySize};
  std::vector<record::StoredText> stored;
  for (const std::string& text : texts) {
    stored.push_back({tests::sha256(text), stored.empty() ? "job" : "technique", "", text});
  }
  intents::TakeIn takeIn;
  takeIn.jobHash = stored[0].hash;
  takeIn.techniques = {{"paste", stored[1].hash}, {"size", stored[2].hash}};
  std::vector<Event> events;
  const auto write = [&](const std::string& stream, const char* type, base::Value payload) {
    Event event;
    event.deviceId = kHere;
    event.deviceSequence = static_cast<std::int64_t>(events.size()) + 1;
    event.eventId = "own-" + std::to_string(event.deviceSequence);
    event.intentId = "act-" + std::to_string(event.deviceSequence);
    event.hlc = {kNow + event.deviceSequence, 0};
    event.stream = stream;
    event.type = type;
    event.occurredUtc = event.recordedUtc = event.hlc.milliseconds;
    event.bootId = "boot-1";
    event.payload = std::move(payload);
    events.push_back(std::move(event));
  };
  const auto step = [](const char* id) { return base::Value::object().set("step", base::Value::text(id)); };
  write(std::string("job/") + kMine, record::JobTakenIn::kType, decisions::takeInDraft(takeIn).payload);
  write(std::string("bench/") + kHere, record::StepDone::kType, step("paste/soak"));
  ENSURE(store.append(events, stored));
  return store;
}

}  // namespace

extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size, std::size_t most,
                                               unsigned int seed) {
  const std::string text(reinterpret_cast<const char*>(data), size);
  const std::string other = tests::mutatedRecord(text, seed);
  if (other.empty() || other.size() > most) return size;
  std::copy(other.begin(), other.end(), data);
  return other.size();
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string text(reinterpret_cast<const char*>(data), size);
  static const MemoryEventStore own = ownRecord();
  MemoryEventStore store;
  const auto ready = app::workbench::readyToImport(text, store, kHere);
  ENSURE(store.all().empty() && store.texts().empty());
  if (!isRefused(ready)) {
    ENSURE(store.append(ready.events, ready.texts));
    const Opened first = opened(store, ready.jobId);
    lookAt(first.state, store.all());
    const std::string file = handedOn(store, ready.jobId, first);
    if (file.size() <= base::kMaximumJsonBytes) {
      MemoryEventStore another;
      const auto again = app::workbench::readyToImport(file, another, kHere);
      ENSURE(!isRefused(again) && again.jobId == ready.jobId);
      ENSURE(another.append(again.events, again.texts));
      const Opened second = opened(another, ready.jobId);
      ENSURE(jobs::dump(second.state) == jobs::dump(first.state));
      ENSURE(handedOn(another, ready.jobId, second) == file);
      // A second time nothing is new.
      const auto twice = app::workbench::readyToImport(file, another, kHere);
      ENSURE(!isRefused(twice) && twice.events.empty());
    }
  }
  // Into a record that has work of its own.
  MemoryEventStore mine = own;
  const auto more = app::workbench::readyToImport(text, mine, kHere);
  if (isRefused(more)) return 0;
  const std::string before = jobs::dump(opened(mine, kMine).state);
  ENSURE(mine.append(more.events, more.texts));
  if (more.jobId != kMine) ENSURE(jobs::dump(opened(mine, kMine).state) == before);
  lookAt(opened(mine, more.jobId).state, mine.all());
  // The next act has its place, whatever came in.
  const auto position = mine.position(kHere).value();
  ENSURE(position.deviceSequence <= record::kLastOwnSequence);
  const record::Hlc next = record::tick(position.hlc, kNow);
  ENSURE(record::isBelievable(next) && next >= position.hlc && record::parseHlc(record::text(next)) == next);
  return 0;
}
