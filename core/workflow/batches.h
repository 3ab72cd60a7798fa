#pragma once
// Batches of what is made ready beforehand and keeps only so long. A batch is as old as the last thing done to it; one
// that has grown old while it is still needed is made anew, by the same steps.
#include <cstddef>
#include <string>
#include <vector>

#include "core/workflow/workflow.h"

namespace core::workflow {

struct Batch {
  std::string technique;
  std::vector<std::size_t> steps;  // that make it, in list order
  std::vector<std::size_t> users;  // steps of other techniques that need it as it is made, in list order
  units::Duration keeps;
};

// Returns the batches of a workflow, in list order of their first steps.
std::vector<Batch> batchesOf(const Workflow& workflow);

}  // namespace core::workflow
