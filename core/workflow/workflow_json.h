#pragma once
// The workflow as data for `mountwright steps --json`: "mountwright-steps/1", times in minutes after the step.
#include "core/base/json.h"
#include "core/workflow/agenda.h"
#include "core/workflow/workflow.h"

namespace core::workflow {

// Writes "mountwright-steps/1" with the waits as they are expected, and the acts of a way.
base::Value stepsJson(const Agenda& agenda, craft::Way way);
// Writes the waits as they are stated.
base::Value stepsJson(const Workflow& workflow, craft::Way way = craft::Way::Every);
// Returns what identifies an act, or those of its steps that are worked: id, title and the ids of the steps.
base::Value actHeadJson(const Workflow& workflow, const Act& act, const std::vector<std::size_t>& steps);

}  // namespace core::workflow
