#pragma once
// All jobs of a store, each with its events and what they fold to. Reads the store, never writes it.
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/workbench/job_entry.h"
#include "core/intents/intent.h"
#include "core/record/event_store.h"
#include "core/record/job_state.h"

namespace app::workbench {

class KeptJobs {
 public:
  explicit KeptJobs(core::record::EventStore& store) : m_store(store) {}

  // Forgets what it holds and reads every stream. A job whose events or texts do not read is entered with its
  // trouble; only where the store itself, or the bench's own stream, cannot be read is that returned.
  core::base::Message load();

  // A job newly taken in, whose events and texts the store has just kept.
  void enter(const std::string& jobId, std::vector<core::record::Event> events);
  // Events of one act on a job, just kept. Returns the jobs whose state is another now: that one first, and all
  // others where the act was one of the bench as well.
  std::vector<std::string> add(const std::string& jobId, const std::vector<core::record::Event>& events);

  // Events of one act on the shop alone, just kept. Returns the jobs whose state is another now.
  std::vector<std::string> addToBench(const std::vector<core::record::Event>& events);
  // Those of all benches.
  const std::vector<core::record::Event>& benchEvents() const { return m_benchEvents; }

  const std::vector<JobEntry>& entries() const { return m_entries; }
  // Null where there is no such job.
  const JobEntry* entry(const std::string& jobId) const;
  // Null where there is no such job or it has trouble; stays where it is until `load`.
  const core::record::JobState* state(const std::string& jobId) const;
  // Every job without trouble.
  std::vector<const core::record::JobState*> states() const;

  // Requires entry(jobId).
  const std::vector<core::record::Event>& ownEvents(const std::string& jobId) const { return m_jobs.at(jobId).events; }
  // The job's own events and those of all benches.
  std::vector<core::record::Event> eventsOf(const std::string& jobId) const;
  const core::intents::TakeIn& takenIn(const std::string& jobId) const { return m_jobs.at(jobId).takenIn; }
  // Whether an act left events on a bench stream.
  bool touchedBench(const std::string& intentId) const;
  // Intent id of the newest event of a device, "" for none.
  std::string newestIntentOf(const std::string& deviceId) const;

 private:
  struct Job {
    std::vector<core::record::Event> events;
    core::intents::TakeIn takenIn;
    std::shared_ptr<const core::record::JobPlan> plan;
    std::optional<core::record::JobState> state;
  };

  void enterTroubled(const std::string& jobId, const core::base::Message& trouble);
  void refold(Job& job);

  core::record::EventStore& m_store;
  std::vector<JobEntry> m_entries;
  std::map<std::string, Job> m_jobs;
  std::vector<core::record::Event> m_benchEvents;
};

}  // namespace app::workbench
