#include "app/workbench/workbench.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <optional>
#include <utility>

#include "app/convert/content_hash.h"
#include "app/convert/text.h"
#include "app/convert/uuid.h"
#include "app/workbench/record_export.h"
#include "app/workbench/stamps.h"
#include "app/workbench/stored_plan.h"
#include "app/workbench/taking_in.h"
#include "core/base/check.h"
#include "core/base/text.h"

namespace app::workbench {
namespace {

using core::base::Message;
using core::record::AlertSchedule;
using core::record::Event;
using core::record::JobAt;
using core::record::JobState;
using core::waits::ClockReading;

constexpr char kJobPrefix[] = "job/";
constexpr char kBenchPrefix[] = "bench/";
// Between two heartbeats the two clocks drift by far less; time servers slew by at most 0.5 ms a second.
constexpr std::int64_t kJumpMilliseconds = 2000;

bool sameSchedule(const AlertSchedule& a, const AlertSchedule& b) {
  return a.alerts == b.alerts && a.bladeInHand == b.bladeInHand;
}

bool jumped(const ClockReading& before, const ClockReading& now) {
  if (before.bootId != now.bootId) return false;
  const std::int64_t byWall = now.utcMilliseconds - before.utcMilliseconds;
  const std::int64_t byBoot = (now.boottimeNanoseconds - before.boottimeNanoseconds) / 1'000'000;
  return std::llabs(byWall - byBoot) > kJumpMilliseconds;
}

}  // namespace

struct Workbench::Private {
  // What is kept of a job besides its entry in the list.
  struct Job {
    std::vector<Event> events;
    core::intents::TakeIn takenIn;
    std::shared_ptr<const core::record::JobPlan> plan;
    std::optional<JobState> state;
  };

  Private(core::record::EventStore& eventStore, const clocks::Clock& machineClock, Library techniques,
          std::string deviceId)
      : store(eventStore), clock(machineClock), library(std::move(techniques)), stamps(std::move(deviceId)) {}

  core::record::EventStore& store;
  const clocks::Clock& clock;
  Library library;
  Stamps stamps;
  std::vector<JobEntry> entries;
  std::map<std::string, Job> jobs;
  std::vector<Event> benchEvents;
  core::waits::ClockLog clockLog;
  std::optional<ClockReading> lastHeartbeat;
  std::string lastZone;
  std::shared_ptr<const AlertSchedule> schedule = std::make_shared<AlertSchedule>();
  std::string lastIntentId;

  JobEntry* entryOf(const std::string& jobId) {
    const auto found = std::find_if(entries.begin(), entries.end(), [&](const auto& e) { return e.id == jobId; });
    return found == entries.end() ? nullptr : &*found;
  }

  const JobState* stateOf(const std::string& jobId) const {
    const auto found = jobs.find(jobId);
    return found == jobs.end() || !found->second.state ? nullptr : &*found->second.state;
  }

  void refold(Job& job) {
    std::vector<Event> events = job.events;
    events.insert(events.end(), benchEvents.begin(), benchEvents.end());
    job.state = core::record::fold(job.plan, std::move(events));
  }

  // Enters a job whose events are at hand into the list, with its state or its trouble.
  void enter(const std::string& jobId, std::vector<Event> events) {
    Job job;
    job.events = std::move(events);
    JobEntry entry;
    entry.id = jobId;
    const auto first = std::find_if(job.events.begin(), job.events.end(),
                                    [](const Event& e) { return e.type == core::record::type::kJobTakenIn; });
    std::optional<core::intents::TakeIn> takenIn;
    if (first != job.events.end()) takenIn = readTakenIn(first->payload);
    if (!takenIn) {
      entry.trouble = Message("kept.taking-in-unreadable");
    } else {
      entry.title = takenIn->title;
      entry.reference = takenIn->reference;
      entry.jobHash = takenIn->jobHash;
      auto plan = storedPlan(store, jobId, *takenIn);
      job.takenIn = std::move(*takenIn);
      if (!plan) {
        entry.trouble = plan.error();
      } else {
        job.plan = plan.value();
        refold(job);
      }
    }
    entries.push_back(std::move(entry));
    jobs.insert_or_assign(jobId, std::move(job));
  }

  void enterTroubled(const std::string& jobId, const Message& trouble) {
    JobEntry entry;
    entry.id = jobId;
    entry.trouble = trouble;
    entries.push_back(std::move(entry));
    jobs.insert_or_assign(jobId, Job());
  }

  // Reads all streams; the bench's first, because every job is folded over them.
  Message readStreams() {
    auto streams = store.streams();
    if (!streams) return streams.error();
    for (const std::string& stream : streams.value()) {
      if (!core::base::startsWith(stream, kBenchPrefix)) continue;
      auto events = store.load(stream);
      if (!events) return events.error();
      benchEvents.insert(benchEvents.end(), events.value().begin(), events.value().end());
    }
    for (const std::string& stream : streams.value()) {
      if (!core::base::startsWith(stream, kJobPrefix)) continue;
      const std::string jobId = stream.substr(sizeof kJobPrefix - 1);
      auto events = store.load(stream);
      if (events) {
        enter(jobId, std::move(events).value());
      } else {
        enterTroubled(jobId, events.error());
      }
    }
    return {};
  }

  std::string newestIntentOfThisDevice() const {
    const Event* newest = nullptr;
    const auto look = [&](const std::vector<Event>& events) {
      for (const Event& event : events) {
        if (event.deviceId != stamps.deviceId()) continue;
        if (newest == nullptr || core::record::before(*newest, event)) newest = &event;
      }
    };
    look(benchEvents);
    for (const auto& [id, job] : jobs) look(job.events);
    return newest == nullptr ? "" : newest->intentId;
  }

  Message readClockLog() {
    auto log = store.clockLog(stamps.deviceId());
    if (!log) return log.error();
    clockLog = std::move(log).value();
    return {};
  }

  // Returns whether the schedule is another than before.
  bool reschedule() {
    const ClockReading now = clock.now();
    std::vector<std::vector<core::record::ScheduledAlert>> alerts;
    bool blade = false;
    for (const auto& [id, job] : jobs) {
      if (!job.state) continue;
      const JobAt at(*job.state, clockLog, now);
      alerts.push_back(core::record::alertsOf(at));
      blade = blade || core::record::bladeInHand(at);
    }
    auto next = std::make_shared<AlertSchedule>(core::record::merge(std::move(alerts), blade));
    if (sameSchedule(*schedule, *next)) return false;
    schedule = std::move(next);
    return true;
  }
};

Workbench::Workbench(core::record::EventStore& store, const clocks::Clock& clock, Library library, std::string deviceId,
                     QObject* parent)
    : QObject(parent), d(new Private(store, clock, std::move(library), std::move(deviceId))) {}

Workbench::~Workbench() = default;

Message Workbench::load() {
  d->entries.clear();
  d->jobs.clear();
  d->benchEvents.clear();
  auto position = d->store.position(d->stamps.deviceId());
  if (!position) return position.error();
  d->stamps.goOnFrom(position.value());
  if (Message trouble = d->readClockLog(); !trouble.id.empty()) return trouble;
  if (Message trouble = d->readStreams(); !trouble.id.empty()) return trouble;
  d->lastIntentId = d->newestIntentOfThisDevice();
  emit jobsChanged();
  return heartbeat();
}

Workbench::TakenIn Workbench::takeIn(const std::string& text) {
  TakenIn result;
  const std::string hash = convert::contentHash(text);
  for (const JobEntry& entry : d->entries) {
    if (entry.jobHash != hash) continue;
    result.jobId = entry.id;
    result.already = true;
    return result;
  }
  ReadyToTakeIn ready = readyToTakeIn(text, hash, d->library);
  result.problems = std::move(ready.problems);
  result.refusals = std::move(ready.refusals);
  if (!ready.intent) return result;

  const ClockReading now = d->clock.now();
  const std::string jobId = convert::newUuid(now.utcMilliseconds);
  Stamps::Act act = d->stamps.stamp(jobId, {core::record::takeInDraft(*ready.intent)}, now, d->clock.zone());
  auto kept = d->store.append(act.events, ready.texts);
  if (!kept) {
    result.refusals.push_back(kept.error());
    return result;
  }
  d->stamps.goOnFrom(act.position);
  d->lastIntentId = act.intentId;
  const std::string& reference = ready.intent->reference;
  result.sameReference =
      !reference.empty() && std::any_of(d->entries.begin(), d->entries.end(),
                                        [&](const JobEntry& entry) { return entry.reference == reference; });
  result.jobId = jobId;
  d->enter(jobId, std::move(act.events));
  const bool rescheduled = d->reschedule();
  emit jobsChanged();
  if (rescheduled) emit scheduleChanged();
  if (onCommitted) onCommitted(act.intentId);
  return result;
}

const std::vector<JobEntry>& Workbench::jobs() const { return d->entries; }

const JobState* Workbench::job(const std::string& jobId) const { return d->stateOf(jobId); }

JobAt Workbench::at(const std::string& jobId) const {
  const JobState* state = d->stateOf(jobId);
  ENSURE(state != nullptr);
  return JobAt(*state, d->clockLog, d->clock.now());
}

Message Workbench::ask(const std::string& jobId, const core::intents::Intent& intent) {
  const JobEntry* entry = d->entryOf(jobId);
  if (entry == nullptr) return Message("bench.no-such-job");
  if (d->stateOf(jobId) == nullptr) return entry->trouble;

  const JobAt now = at(jobId);
  auto drafts = core::record::decide(now, intent);
  if (!drafts) return drafts.error();
  Stamps::Act act = d->stamps.stamp(jobId, drafts.value(), now.now(), d->clock.zone());
  auto kept = d->store.append(act.events, {});
  if (!kept) return kept.error();
  d->stamps.goOnFrom(act.position);
  d->lastIntentId = act.intentId;

  bool ofBench = false;
  Private::Job& asked = d->jobs.at(jobId);
  for (Event& event : act.events) {
    const bool bench = event.stream == d->stamps.benchStream();
    ofBench = ofBench || bench;
    (bench ? d->benchEvents : asked.events).push_back(std::move(event));
  }
  std::vector<std::string> changed = {jobId};
  d->refold(asked);
  for (auto& [id, other] : d->jobs) {
    if (!ofBench || id == jobId || !other.state) continue;
    d->refold(other);
    changed.push_back(id);
  }
  const bool rescheduled = d->reschedule();
  for (const std::string& id : changed) emit jobChanged(convert::toQt(id));
  if (rescheduled) emit scheduleChanged();
  if (onCommitted) onCommitted(act.intentId);
  return {};
}

const std::string& Workbench::lastIntentId() const { return d->lastIntentId; }

std::shared_ptr<const AlertSchedule> Workbench::schedule() const { return d->schedule; }

const core::waits::ClockLog& Workbench::clockLog() const { return d->clockLog; }

Message Workbench::heartbeat() {
  const ClockReading now = d->clock.now();
  const std::string zone = d->clock.zone();
  std::string kind = "heartbeat";
  if (d->lastHeartbeat && jumped(*d->lastHeartbeat, now)) {
    kind = "jump";
  } else if (!d->lastZone.empty() && d->lastZone != zone) {
    kind = "zone";
  }
  auto kept = d->store.logClock(d->stamps.deviceId(), kind, now);
  if (!kept) return kept.error();
  d->lastHeartbeat = now;
  d->lastZone = zone;
  Message trouble = d->readClockLog();
  if (d->reschedule()) emit scheduleChanged();
  return trouble;
}

std::string Workbench::exportRecord(const std::string& jobId) const {
  const auto found = d->jobs.find(jobId);
  if (found == d->jobs.end()) return "";
  const Private::Job& job = found->second;
  std::vector<std::string> hashes = {job.takenIn.jobHash};
  for (const auto& technique : job.takenIn.techniques) hashes.push_back(technique.hash);
  std::vector<core::record::StoredText> texts;
  for (const std::string& hash : hashes) {
    auto text = d->store.text(hash);
    if (text && text.value()) texts.push_back(*text.value());
  }
  std::vector<Event> events = job.events;
  events.insert(events.end(), d->benchEvents.begin(), d->benchEvents.end());
  return recordJson(jobId, texts, std::move(events));
}

}  // namespace app::workbench
