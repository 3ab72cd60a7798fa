#pragma once
// The record of the data folder, where there is one, to read from: beside a bench that works with it.
#include <memory>
#include <ostream>

#include "app/commands/command_line.h"
#include "app/commands/input.h"
#include "app/workbench/kept_jobs.h"
#include "core/shop/shop.h"

namespace app::commands {

struct KeptRecord {
  std::unique_ptr<core::record::EventStore> store;
  std::unique_ptr<workbench::KeptJobs> jobs;  // null where there is no record
  core::shop::Shop shop;
};

OrExit<KeptRecord> openKeptRecord(const CommandLine& line, std::ostream& err);

// Returns what was learned from this maker's own times, as of the newest of them, so that the same record always gives
// the same result. The result is empty where there is no record; one that cannot be read is reported on `err`, and
// nothing is learned.
core::waits::Learning learnedFrom(const CommandLine& line, std::ostream& err);

}  // namespace app::commands
