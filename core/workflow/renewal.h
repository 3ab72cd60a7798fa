#pragma once
// What changes for a job where its techniques are taken anew: its workflow as it is beside the one it would be. Steps
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
  std::string title;  // as it would be; of a step that goes as it is
  // Of one that differs, what, each once: renewal.title {before}, .called, .how, .caution, .materials, .tools, .time
  // {before} {after}, .source, .checks, .figures, .left, .resource, .of-shop, .keeps, .reversal, .facts, .faults; of
  // its waits {wait}: .wait {before} {after}, .window {before} {after} (its closing), .wait-other (how the room tells
  // on it, or whether it closes), .wait-means, .wait-room, .wait-attended, .wait-test, .wait-source, .wait-missed,
  // .wait-called, .wait-comes, .wait-goes.
  std::vector<base::Message> what;
  // What it makes, ends or waits for is another: whoever did it before did something else.
  bool contradicts = false;
};

// In the order of `after`, those that go last in the order of `before`.
std::vector<StepDifference> renewalOf(const Workflow& before, const Workflow& after);

}  // namespace core::workflow
