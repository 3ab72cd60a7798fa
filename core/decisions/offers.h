#pragma once
// Lists the acts possible on a job now. A key, a pedal or a voice can ask only for an act of this list.
#include <vector>

#include "core/base/message.h"
#include "core/intents/intent.h"
#include "core/jobs/job_state.h"

namespace core::decisions {

struct Offer {
  intents::Intent intent;  // complete: it can be submitted unchanged; finishing a step answers all of its checks
  base::Message label;     // short: "Done", "Tacky", "Take back"
};

// Returns the offers by importance: the step's own acts first, then touch tests, then undo and redo, then faults of the
// step shown and of the last one done.
std::vector<Offer> offers(const jobs::JobAt& job);

}  // namespace core::decisions
