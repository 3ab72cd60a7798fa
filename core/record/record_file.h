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

struct ReadRecord {
  std::optional<RecordFile> record;  // nothing where there is an error
  base::Problems problems;
};

// Checks everything that can be told without the store and without hashing: kinds, sizes and ranges of each value,
// every event of this job's stream or a bench's, no event id and no place in a device's count twice, one taking in.
// Event types and versions that are not known here are as good as any.
ReadRecord readRecord(std::string_view text);

// Clocks beyond this are mistakes: a single one would push every later act of all devices behind it. 2100-01-01T00:00Z.
inline constexpr std::int64_t kLatestBelievableUtc = 4'102'444'800'000;

// Of events of benches those that made a difference to a job: what its steps share with others, what was taken back.
std::vector<Event> benchEventsOf(const std::vector<Event>& bench, const std::vector<Event>& own,
                                 const std::set<std::string>& sharedSteps);

}  // namespace core::record
