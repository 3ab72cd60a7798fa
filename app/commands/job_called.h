#pragma once
// Jobs of a record as a person names them: by reference or by id.
#include <string>
#include <vector>

#include "app/workbench/job_entry.h"
#include "core/base/message.h"
#include "core/base/result.h"

namespace app::commands {

// Returns the only job of that reference or id, or why there is none: called.no-jobs, called.no-such-job {name}
// {names}, called.several-jobs {name} {names}. The pointer is to one of `entries`.
core::base::Result<const workbench::JobEntry*, core::base::Message> jobCalled(
    const std::vector<workbench::JobEntry>& entries, const std::string& name);

}  // namespace app::commands
