#pragma once
// The present techniques of a job under way, compared with those it is planned with: what adopting them would change,
// and what prevents it.
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
  // For a new step, by its id: the title of a finished step that it should have preceded.
  std::map<std::string, std::string> comesLate;
  // Why the renewal is not possible; an empty message where it is. See core::jobs::refusedRenewal; or why the job does
  // not compose with the techniques as they are now.
  core::base::Message refused;
  core::record::TechniqueHashes techniques;
  std::vector<core::record::StoredText> texts;
};

// Returns nullopt where the job's work would stay as it is. `jobText`: the file the job was begun with.
std::optional<Renewal> renewalOf(const core::jobs::JobState& state, const std::string& jobText, const Library& library,
                                 PlanReader& plans);

}  // namespace app::workbench
