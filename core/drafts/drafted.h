#pragma once
// A design under way at the desk: the document of a job file, and every change made to it. Nothing has to be saved,
// since every change is an event; a design goes to the bench as the job file it has become.
//
// A change is a JSON Patch (RFC 6902) of the document. design::readDesign decides whether the document is a job that
// can be made; an unfinished one is stored like a finished one.
#include <string>
#include <vector>

#include "core/base/json.h"
#include "core/base/message.h"
#include "core/base/result.h"
#include "core/intents/design.h"
#include "core/record/event.h"

namespace core::drafts {

struct Drafted {
  std::string id;
  base::Value document;    // as of the live changes
  std::string from;        // the job or design it was begun from; "" for none
  std::string lastChange;  // intent of the newest live change, "" for none: what Undo takes back
  std::string lastUndo;    // of the newest live undo since which nothing was changed, "" for none: what Redo takes back
  std::vector<std::string> jobs;  // that went to the bench from it, oldest first
  std::int64_t begunUtc = 0;      // ms
  std::int64_t changedUtc = 0;    // of the newest event
  bool putAway = false;           // out of sight; any change brings it back
  // Events that could not be read or applied: nothing may be changed on top of them.
  bool spoilt = false;

  // Returns the job file, indented by two spaces a level and with a final line end.
  std::string text() const;
};

// Folds events in any order; duplicates are ignored.
Drafted foldDrafted(const std::string& id, std::vector<record::Event> events);

// Adds to `drafted` one event that is newer than all it was folded from; the result equals a fold of all of them.
void follow(Drafted& drafted, const record::Event& event);

// Refusals: design.no-such-design where `drafted` is null and none is begun; json.patch, design.spoilt,
// design.nothing-to-undo, design.nothing-to-redo. Returns no drafts where nothing would change.
base::Result<std::vector<record::EventDraft>, base::Message> decide(const Drafted* drafted,
                                                                    const intents::DesignIntent& intent);

}  // namespace core::drafts
