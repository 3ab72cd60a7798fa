#pragma once
// The only entry point for acts: an intent becomes events, or a refusal with its reason. Nothing is changed here.
#include <vector>

#include "core/base/message.h"
#include "core/base/result.h"
#include "core/intents/intent.h"
#include "core/jobs/job_state.h"

namespace core::decisions {

using Refusal = base::Message;

// Decides every intent on a job that is already imported. TakeIn has no state yet: see takeInDraft.
base::Result<std::vector<record::EventDraft>, Refusal> decide(const jobs::JobAt& job, const intents::Intent& intent);

record::EventDraft takeInDraft(const intents::TakeIn& intent);

}  // namespace core::decisions
