#include "core/decisions/decide_beside.h"

#include <algorithm>

#include "core/record/happening.h"
#include "core/record/texts.h"

namespace core::decisions {

// This file uses the types of the record throughout.
using namespace record;
namespace {

using base::Message;
using Drafts = std::vector<EventDraft>;

// Empty where the step is the job's, or none is named.
Message refusedStep(const jobs::JobAt& job, const std::string& step) {
  if (step.empty() || job.state().plan->workflow.find(step) != nullptr) return {};
  return Message("record.no-such-step").with("step", step);
}

}  // namespace

BesideDecision decideBeside(const jobs::JobAt& job, const intents::AddNote& intent) {
  const std::string text = lines(intent.text);
  if (Message refused = refusedText(text, true); !refused.id.empty()) return refused;
  if (Message refused = refusedStep(job, intent.step); !refused.id.empty()) return refused;
  return Drafts{draftOf(NoteAdded{text, intent.step})};
}

BesideDecision decideBeside(const jobs::JobAt& job, const intents::ChangeNote& intent) {
  const jobs::Note* note = job.state().beside.note(intent.note);
  if (note == nullptr) return Message("note.no-such-note");
  const std::string text = lines(intent.text);
  if (Message refused = refusedText(text, true); !refused.id.empty()) return refused;
  if (text == note->text) return Message("note.as-it-was");
  return Drafts{draftOf(NoteChanged{intent.note, text})};
}

BesideDecision decideBeside(const jobs::JobAt& job, const intents::RemoveNote& intent) {
  if (job.state().beside.note(intent.note) == nullptr) return Message("note.no-such-note");
  return Drafts{draftOf(NoteRemoved{intent.note})};
}

BesideDecision decideBeside(const jobs::JobAt& job, const intents::KeepPhotograph& intent) {
  jobs::Photograph photograph;
  photograph.hash = intent.hash;
  photograph.bytes = intent.bytes;
  photograph.type = intent.type;
  photograph.width = intent.width;
  photograph.height = intent.height;
  photograph.caption = lines(intent.caption);
  if (Message refused = jobs::refusedPhotograph(photograph); !refused.id.empty()) return refused;
  if (Message refused = refusedStep(job, intent.step); !refused.id.empty()) return refused;
  const auto& shown = job.state().beside.photographs;
  const bool there = std::any_of(shown.begin(), shown.end(), [&](const jobs::Photograph& one) {
    return one.hash == intent.hash && one.step == intent.step;
  });
  if (there) return Message("photograph.there-already");
  return Drafts{draftOf(PhotographKept{intent.hash, intent.bytes, intent.type, intent.width, intent.height,
                                       photograph.caption, intent.step})};
}

BesideDecision decideBeside(const jobs::JobAt& job, const intents::ChangeCaption& intent) {
  if (job.state().beside.photograph(intent.photograph) == nullptr) return Message("photograph.no-such-photograph");
  const std::string caption = lines(intent.caption);
  if (Message refused = refusedText(caption, false); !refused.id.empty()) return refused;
  return Drafts{draftOf(PhotographCaptioned{intent.photograph, caption})};
}

BesideDecision decideBeside(const jobs::JobAt& job, const intents::RemovePhotograph& intent) {
  if (job.state().beside.photograph(intent.photograph) == nullptr) return Message("photograph.no-such-photograph");
  return Drafts{draftOf(PhotographRemoved{intent.photograph})};
}

BesideDecision decideBeside(const jobs::JobAt& job, const intents::LinkBatches& intent) {
  const auto index = job.state().plan->workflow.indexOf(intent.step);
  if (!index) return Message("record.no-such-step").with("step", intent.step);
  if (job.state().steps[*index].status != jobs::StepStatus::Done) {
    return Message("record.step-not-done").with("step", job.state().plan->workflow.steps[*index].title);
  }
  if (intent.batches.size() > jobs::kMostBatchesOfAStep) return Message("batch.too-many");
  for (const std::string& batch : intent.batches) {
    if (job.shop().stock.batch(batch) == nullptr) return Message("stock.no-such-batch");
  }
  return Drafts{draftOf(BatchesLinked{intent.step, intent.batches})};
}

}  // namespace core::decisions
