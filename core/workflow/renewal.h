#pragma once
// Finds what changes for a job whose techniques are replaced: compares its workflow with the one it would have. Steps
// are the same where their ids are.
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/workflow/workflow.h"

namespace core::workflow {

enum class StepChange { Comes, Goes, Differs };

struct StepDifference {
  StepChange change = StepChange::Differs;
  std::string step;   // id
  std::string title;  // as in the new workflow; for a step that is dropped, as in the old one
  // The differences of a step that changes, each once: renewal.title {before}, .called, .how, .caution, .materials,
  // .tools, .time {before} {after}, .source, .checks, .figures, .left, .resource, .of-shop, .keeps, .reversal, .facts,
  // .faults; of its waits {wait}: .wait {before} {after}, .window {before} {after} (its closing), .wait-other (how the
  // room affects it, or whether it closes), .wait-means, .wait-room, .wait-attended, .wait-punctual, .wait-test,
  // .wait-source, .wait-missed, .wait-called, .wait-comes, .wait-goes.
  std::vector<base::Message> what;
  // It makes, ends or waits for something else: where the step is done already, another act was done.
  bool contradicts = false;
};

// In the order of `after`; dropped steps are last, in the order of `before`.
std::vector<StepDifference> renewalOf(const Workflow& before, const Workflow& after);

}  // namespace core::workflow
