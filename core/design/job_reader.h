#pragma once
// The strict reader of job files ("mountwright-job/1"). Reads the whole format; what this version does not work
// yet is refused by name.
#include "core/base/json.h"
#include "core/base/problem.h"
#include "core/design/job.h"

namespace core::design {

struct ReadJob {
  Job job;
  // Whether enough was read for the layout to be worth trying, so that conflicts are told along with mistakes.
  // Bands, lines and leaf that could not be read are left out of the job then.
  bool canLayOut = false;
};

ReadJob readJob(const base::ParsedJson& json, base::Problems& problems);

}  // namespace core::design
