#pragma once
// A job handed from one record to another as a file: what goes into it, and what of a file may be taken up.
#include <string>
#include <vector>

#include "app/workbench/stored_plan.h"
#include "core/base/problem.h"
#include "core/base/result.h"
#include "core/record/event_store.h"
#include "core/record/record_file.h"

namespace app::workbench {

// The texts the job was ever planned from: its own, then its techniques'. One that cannot be read is left out.
std::vector<core::record::StoredText> textsOf(core::record::EventStore& store,
                                              const std::vector<core::record::Event>& events);

// The hashes of every text the job was ever planned from, each once: a renewal may be taken back.
std::vector<std::string> hashesOf(const std::vector<core::record::Event>& events);

// The file of a job whose events these are; see Workbench::handOn.
core::base::Result<std::string, core::base::Message> handOn(
    const std::string& jobId, core::base::Result<std::vector<core::record::Event>, core::base::Message> events,
    core::record::EventStore& store);

// What of a file is not in the store yet, or why nothing of it may go there.
struct ReadyToImport {
  std::string jobId;  // "" where nothing may
  std::vector<core::record::Event> events;
  std::vector<core::record::StoredText> texts;  // that the store has not, or not whole
  std::size_t mended = 0;                       // of these, of what the record has already
  std::vector<core::base::Problem> problems;    // an error keeps it out, a notice does not
};

// What is ready opens: the job was planned with the file's events and the store's together, by every technique it was
// ever planned with. Nothing is kept here, and what is ready is to be kept whole. `deviceId`: of this bench, whose own
// events come from its own record and from nowhere else.
// Besides the problems of readRecord: import.wrong-hash, import.text-unused (a notice), import.event-differs,
// import.not-written-here, import.number-taken, import.too-many-plans, import.shop-left-out (a notice),
// import.other-job; the troubles of PlanReader; the store's own.
ReadyToImport readyToImport(const std::string& text, core::record::EventStore& store, const std::string& deviceId);

// What of a job's events is handed on: all but takings in that did not take in the job of that hash.
std::vector<core::record::Event> handedOn(std::vector<core::record::Event> events, const std::string& jobHash);

}  // namespace app::workbench
