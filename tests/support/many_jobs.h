#pragma once
// A record with many jobs in it, made of two that were really worked: one to its end, one to where a wait runs.
#include <cstddef>
#include <string>

#include "app/clocks/clock.h"
#include "app/workbench/library.h"
#include "core/intents/intent.h"
#include "core/jobs/job_state.h"
#include "core/record/event_store.h"

namespace tests {

struct ManyJobs {
  int jobs = 500;
  std::size_t events = 200;  // of each
  int inHand = 12;           // jobs under way; all others are worked to their end
};

// The demo job without its leaf, which is worked to its end in less than two hundred events.
std::string plainJob();

// Returns an act that takes the job one step forward; the job must not be finished.
core::intents::Intent nextAct(const core::jobs::JobAt& job);

// Appends them all at once under the store's newest clock, each with a text of its own. Returns the number of events,
// with those of the bench; 0 where it failed. `jobText` is to be a job file with a title and a reference.
std::size_t makeManyJobs(const ManyJobs& many, core::record::EventStore& store, const app::clocks::Clock& clock,
                         const app::workbench::Library& library, const std::string& jobText);

}  // namespace tests
