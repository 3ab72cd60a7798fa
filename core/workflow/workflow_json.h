#pragma once
// The workflow as data for `mountwright steps --json`: "mountwright-steps/1", times in minutes after the step.
#include "core/base/json.h"
#include "core/workflow/agenda.h"
#include "core/workflow/workflow.h"

namespace core::workflow {

// Writes "mountwright-steps/1" with the waits as they are expected. `expected` refers to the same workflow.
base::Value stepsJson(const Agenda& agenda);
// Writes the waits as they are stated.
base::Value stepsJson(const Workflow& workflow);

}  // namespace core::workflow
