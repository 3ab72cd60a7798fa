#pragma once
// Finds what can be worked at another piece while one waits: never an act that could still be in hand when the next
// test is due, whichever piece that test is of.
#include <optional>
#include <vector>

#include "core/jobs/bench_place.h"
#include "core/jobs/job_state.h"

namespace core::jobs {

// Returns how long the hands are free: until the first test of any of these jobs, or until the first window found open
// may close. Nought where a test is due or may be, nothing where nothing calls. `but`: a job of which a window found
// open does not count where it gates one of these steps, since it is these that are to be worked.
std::optional<units::Duration> freeUntilTest(const std::vector<JobAt>& jobs, std::optional<std::size_t> but = {},
                                             const std::vector<std::size_t>& steps = {});

struct Meanwhile {
  std::size_t job = 0;   // its place among those given
  BenchPlace place;      // the act to work
  units::Duration work;  // the longest it may take: a filler is a promise
};

// Returns the act for the hands while the job at `waiting` waits; nothing where it does not wait or no act ends in
// time. Order of choice: an act in hand; one that an open window gates; the piece that is due first; of acts of equal
// right the one that fills the time best. A piece that is put away is left alone.
std::optional<Meanwhile> meanwhile(const std::vector<JobAt>& jobs, std::size_t waiting);

}  // namespace core::jobs
