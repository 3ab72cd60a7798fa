#include "core/record/decide_beside.h"

#include <algorithm>

#include "core/record/texts.h"

namespace core::record {
namespace {

using base::Message;
using base::Value;
using Drafts = std::vector<EventDraft>;

EventDraft draft(const char* type, const char* key, const std::string& text) {
  EventDraft made;
  made.type = type;
  made.payload = Value::object();
  made.payload.set(key, Value::text(text));
  return made;
}

// Empty where the step is the job's, or none is named.
Message refusedStep(const JobAt& job, const std::string& step) {
  if (step.empty() || job.state().plan->workflow.find(step) != nullptr) return {};
  return Message("record.no-such-step").with("step", step);
}

void tie(EventDraft& made, const std::string& step) {
  if (!step.empty()) made.payload.set("step", Value::text(step));
}

}  // namespace

BesideDecision decideBeside(const JobAt& job, const intents::AddNote& intent) {
  const std::string text = lines(intent.text);
  if (Message refused = refusedText(text, true); !refused.id.empty()) return refused;
  if (Message refused = refusedStep(job, intent.step); !refused.id.empty()) return refused;
  EventDraft added = draft(type::kNoteAdded, "text", text);
  tie(added, intent.step);
  return Drafts{added};
}

BesideDecision decideBeside(const JobAt& job, const intents::ChangeNote& intent) {
  const Note* note = job.state().beside.note(intent.note);
  if (note == nullptr) return Message("note.no-such-note");
  const std::string text = lines(intent.text);
  if (Message refused = refusedText(text, true); !refused.id.empty()) return refused;
  if (text == note->text) return Message("note.as-it-was");
  EventDraft changed = draft(type::kNoteChanged, "note", intent.note);
  changed.payload.set("text", Value::text(text));
  return Drafts{changed};
}

BesideDecision decideBeside(const JobAt& job, const intents::RemoveNote& intent) {
  if (job.state().beside.note(intent.note) == nullptr) return Message("note.no-such-note");
  return Drafts{draft(type::kNoteRemoved, "note", intent.note)};
}

BesideDecision decideBeside(const JobAt& job, const intents::KeepPhotograph& intent) {
  Photograph photograph;
  photograph.hash = intent.hash;
  photograph.bytes = intent.bytes;
  photograph.type = intent.type;
  photograph.width = intent.width;
  photograph.height = intent.height;
  photograph.caption = lines(intent.caption);
  if (Message refused = refusedPhotograph(photograph); !refused.id.empty()) return refused;
  if (Message refused = refusedStep(job, intent.step); !refused.id.empty()) return refused;
  const auto& shown = job.state().beside.photographs;
  const bool there = std::any_of(shown.begin(), shown.end(), [&](const Photograph& one) {
    return one.hash == intent.hash && one.step == intent.step;
  });
  if (there) return Message("photograph.there-already");
  EventDraft kept = draft(type::kPhotographKept, "hash", intent.hash);
  kept.payload.set("bytes", Value::integer(intent.bytes));
  kept.payload.set("type", Value::text(intent.type));
  kept.payload.set("width", Value::integer(intent.width));
  kept.payload.set("height", Value::integer(intent.height));
  if (!photograph.caption.empty()) kept.payload.set("caption", Value::text(photograph.caption));
  tie(kept, intent.step);
  return Drafts{kept};
}

BesideDecision decideBeside(const JobAt& job, const intents::ChangeCaption& intent) {
  if (job.state().beside.photograph(intent.photograph) == nullptr) return Message("photograph.no-such-photograph");
  const std::string caption = lines(intent.caption);
  if (Message refused = refusedText(caption, false); !refused.id.empty()) return refused;
  EventDraft changed = draft(type::kPhotographCaptioned, "photograph", intent.photograph);
  changed.payload.set("caption", Value::text(caption));
  return Drafts{changed};
}

BesideDecision decideBeside(const JobAt& job, const intents::RemovePhotograph& intent) {
  if (job.state().beside.photograph(intent.photograph) == nullptr) return Message("photograph.no-such-photograph");
  return Drafts{draft(type::kPhotographRemoved, "photograph", intent.photograph)};
}

BesideDecision decideBeside(const JobAt& job, const intents::LinkBatches& intent) {
  const auto index = job.state().plan->workflow.indexOf(intent.step);
  if (!index) return Message("record.no-such-step").with("step", intent.step);
  if (job.state().steps[*index].status != StepStatus::Done) {
    return Message("record.step-not-done").with("step", job.state().plan->workflow.steps[*index].title);
  }
  if (intent.batches.size() > kMostBatchesOfAStep) return Message("batch.too-many");
  for (const std::string& batch : intent.batches) {
    if (job.shop().stock.batch(batch) == nullptr) return Message("stock.no-such-batch");
  }
  EventDraft linked = draft(type::kBatchesLinked, "step", intent.step);
  linked.payload.set("batches", Value::texts(intent.batches));
  return Drafts{linked};
}

}  // namespace core::record
