#pragma once
// The workflow as data for `mountwright steps --json`: "mountwright-steps/1", times in minutes after the step.
#include "core/base/json.h"
#include "core/workflow/agenda.h"
#include "core/workflow/workflow.h"

namespace core::workflow {

// "mountwright-steps/1": the waits as they are expected. `expected` is of the same workflow.
base::Value stepsJson(const Agenda& agenda);
// As the waits are stated.
base::Value stepsJson(const Workflow& workflow);

}  // namespace core::workflow
