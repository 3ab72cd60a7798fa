#pragma once
// A job transferred from one record to another as a file: what is exported, and what of a file may be imported.
#include <optional>
#include <string>
#include <vector>

#include "app/workbench/stored_plan.h"
#include "core/base/problem.h"
#include "core/base/result.h"
#include "core/record/event_store.h"
#include "core/record/record_file.h"

namespace app::workbench {

// Returns the texts the job was ever planned from: its own, then its techniques'. One that cannot be read is left out.
std::vector<core::record::StoredText> textsOf(core::record::EventStore& store,
                                              const std::vector<core::record::Event>& events);

// Returns the hash of every text the job was ever planned from, each once, since a renewal may be taken back.
std::vector<std::string> hashesOf(const std::vector<core::record::Event>& events);

// Returns the file of the job with these events; see Workbench::handOn.
// `ownText`: the job's, where it is not in the store.
core::base::Result<std::string, core::base::Message> handOn(const std::string& jobId,
                                                            std::vector<core::record::Event> events,
                                                            core::record::EventStore& store,
                                                            std::optional<core::record::StoredText> ownText = {});

// A job of several identical pieces, as what one of them is: its own text, and the events that concern it.
struct PieceAlone {
  std::string jobId;
  core::record::StoredText job;
  std::vector<core::record::Event> events;
};
// `events` in fold order. The errors are export.no-such-piece {count}, and those of PlanReader.
core::base::Result<PieceAlone, core::base::Message> pieceAlone(const std::string& jobId, int number,
                                                               const std::vector<core::record::Event>& events,
                                                               core::record::EventStore& store);

// The part of a file that is not in the store yet, or the reasons why it may not be imported.
struct ReadyToImport {
  std::string jobId;  // "" where nothing may be imported
  std::vector<core::record::Event> events;
  std::vector<core::record::StoredText> texts;  // missing or damaged in the store
  std::size_t mended = 0;                       // of these, texts of events already in the record
  std::vector<core::base::Problem> problems;    // an error prevents the import, a notice does not
};

// Returns only a job that opens: it was planned from the file's events and the store's together, by every technique it
// was ever planned with. Nothing is stored here; the caller has to store the result whole. `deviceId` is this bench's,
// whose own events are accepted from its own record alone. Besides the problems of readRecord: import.wrong-hash,
// import.text-unused (a notice), import.event-differs, import.not-written-here, import.number-taken,
// import.too-many-plans, import.shop-left-out (a notice), import.other-job; the troubles of PlanReader; the store's
// own.
ReadyToImport readyToImport(const std::string& text, core::record::EventStore& store, const std::string& deviceId);

// Returns the events of a job to export: all but JobTakenIn events of another hash than the job's.
std::vector<core::record::Event> handedOn(std::vector<core::record::Event> events, const std::string& jobHash);

}  // namespace app::workbench
