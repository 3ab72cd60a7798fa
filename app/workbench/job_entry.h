#pragma once
// A job's line in a list.
#include <cstdint>
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/jobs/bench_place.h"
#include "core/units/span.h"

namespace app::workbench {

struct JobEntry {
  std::string id;
  std::string title;
  std::string reference;
  std::string client;
  std::string due;               // "2026-12-11"; "" for none
  double width = 0, height = 0;  // mm, of the finished piece; 0 where it cannot be read
  std::string jobHash;
  // Holds the reason where the job cannot be opened, because its texts are missing or can no longer be read; the
  // members below have no meaning then.
  core::base::Message trouble;

  bool archived = false;
  std::int64_t changedUtc = 0;  // ms, when its newest event happened

  // The job's state. A job rests where neither time nor the room can change what it shows: its line is valid until the
  // next act in it. Any other line is as of the last act or heartbeat; Workbench::at returns the state now.
  bool rests = true;
  core::jobs::BenchPlace::Kind place = core::jobs::BenchPlace::Kind::Finished;
  std::string step;  // title of the step to show, or of the missed one; "" for none
  std::size_t done = 0, all = 0;

  struct Run {
    std::string wait;         // id
    std::string title;        // the state that the wait is for
    core::units::Span opens;  // since its start
    core::units::Duration elapsed;
    friend bool operator==(const Run&, const Run&) = default;
  };
  std::vector<Run> runs;  // waits still needed and not over, the next to open first; empty for a job that rests

  friend bool operator==(const JobEntry&, const JobEntry&) = default;
};

}  // namespace app::workbench
