#pragma once
// A job with its record as one file, "mountwright-record/1": the texts it was imported with and every event that
// changed it. One tablet writes it for another, and it is read as untrusted input.
#include <cstddef>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/base/problem.h"
#include "core/record/event.h"
#include "core/record/event_store.h"

namespace core::record {

// A record holds its job's text written as JSON once more, and years of notes: it may be longer than a job file. The
// writer obeys this limit too, so that every written record can be read.
inline constexpr std::size_t kMaximumRecordBytes = 16U * 1024U * 1024U;

struct RecordFile {
  std::string job;
  std::vector<StoredText> texts;
  std::vector<Event> events;
};

// Writes keys and events in a fixed order: the same record gives the same bytes.
std::string writeRecord(const RecordFile& record);

// Returns whether a file claims to be such a record, of whatever version.
bool isRecordFile(std::string_view text);

struct ReadRecord {
  std::optional<RecordFile> record;  // nothing where there is an error
  base::Problems problems;
};

// Checks everything that can be checked without the store and without hashing: kinds, sizes and ranges of each value,
// that every event is of this job's stream or of the bench that wrote it, that no event id and no number of a device
// occurs twice, and that the job is imported once. Unknown event types and versions are accepted. A clock that is not
// believable is a notice (import.clock-not-believed): its event is placed by its device's count, see `arrange`.
ReadRecord readRecord(std::string_view text);

}  // namespace core::record
