#pragma once
// The techniques of a job under way as they are now beside those it is planned with: what taking them anew would
// change, and what stands against it.
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "app/workbench/library.h"
#include "app/workbench/stored_plan.h"
#include "core/base/message.h"
#include "core/jobs/job_state.h"
#include "core/workflow/renewal.h"

namespace app::workbench {

struct Renewal {
  std::vector<core::workflow::StepDifference> differences;  // empty only where the job does not compose any more
  // Of a step that comes, by its id: the title of one that is done and that it should have gone before.
  std::map<std::string, std::string> comesLate;
  // Why it cannot be taken; an empty message where it can. See core::jobs::refusedRenewal; or why the job does not
  // compose with the techniques as they are now.
  core::base::Message refused;
  core::record::TechniqueHashes techniques;
  std::vector<core::record::StoredText> texts;
};

// Nothing where the job's work would stay as it is. `jobText`: the file the job was taken in with.
std::optional<Renewal> renewalOf(const core::jobs::JobState& state, const std::string& jobText, const Library& library,
                                 PlanReader& plans);

}  // namespace app::workbench
