#include "core/record/drafted.h"

#include <algorithm>
#include <set>

namespace core::record {

using base::Message;
using base::Value;

namespace {

EventDraft designDraft(const char* type) {
  EventDraft draft;
  draft.stream = EventDraft::Stream::Design;
  draft.type = type;
  draft.payload = Value::object();
  return draft;
}

EventDraft undone(const std::string& intent) {
  EventDraft draft = designDraft(type::kUndone);
  draft.payload.set("intent", Value::text(intent));
  return draft;
}

class Folder {
 public:
  explicit Folder(Drafted& drafted) : m_drafted(drafted) {}

  void apply(const Event& event, bool live) {
    m_drafted.changedUtc = std::max(m_drafted.changedUtc, event.occurredUtc);
    if (event.version != 1) {
      m_drafted.spoilt = true;
    } else if (event.type == type::kDesignBegun) {
      begin(event);
    } else if (event.type == type::kDesignChanged) {
      m_changes.insert(event.intentId);
      m_drafted.putAway = false;
      if (live) change(event);
    } else if (event.type == type::kUndone) {
      m_drafted.putAway = false;
      if (live && m_changes.contains(textOf(event.payload, "intent"))) m_drafted.lastUndo = event.intentId;
    } else if (event.type == type::kDesignTaken) {
      m_drafted.jobs.push_back(textOf(event.payload, "job"));
    } else if (event.type == type::kDesignPutAway || event.type == type::kDesignBroughtBack) {
      m_drafted.putAway = event.type == type::kDesignPutAway;
    } else {
      m_drafted.spoilt = true;
    }
  }

 private:
  void begin(const Event& event) {
    m_drafted.begunUtc = event.occurredUtc;
    m_drafted.from = textOf(event.payload, "from");
    const Value* document = event.payload.find("document");
    m_drafted.spoilt = m_drafted.spoilt || document == nullptr;
    if (document != nullptr) m_drafted.document = *document;
  }

  void change(const Event& event) {
    const Value* patch = event.payload.find("patch");
    auto changed = base::patched(m_drafted.document, patch == nullptr ? Value() : *patch);
    if (!changed) {
      m_drafted.spoilt = true;
      return;
    }
    m_drafted.document = std::move(changed).value();
    m_drafted.lastChange = event.intentId;
    m_drafted.lastUndo.clear();
  }

  Drafted& m_drafted;
  std::set<std::string> m_changes;  // intents of changes, live or not
};

}  // namespace

std::string Drafted::text() const {
  constexpr int kIndent = 2;
  return base::writeJson(document, kIndent) + '\n';
}

Drafted foldDrafted(const std::string& id, std::vector<Event> events) {
  Drafted drafted;
  drafted.id = id;
  arrange(events);
  const std::set<std::string> voided = voidedIntents(events);
  Folder folder(drafted);
  for (const Event& event : events) folder.apply(event, !voided.contains(event.intentId));
  return drafted;
}

void follow(Drafted& drafted, const Event& event) { Folder(drafted).apply(event, true); }

EventDraft beginDraft(const Value& document, const std::string& from) {
  EventDraft draft = designDraft(type::kDesignBegun);
  draft.payload.set("document", document);
  if (!from.empty()) draft.payload.set("from", Value::text(from));
  return draft;
}

base::Result<EventDraft, Message> changeDraft(const Drafted& drafted, const Value& patch) {
  if (drafted.spoilt) return Message("design.spoilt");
  if (const auto changed = base::patched(drafted.document, patch); !changed) return changed.error();
  EventDraft draft = designDraft(type::kDesignChanged);
  draft.payload.set("patch", patch);
  return draft;
}

base::Result<EventDraft, Message> undoDraft(const Drafted& drafted) {
  if (drafted.spoilt) return Message("design.spoilt");
  if (drafted.lastChange.empty()) return Message("design.nothing-to-undo");
  return undone(drafted.lastChange);
}

base::Result<EventDraft, Message> redoDraft(const Drafted& drafted) {
  if (drafted.spoilt) return Message("design.spoilt");
  if (drafted.lastUndo.empty()) return Message("design.nothing-to-redo");
  return undone(drafted.lastUndo);
}

EventDraft takenDraft(const std::string& jobId) {
  EventDraft draft = designDraft(type::kDesignTaken);
  draft.payload.set("job", Value::text(jobId));
  return draft;
}

EventDraft movedDraft(bool away) { return designDraft(away ? type::kDesignPutAway : type::kDesignBroughtBack); }

}  // namespace core::record
