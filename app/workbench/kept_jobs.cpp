#include "app/workbench/kept_jobs.h"

#include <algorithm>
#include <utility>

#include "app/workbench/stored_plan.h"
#include "core/base/text.h"

namespace app::workbench {
namespace {

using core::base::Message;
using core::base::startsWith;
using core::record::Event;
using core::record::JobState;

constexpr std::string_view kJobPrefix = "job/";
constexpr std::string_view kBenchPrefix = "bench/";

}  // namespace

Message KeptJobs::load() {
  m_entries.clear();
  m_jobs.clear();
  m_benchEvents.clear();
  const auto streams = m_store.streams();
  if (!streams) return streams.error();
  // The benches' first, because every job is folded over them.
  for (const std::string& stream : streams.value()) {
    if (!startsWith(stream, kBenchPrefix)) continue;
    const auto events = m_store.load(stream);
    if (!events) return events.error();
    m_benchEvents.insert(m_benchEvents.end(), events.value().begin(), events.value().end());
  }
  for (const std::string& stream : streams.value()) {
    if (!startsWith(stream, kJobPrefix)) continue;
    const std::string jobId = stream.substr(kJobPrefix.size());
    auto events = m_store.load(stream);
    if (events) {
      enter(jobId, std::move(events).value());
    } else {
      enterTroubled(jobId, events.error());
    }
  }
  return {};
}

void KeptJobs::enter(const std::string& jobId, std::vector<Event> events) {
  Job job;
  job.events = std::move(events);
  JobEntry entry;
  entry.id = jobId;
  const auto first = std::find_if(job.events.begin(), job.events.end(),
                                  [](const Event& e) { return e.type == core::record::type::kJobTakenIn; });
  std::optional<core::intents::TakeIn> takenIn;
  if (first != job.events.end() && first->version == 1) takenIn = readTakenIn(first->payload);
  if (!takenIn) {
    entry.trouble = Message("kept.taking-in-unreadable");
  } else {
    entry.title = takenIn->title;
    entry.reference = takenIn->reference;
    entry.jobHash = takenIn->jobHash;
    auto plan = storedPlan(m_store, jobId, *takenIn);
    job.takenIn = std::move(*takenIn);
    if (plan) {
      job.plan = plan.value();
      refold(job);
    } else {
      entry.trouble = plan.error();
    }
  }
  m_entries.push_back(std::move(entry));
  m_jobs.insert_or_assign(jobId, std::move(job));
}

void KeptJobs::enterTroubled(const std::string& jobId, const Message& trouble) {
  JobEntry entry;
  entry.id = jobId;
  entry.trouble = trouble;
  m_entries.push_back(std::move(entry));
  m_jobs.insert_or_assign(jobId, Job());
}

std::vector<std::string> KeptJobs::add(const std::string& jobId, const std::vector<Event>& events) {
  Job& asked = m_jobs.at(jobId);
  bool ofBench = false;
  for (const Event& event : events) {
    const bool bench = startsWith(event.stream, kBenchPrefix);
    ofBench = ofBench || bench;
    (bench ? m_benchEvents : asked.events).push_back(event);
  }
  std::vector<std::string> changed = {jobId};
  refold(asked);
  for (auto& [id, other] : m_jobs) {
    if (!ofBench || id == jobId || !other.state) continue;
    refold(other);
    changed.push_back(id);
  }
  return changed;
}

std::vector<std::string> KeptJobs::addToBench(const std::vector<Event>& events) {
  m_benchEvents.insert(m_benchEvents.end(), events.begin(), events.end());
  std::vector<std::string> changed;
  for (auto& [id, job] : m_jobs) {
    if (!job.state) continue;
    refold(job);
    changed.push_back(id);
  }
  return changed;
}

void KeptJobs::refold(Job& job) {
  std::vector<Event> events = job.events;
  events.insert(events.end(), m_benchEvents.begin(), m_benchEvents.end());
  job.state = core::record::fold(job.plan, std::move(events));
}

const JobEntry* KeptJobs::entry(const std::string& jobId) const {
  const auto found =
      std::find_if(m_entries.begin(), m_entries.end(), [&](const JobEntry& entry) { return entry.id == jobId; });
  return found == m_entries.end() ? nullptr : &*found;
}

const JobState* KeptJobs::state(const std::string& jobId) const {
  const auto found = m_jobs.find(jobId);
  return found == m_jobs.end() || !found->second.state ? nullptr : &*found->second.state;
}

std::vector<const JobState*> KeptJobs::states() const {
  std::vector<const JobState*> states;
  for (const auto& [id, job] : m_jobs) {
    if (job.state) states.push_back(&*job.state);
  }
  return states;
}

std::vector<Event> KeptJobs::eventsOf(const std::string& jobId) const {
  std::vector<Event> events = m_jobs.at(jobId).events;
  events.insert(events.end(), m_benchEvents.begin(), m_benchEvents.end());
  return events;
}

bool KeptJobs::touchedBench(const std::string& intentId) const {
  return std::any_of(m_benchEvents.begin(), m_benchEvents.end(),
                     [&](const Event& event) { return event.intentId == intentId; });
}

std::string KeptJobs::newestIntentOf(const std::string& deviceId) const {
  const Event* newest = nullptr;
  const auto look = [&](const std::vector<Event>& events) {
    for (const Event& event : events) {
      if (event.deviceId != deviceId) continue;
      if (newest == nullptr || core::record::before(*newest, event)) newest = &event;
    }
  };
  look(m_benchEvents);
  for (const auto& [id, job] : m_jobs) look(job.events);
  return newest == nullptr ? "" : newest->intentId;
}

}  // namespace app::workbench
