#pragma once
// The workflow as data for `mountwright steps --json`: "mountwright-steps/1", times in minutes after the step.
#include "core/base/json.h"
#include "core/workflow/workflow.h"

namespace core::workflow {

base::Value stepsJson(const Workflow& workflow);

}  // namespace core::workflow
