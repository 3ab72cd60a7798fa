#pragma once
// The plan of a job from the texts it was taken in with, and from nothing else: the folder of techniques may have
// changed since, the job has not.
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

// What the event that took a job in says, with names as they may be shown; nothing where it is no such event or cannot
// be read.
std::optional<core::intents::TakeIn> takenInBy(const core::record::Event& event);

// The events that say they took a job in, and read: among events in any order the job's own alone, since a bench's
// stream takes no job in. In fold order; there is one, unless a file once brought one that took nothing in.
std::vector<core::record::Event> takingsIn(const std::vector<core::record::Event>& events);

// What a job is planned from: for each of `takingsIn` what it was taken in with, and the techniques of its newest
// renewal. The first of these that opens is the job. None where nothing took it in, or the renewal does not read.
std::vector<core::intents::TakeIn> plannedFrom(const std::vector<core::record::Event>& events);
// What the job that was taken in so can be planned from: with no renewal and with each in turn, since taking renewals
// back can lead to any of them. Each once, at most `most`; nothing where any does not read.
std::optional<std::vector<core::intents::TakeIn>> everPlannedFrom(const core::record::Event& takingIn,
                                                                  const std::vector<core::record::Event>& events,
                                                                  std::size_t most);

// The text of that hash, as it was. kept.text-missing {name}, kept.text-damaged {name}, or the store's own trouble.
core::base::Result<std::string, core::base::Message> storedText(core::record::EventStore& store,
                                                                const std::string& hash, const std::string& name);

// Reads plans; a technique that several jobs were taken in with is read once.
class PlanReader {
 public:
  // What a library has read already is not read again where a job was taken in with the same text. It must outlive the
  // reader.
  explicit PlanReader(core::record::EventStore& store, const Library* library = nullptr)
      : m_store(store), m_library(library) {}

  // Besides the troubles of storedText: kept.job-unreadable {place} {cause}, kept.technique-unreadable
  // {technique} {place} {cause}, kept.does-not-compose {cause}. `more`: texts by hash that are not in the store yet.
  core::base::Result<std::shared_ptr<const core::jobs::JobPlan>, core::base::Message> read(
      const std::string& jobId, const core::intents::TakeIn& takenIn,
      const std::map<std::string, std::string>& more = {});

  // Composes several beside each other, as many as the machine has hands for; `read` then has them ready, once each.
  // What cannot be read is left for `read` to tell.
  struct Wanted {
    std::string jobId;
    core::intents::TakeIn takenIn;
  };
  void readAhead(const std::vector<Wanted>& wanted);

 private:
  using Plan = core::base::Result<std::shared_ptr<const core::jobs::JobPlan>, core::base::Message>;
  // All that a plan is made of. Needs the store; what is made of it does not.
  struct Parts {
    std::string jobId;
    std::string jobHash;
    std::string jobText;
    core::craft::Catalogue catalogue;
  };
  core::base::Result<Parts, core::base::Message> partsOf(const std::string& jobId, const core::intents::TakeIn& takenIn,
                                                         const std::map<std::string, std::string>& more);
  static Plan planOf(const Parts& parts, const core::workflow::ThingWords& words);
  // Null where the library has no such technique, or another text of it.
  std::shared_ptr<const core::craft::Technique> atHand(const std::string& id, const std::string& text) const;

  core::record::EventStore& m_store;
  const Library* m_library;
  std::map<std::string, std::shared_ptr<const core::craft::Technique>> m_techniques;  // by hash
  std::map<std::string, Plan> m_ready;                                                // by job and texts
};

// The same for one plan alone.
core::base::Result<std::shared_ptr<const core::jobs::JobPlan>, core::base::Message> storedPlan(
    core::record::EventStore& store, const std::string& jobId, const core::intents::TakeIn& takenIn);

}  // namespace app::workbench
