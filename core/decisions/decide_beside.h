#pragma once
// Decisions about notes, photographs and batches. Only decide.cpp calls these.
#include <vector>

#include "core/base/result.h"
#include "core/intents/intent.h"
#include "core/jobs/job_state.h"

namespace core::decisions {

using BesideDecision = base::Result<std::vector<record::EventDraft>, base::Message>;

// Refusals: those of texts.h; record.no-such-step where the job has no step of that name.
BesideDecision decideBeside(const jobs::JobAt& job, const intents::AddNote& intent);
// note.no-such-note, note.as-it-was; those of texts.h.
BesideDecision decideBeside(const jobs::JobAt& job, const intents::ChangeNote& intent);
BesideDecision decideBeside(const jobs::JobAt& job, const intents::RemoveNote& intent);
// Refusals: those of refusedPhotograph; photograph.there-already where the job shows the same one for the same step.
BesideDecision decideBeside(const jobs::JobAt& job, const intents::KeepPhotograph& intent);
// photograph.no-such-photograph.
BesideDecision decideBeside(const jobs::JobAt& job, const intents::ChangeCaption& intent);
BesideDecision decideBeside(const jobs::JobAt& job, const intents::RemovePhotograph& intent);
// record.step-not-done, stock.no-such-batch, batch.too-many.
BesideDecision decideBeside(const jobs::JobAt& job, const intents::LinkBatches& intent);

}  // namespace core::decisions
