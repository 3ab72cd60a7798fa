#pragma once
// The plan of a job, made from the texts it was begun with alone: the folder of techniques may have changed since, but
// the job has not.
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/workbench/library.h"
#include "core/base/message.h"
#include "core/base/result.h"
#include "core/craft/catalogue.h"
#include "core/craft/technique.h"
#include "core/intents/intent.h"
#include "core/jobs/job_state.h"
#include "core/record/event_store.h"
#include "core/workflow/things.h"

namespace app::workbench {

// Returns the content of the event with which a job began, with names as they may be shown; nullopt where it is no such
// event or cannot be read.
std::optional<core::intents::TakeIn> takenInBy(const core::record::Event& event);

// Returns, of events in any order, those that begin a job and can be read, in fold order. They are the job's own, since
// a bench's stream has none. There is one, unless an import once added another that had no effect.
std::vector<core::record::Event> takingsIn(const std::vector<core::record::Event>& events);

// Returns what a job can be planned from: for each of `takingsIn` its content, with the techniques of the job's newest
// renewal. The first of these that opens is the job. Empty where no event begins it, or the renewal cannot be read.
std::vector<core::intents::TakeIn> plannedFrom(const std::vector<core::record::Event>& events);
// Returns everything that the job begun by this event can be planned from: without renewal and with each in turn, since
// taking renewals back can lead to any of them. Each is listed once, at most `most`; nullopt where any cannot be read.
std::optional<std::vector<core::intents::TakeIn>> everPlannedFrom(const core::record::Event& takingIn,
                                                                  const std::vector<core::record::Event>& events,
                                                                  std::size_t most);

// Returns the stored text of that hash. The errors are kept.text-missing {name}, kept.text-damaged {name}, or the
// store's own.
core::base::Result<std::string, core::base::Message> storedText(core::record::EventStore& store,
                                                                const std::string& hash, const std::string& name);

// Reads plans; a technique that several jobs use is read once.
class PlanReader {
 public:
  // A technique that the library has read already is not read again where a job uses the same text. Store and library
  // must outlive the reader.
  explicit PlanReader(core::record::EventStore& store, const Library* library = nullptr)
      : m_store(store), m_library(library) {}

  // The errors are those of storedText and kept.job-unreadable {place} {cause}, kept.technique-unreadable {technique}
  // {place} {cause}, kept.does-not-compose {cause}. `more`: texts by hash that are not in the store yet.
  core::base::Result<std::shared_ptr<const core::jobs::JobPlan>, core::base::Message> read(
      const std::string& jobId, const core::intents::TakeIn& takenIn,
      const std::map<std::string, std::string>& more = {});

  // Composes several at the same time, as many as the machine has processors for; `read` then returns each of them once
  // without delay. Errors are left for `read` to report.
  struct Wanted {
    std::string jobId;
    core::intents::TakeIn takenIn;
  };
  void readAhead(const std::vector<Wanted>& wanted);

 private:
  using Plan = core::base::Result<std::shared_ptr<const core::jobs::JobPlan>, core::base::Message>;
  // Everything a plan is made from. Reading it needs the store; making the plan does not.
  struct Parts {
    std::string jobId;
    std::string jobHash;
    std::string jobText;
    core::craft::Catalogue catalogue;
  };
  core::base::Result<Parts, core::base::Message> partsOf(const std::string& jobId, const core::intents::TakeIn& takenIn,
                                                         const std::map<std::string, std::string>& more);
  static Plan planOf(const Parts& parts, const core::workflow::ThingWords& words);
  // Returns null where the library has no such technique, or another text of it.
  std::shared_ptr<const core::craft::Technique> atHand(const std::string& id, const std::string& text) const;

  core::record::EventStore& m_store;
  const Library* m_library;
  std::map<std::string, std::shared_ptr<const core::craft::Technique>> m_techniques;  // by hash
  std::map<std::string, Plan> m_ready;                                                // by job and texts
};

// Reads one plan alone.
core::base::Result<std::shared_ptr<const core::jobs::JobPlan>, core::base::Message> storedPlan(
    core::record::EventStore& store, const std::string& jobId, const core::intents::TakeIn& takenIn);

}  // namespace app::workbench
