#pragma once
// The record of a job as people read it: what happened, when, in what room, with which batches, and what of it was
// taken back or corrected later. It is read from the events themselves, so that nothing is missing: a corrected entry
// is shown beside its correction.
//
// An alert that called without anybody answering is not in it, because no event records that.
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/jobs/job_state.h"

namespace core::jobs {

// The room at the time: the newest reading not later than it, or what the job's file plans with.
struct RoomThen {
  enum class From { Entered, Sensor, Planned };
  units::Room room;
  From from = From::Entered;
  std::int64_t readUtc = 0;  // ms; 0 for a planned one
};

struct BatchThen {
  std::string id;
  bool known = false;  // false where its entry was taken back or has not arrived yet; the rest is empty then
  std::int64_t mark = 0;
  std::string name;
  std::int64_t madeUtc = 0;                  // ms
  shop::Shelf shelf = shop::Shelf::Unknown;  // at the time it was used
};

struct TimelineEntry {
  record::TimelineKind kind = record::TimelineKind::Unknown;
  std::string eventId, intentId, deviceId;
  std::int64_t occurredUtc = 0;  // ms; when it happened
  std::int64_t recordedUtc = 0;  // ms; when it was written
  // Whether its device's clock is believable. If not, the entry follows what the device wrote before it.
  bool timeKnown = true;
  std::string zone;  // IANA zone of the device then
  base::Message what;
  std::string step, wait, figure;      // ids, "" where it concerns none
  std::string note, photograph, hash;  // ids, and the photograph's file
  std::optional<RoomThen> room;        // nothing where no room is known
  std::vector<BatchThen> batches;      // of a step done, and of the event that links them
  std::string takenBackBy;             // the event that took it back, "" for none
  std::string correctedBy;             // the later event that corrects it, "" for none
};

struct TimelineWords {
  // Returns the name of a figure. Without this function its id is shown.
  std::function<std::string(const design::Figure&)> figure;
};

enum class Order { OldestFirst, NewestFirst };

// `events` are those of the job and of all benches, in any order; duplicates are ignored. Returns fold order.
std::vector<TimelineEntry> timelineOf(const JobState& state, const shop::Shop& shop, std::vector<record::Event> events,
                                      Order order, const TimelineWords& words = {});

// Returns the room at an instant, in ms; nothing where no room is known.
std::optional<RoomThen> roomAt(const waits::RoomTrack& rooms, const std::optional<units::Room>& planned,
                               std::int64_t utc);

}  // namespace core::jobs
