#pragma once
// The record of a job as people read it: what happened, when, in what room, with which batches, and what of it was
// taken back or put right later. Read from the events themselves, so that nothing that ever happened is missing: what
// was corrected stands beside its correction.
//
// Not in it, because it is in no event: that an alert called without anybody answering.
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
  std::int64_t readUtc = 0;  // ms; 0 of a planned one
};

struct BatchThen {
  std::string id;
  bool known = false;  // false where its entry was taken back or has not come yet; the rest is empty then
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
  // Whether its device's clock can be believed. Where not, it stands after what the device wrote before.
  bool timeKnown = true;
  std::string zone;  // IANA zone of the device then
  base::Message what;
  std::string step, wait, figure;      // ids, "" where it is about none
  std::string note, photograph, hash;  // ids, and the photograph's file
  std::optional<RoomThen> room;        // nothing where nobody has said
  std::vector<BatchThen> batches;      // of a step done, and of the event that links them
  std::string takenBackBy;             // the event that took it back, "" where it stands
  std::string correctedBy;             // the later event that says otherwise, "" where it stands as it is
};

struct TimelineWords {
  // What a figure is called; its id where nothing is given.
  std::function<std::string(const design::Figure&)> figure;
};

enum class Order { OldestFirst, NewestFirst };

// `events`: those of the job and of all benches, in any order; duplicates are ignored. In fold order.
std::vector<TimelineEntry> timelineOf(const JobState& state, const shop::Shop& shop, std::vector<record::Event> events,
                                      Order order, const TimelineWords& words = {});

// The room at an instant, ms; nothing where nobody has said.
std::optional<RoomThen> roomAt(const waits::RoomTrack& rooms, const std::optional<units::Room>& planned,
                               std::int64_t utc);

}  // namespace core::jobs
