#pragma once
// The job a care sheet is for: from a file, with everything the record holds of it, or from the record alone.
#include <memory>
#include <ostream>
#include <string>
#include <vector>

#include "app/commands/input.h"
#include "core/jobs/job_state.h"
#include "core/shop/shop.h"

namespace app::commands {

struct CareJob {
  core::jobs::JobState state;
  core::shop::Shop shop;
  std::vector<core::record::Event> events;  // the job's and all benches'; none where it is not in the record
  std::string jobText;
  bool recorded = false;
};

// The record is read where there is one and never made; the record of a file is the job entered with the same bytes,
// the newest of several. A file that is in no record is composed with the techniques at hand.
OrExit<CareJob> readCareJob(const CommandLine& line, std::ostream& err);

}  // namespace app::commands
