#pragma once
// All jobs of a store. Lines come from summaries, which are believed only where they stand for the very events that are
// there. A job is folded where something of it runs, before anything but the lines is asked for; one that rests, when
// it is asked for itself.
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "app/workbench/job_entry.h"
#include "app/workbench/job_summary.h"
#include "app/workbench/stored_plan.h"
#include "core/intents/intent.h"
#include "core/jobs/job_state.h"
#include "core/record/event_store.h"
#include "core/shop/shop_print.h"

namespace app::workbench {

class KeptJobs {
 public:
  // Both must outlive it; without a library every technique is read from its kept text.
  explicit KeptJobs(core::record::EventStore& store, const Library* library = nullptr)
      : m_store(store), m_plans(store, library) {}

  // Forgets what it holds and reads every stream anew, of jobs and benches; folds the benches' into `shop`. A job whose
  // events or texts do not read is entered with its trouble; only where the store itself, or a bench's stream, cannot
  // be read is that returned.
  core::base::Message load(core::shop::Shop& shop);

  // Reads what loading put off, once: folds the jobs that do not rest, and has the lessons of all others. Everything
  // below but entries and add asks for it first. Returns whether there was anything to do.
  bool settle(const core::shop::Shop& shop);

  // Fits the line of a folded job that does not rest to this instant.
  void look(const std::string& jobId, const core::shop::Shop& shop, const core::waits::ClockReading& now);

  // Events newly kept: of a job (there or not yet; "" for none), of benches, or of both. Folds the benches' into
  // `shop`. Returns the jobs whose state is another now: that one first.
  std::vector<std::string> add(const std::string& jobId, const std::vector<core::record::Event>& events,
                               core::shop::Shop& shop);
  // Opens again what did not open. Returns the jobs that do now.
  std::vector<std::string> retry(const core::shop::Shop& shop);
  // Events of all benches.
  const std::vector<core::record::Event>& benchEvents() const { return m_benchEvents; }

  const std::vector<JobEntry>& entries() const { return m_entries; }
  // Null where there is no such job.
  const JobEntry* entry(const std::string& jobId) const;
  // Folds it where it is not yet. Null where there is no such job or it has trouble; stays where it is, and is the
  // newest state, until `loadBench`.
  const core::jobs::JobState* state(const std::string& jobId, const core::shop::Shop& shop);
  // Of jobs that are folded: all that do not rest, and what was asked for.
  std::vector<const core::jobs::JobState*> folded() const;
  // One of these; null where it is not folded.
  const core::jobs::JobState* foldedState(const std::string& jobId) const;
  // Jobs in which something may rest on an act of the bench that no job at hand shows. Folds them.
  void foldWhatMayRestOn(const std::string& intentId, const core::jobs::JobState& asked, const core::shop::Shop& shop);

  // What the looks of every job teach, folded or not.
  std::vector<const core::jobs::Observed*> lessons() const;
  // Whether that is another now than when it was last asked.
  bool taught() { return std::exchange(m_taught, false); }

  // Keeps a summary of each job that has no good one. The store's trouble, or an empty message: nothing is
  // lost then but time.
  core::base::Message keepSummaries();

  // The job's own events and those of benches: all of them, or those alone that made a difference to it.
  enum class Of { AllBenches, Job };
  core::base::Result<std::vector<core::record::Event>, core::base::Message> eventsOf(const std::string& jobId, Of of);
  // Whether an act left events on a bench stream.
  bool touchedBench(const std::string& intentId) const;

 private:
  struct Job {
    std::size_t entry = 0;
    JobSummary summary;   // without its entry, which is m_entries'
    std::string arrived;  // event that came in last
    std::string stamp;    // of what the store keeps of it; "" for nothing that is good
    // Where it is folded.
    std::vector<core::record::Event> events;
    std::shared_ptr<const core::jobs::JobPlan> plan;
    std::optional<core::jobs::JobState> state;
  };

  Job& enter(const std::string& jobId);
  // Whether what the store keeps of it can be believed; it is at hand then.
  bool believe(const std::string& jobId, Job& job, const core::record::Summary& kept);
  // Folds it from its events. Sets its trouble where that cannot be done.
  void open(const std::string& jobId, Job& job, std::vector<core::record::Event> events, const core::shop::Shop& shop);
  // The same where it is known what it can be planned from.
  void open(const std::string& jobId, Job& job, std::vector<core::record::Event> events,
            const std::vector<core::intents::TakeIn>& plans, const core::shop::Shop& shop);
  static void nameFrom(const core::record::Summary& kept, JobEntry& entry);
  void openStored(const std::string& jobId, Job& job, const core::shop::Shop& shop);
  void refold(Job& job, const core::shop::Shop& shop);
  // Lets go of a fold nobody has seen yet, where its summary says as much.
  void release(Job& job);
  std::string stampOf(const Job& job) const;

  core::record::EventStore& m_store;
  PlanReader m_plans;
  std::vector<JobEntry> m_entries;
  std::map<std::string, Job> m_jobs;
  std::vector<core::record::Event> m_benchEvents;
  core::shop::ShopPrint m_print{{}};
  bool m_taught = false;
  bool m_putOff = false;
};

}  // namespace app::workbench
