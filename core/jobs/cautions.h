#pragma once
// What a maker is warned of before an act: each caution once, and whether it was read in this job before. A caution
// that is told in full with every act is read by nobody; after the first time its sign and its word are enough.
#include <vector>

#include "core/jobs/job_state.h"

namespace core::jobs {

struct CautionAt {
  craft::Caution caution;
  bool known = false;  // the same words stood before an act of this job that is done
  friend bool operator==(const CautionAt&, const CautionAt&) = default;
};

// Returns the cautions of these steps, the gravest word first, those alike once. One that is for other rooms alone is
// left out where the job's room and the one entered or measured last, as far as they are known, are none of them.
std::vector<CautionAt> cautionsOf(const JobAt& job, const std::vector<std::size_t>& steps);

}  // namespace core::jobs
