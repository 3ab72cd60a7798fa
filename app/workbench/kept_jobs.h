#pragma once
// All jobs of a store. Their lines are read from summaries, which are used only where they were made from exactly the
// events in the store. A job that does not rest is folded before anything but the lines is returned; one that rests
// (core::jobs::rests), when it is itself asked for.
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
  // Both must outlive it; without a library every technique is read from its stored text.
  explicit KeptJobs(core::record::EventStore& store, const Library* library = nullptr)
      : m_store(store), m_plans(store, library) {}

  // Clears everything and reads every stream of jobs and benches again; folds the benches' into `shop`. A job whose
  // events or texts cannot be read is entered with its trouble; an error is returned only where the store itself, or a
  // bench's stream, cannot be read.
  core::base::Message load(core::shop::Shop& shop);

  // Does once what loading put off: folds the jobs that do not rest, and reads the lessons of all others. The caller
  // has to call it before everything below but entries and add. Returns whether there was anything to do.
  bool settle(const core::shop::Shop& shop);

  // Updates the line of a folded job that does not rest to this instant.
  void look(const std::string& jobId, const core::shop::Shop& shop, const core::waits::ClockReading& now);

  // Adds newly stored events: of a job (known or new; "" for none), of benches, or of both. Folds the benches' into
  // `shop`. Returns the jobs whose state changed: that one first.
  std::vector<std::string> add(const std::string& jobId, const std::vector<core::record::Event>& events,
                               core::shop::Shop& shop);
  // Tries again to open the jobs that have trouble. Returns those that open now.
  std::vector<std::string> retry(const core::shop::Shop& shop);
  // Returns the events of all benches.
  const std::vector<core::record::Event>& benchEvents() const { return m_benchEvents; }

  const std::vector<JobEntry>& entries() const { return m_entries; }
  // Returns null where there is no such job.
  const JobEntry* entry(const std::string& jobId) const;
  // Folds the job where that is not yet done. Returns null where there is no such job or it has trouble; the pointer is
  // valid, and shows the newest state, until `load`.
  const core::jobs::JobState* state(const std::string& jobId, const core::shop::Shop& shop);
  // Returns the states of folded jobs: all that do not rest, and those that were asked for.
  std::vector<const core::jobs::JobState*> folded() const;
  // Returns one of these; null where the job is not folded.
  const core::jobs::JobState* foldedState(const std::string& jobId) const;
  // Folds the jobs in which something may depend on an act of the bench that no folded job shows.
  void foldWhatMayRestOn(const std::string& intentId, const core::jobs::JobState& asked, const core::shop::Shop& shop);

  // Returns the lessons from the touch tests of every job, folded or not.
  std::vector<const core::jobs::Observed*> lessons() const;
  // Returns whether the lessons have changed since the last call.
  bool taught() { return std::exchange(m_taught, false); }

  // Stores a summary of each job that has no valid one. Returns the store's trouble, or an empty message; without
  // summaries only time is lost.
  core::base::Message keepSummaries();

  // eventsOf returns the job's own events and those of benches: all of them, or only those that affect the job.
  enum class Of { AllBenches, Job };
  core::base::Result<std::vector<core::record::Event>, core::base::Message> eventsOf(const std::string& jobId, Of of);
  // Returns whether an act stored events on a bench stream.
  bool touchedBench(const std::string& intentId) const;

 private:
  struct Job {
    std::size_t entry = 0;
    JobSummary summary;   // without its entry, which is m_entries'
    std::string arrived;  // id of the event added last
    std::string stamp;    // of the stored summary; "" where none is valid
    // These are set where the job is folded.
    std::vector<core::record::Event> events;
    std::shared_ptr<const core::jobs::JobPlan> plan;
    std::optional<core::jobs::JobState> state;
  };

  Job& enter(const std::string& jobId);
  // Returns whether the stored summary is valid, and has then put it into `job`.
  bool believe(const std::string& jobId, Job& job, const core::record::Summary& kept);
  // Folds the job from its events, or sets its trouble where that cannot be done.
  void open(const std::string& jobId, Job& job, std::vector<core::record::Event> events, const core::shop::Shop& shop);
  // Does the same where the texts for its plan are known.
  void open(const std::string& jobId, Job& job, std::vector<core::record::Event> events,
            const std::vector<core::intents::TakeIn>& plans, const core::shop::Shop& shop);
  static void nameFrom(const core::record::Summary& kept, JobEntry& entry);
  void openStored(const std::string& jobId, Job& job, const core::shop::Shop& shop);
  void refold(Job& job, const core::shop::Shop& shop);
  // Drops the state of a job that rests and to which no caller has a pointer yet: its summary is enough.
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
