#pragma once
// A job with its record as one file, "mountwright-record/1": the texts it was taken in with and every event that made
// it what it is. Written for one tablet to hand to another, and read as anybody's.
#include <cstddef>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/base/problem.h"
#include "core/record/event.h"
#include "core/record/event_store.h"

namespace core::record {

// A record holds its job's text written as JSON once more, and years of notes: it may be longer than a job file.
// Whoever writes one holds to this too, so that what was handed on can be taken up.
inline constexpr std::size_t kMaximumRecordBytes = 16U * 1024U * 1024U;

struct RecordFile {
  std::string job;
  std::vector<StoredText> texts;
  std::vector<Event> events;
};

// Keys and events in a fixed order: the same record gives the same bytes.
std::string writeRecord(const RecordFile& record);

// Whether a file says that it is such a record, of whatever version.
bool isRecordFile(std::string_view text);

struct ReadRecord {
  std::optional<RecordFile> record;  // nothing where there is an error
  base::Problems problems;
};

// Checks everything that can be told without the store and without hashing: kinds, sizes and ranges of each value,
// every event of this job's stream or of the bench that wrote it, no event id and no place in a device's count twice,
// one taking in. Event types and versions that are not known here are as good as any. A clock nobody can believe is a
// notice (import.clock-not-believed): its event is put by its device's count, see `arrange`.
ReadRecord readRecord(std::string_view text);

}  // namespace core::record
