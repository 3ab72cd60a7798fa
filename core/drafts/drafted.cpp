#include "core/drafts/drafted.h"

#include <algorithm>
#include <set>

#include "core/record/happening.h"

namespace core::drafts {

// This file uses the types of the record throughout.
using namespace record;

using base::Message;
using base::Value;

namespace {

class Folder {
 public:
  explicit Folder(Drafted& drafted) : m_drafted(drafted) {}

  void apply(const Event& event, bool live) {
    m_drafted.changedUtc = std::max(m_drafted.changedUtc, event.occurredUtc);
    std::visit(OneOf{[&](const DesignBegun& begun) { begin(begun, event.occurredUtc); },
                     [&](const DesignChanged& changed) {
                       m_changes.insert(event.intentId);
                       m_drafted.putAway = false;
                       if (live) change(changed, event.intentId);
                     },
                     [&](const Undone& undone) {
                       m_drafted.putAway = false;
                       if (live && m_changes.contains(undone.intent)) m_drafted.lastUndo = event.intentId;
                     },
                     [&](const DesignTaken& taken) { m_drafted.jobs.push_back(taken.job); },
                     [&](const DesignPutAway&) { m_drafted.putAway = true; },
                     [&](const DesignBroughtBack&) { m_drafted.putAway = false; },
                     [&](const StandsOutside<kOfDesign> auto&) { m_drafted.spoilt = true; }},
               happeningOf(event));
  }

 private:
  void begin(const DesignBegun& begun, std::int64_t utc) {
    m_drafted.begunUtc = utc;
    m_drafted.from = begun.from;
    m_drafted.spoilt = m_drafted.spoilt || !begun.document;
    if (begun.document) m_drafted.document = *begun.document;
  }

  void change(const DesignChanged& change, const std::string& intentId) {
    auto changed = base::patched(m_drafted.document, change.patch.value_or(Value()));
    if (!changed) {
      m_drafted.spoilt = true;
      return;
    }
    m_drafted.document = std::move(changed).value();
    m_drafted.lastChange = intentId;
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

namespace {

using Decision = base::Result<std::vector<EventDraft>, Message>;

struct DesignDecider {
  const Drafted& drafted;

  Decision operator()(const intents::BeginDesign& intent) const {
    return std::vector{draftOf(DesignBegun{intent.document, intent.from})};
  }
  Decision operator()(const intents::ChangeDesign& intent) const {
    if (drafted.spoilt) return Message("design.spoilt");
    if (const auto changed = base::patched(drafted.document, intent.patch); !changed) return changed.error();
    return std::vector{draftOf(DesignChanged{intent.patch})};
  }
  Decision operator()(const intents::UndoChange&) const {
    if (drafted.spoilt) return Message("design.spoilt");
    if (drafted.lastChange.empty()) return Message("design.nothing-to-undo");
    return undone(drafted.lastChange);
  }
  Decision operator()(const intents::RedoChange&) const {
    if (drafted.spoilt) return Message("design.spoilt");
    if (drafted.lastUndo.empty()) return Message("design.nothing-to-redo");
    return undone(drafted.lastUndo);
  }
  Decision operator()(const intents::PutDesignAway&) const {
    return drafted.putAway ? std::vector<EventDraft>() : std::vector{draftOf(DesignPutAway())};
  }
  Decision operator()(const intents::BringDesignBack&) const {
    return drafted.putAway ? std::vector{draftOf(DesignBroughtBack())} : std::vector<EventDraft>();
  }
  Decision operator()(const intents::TakeDesign& intent) const { return std::vector{draftOf(DesignTaken{intent.job})}; }

  static Decision undone(const std::string& intentId) {
    return std::vector{draftOf(Undone{intentId}, EventDraft::Stream::Design)};
  }
};

}  // namespace

base::Result<std::vector<EventDraft>, Message> decide(const Drafted* drafted, const intents::DesignIntent& intent) {
  if (drafted == nullptr && !std::holds_alternative<intents::BeginDesign>(intent))
    return Message("design.no-such-design");
  const Drafted none;
  return std::visit(DesignDecider{drafted == nullptr ? none : *drafted}, intent);
}

}  // namespace core::drafts
