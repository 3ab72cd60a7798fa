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
  std::string due;  // "2026-12-11"; "" unsaid
  std::string jobHash;
  // Not empty where the job cannot be opened (its texts are missing or no longer read): what to say. What follows
  // means nothing then.
  core::base::Message trouble;

  bool archived = false;
  std::int64_t changedUtc = 0;  // ms, when its newest event happened

  // Where it stands. Of a job that rests this holds as long as nothing is done in it; of any other it is as of the
  // last act or sign of life, and Workbench::at says it of this instant.
  bool rests = true;
  core::jobs::BenchPlace::Kind place = core::jobs::BenchPlace::Kind::Finished;
  std::string step;  // title of the step to show, or of the missed one; "" for none
  std::size_t done = 0, all = 0;

  struct Run {
    std::string wait;         // id
    std::string title;        // what is waited for
    core::units::Span opens;  // since its start
    core::units::Duration elapsed;
    friend bool operator==(const Run&, const Run&) = default;
  };
  std::vector<Run> runs;  // what still matters and is not over, the next to open first; none of a job that rests

  friend bool operator==(const JobEntry&, const JobEntry&) = default;
};

}  // namespace app::workbench
