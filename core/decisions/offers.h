#pragma once
// What may be asked of a job now. Whatever asks for the maker, a key, a pedal or a voice, asks for something of this list.
#include <vector>

#include "core/base/message.h"
#include "core/intents/intent.h"
#include "core/jobs/job_state.h"

namespace core::decisions {

struct Offer {
  intents::Intent intent;  // whole: it can be submitted as it stands; finishing a step answers all of its checks
  base::Message label;  // short: "Done", "Tacky", "Take back"
};

// In the order in which they matter: the step's own acts first, then touch tests, then undo and redo, then
// faults of the step shown and of the last one done.
std::vector<Offer> offers(const jobs::JobAt& job);

}  // namespace core::decisions
