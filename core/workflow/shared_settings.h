#pragma once
// Equal settings of a tool are made once: where a tool stands as a step would set it, the step is not one to be done.
#include <cstddef>
#include <optional>
#include <vector>

#include "core/workflow/expand.h"
#include "core/workflow/workflow.h"

namespace core::workflow {

// Returns the steps without those that would set a tool as another of the same technique has set it. Whoever used the
// setting of a step left out uses that of the one that stays, and waits for what the step left out waited for. Not
// shared is a setting that is to be made afresh, that opens a window or waits for one, that another step ends, or
// between whose uses the tool has to be set otherwise; nor a step that does more than set a tool (that ends facts or
// measures). Requires settled needs.
std::vector<DraftStep> withSharedSettings(std::vector<DraftStep> drafts);

// Two steps that set one tool otherwise, and a step that would find it at the wrong one of the two, by index.
struct SettingsClash {
  std::size_t one = 0, other = 0, step = 0;
};

// Returns the first two settings of a tool of which neither can be used up before the other is made; nothing where
// there are none. Requires settled needs.
std::optional<SettingsClash> settingsClash(const std::vector<DraftStep>& drafts);

// Returns whether each tool stands as its users need it, the steps worked in the order of the workflow.
bool areSettingsHeld(const Workflow& workflow);

}  // namespace core::workflow
