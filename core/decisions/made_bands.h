#pragma once
// What would come of a measure, value by value: the bands beside the planned one on the scale it is read from. They are
// found by asking the decisions themselves, so that no band says what recording the value would not do.
#include <set>
#include <string>
#include <vector>

#include "core/design/design.h"
#include "core/jobs/job_state.h"

namespace core::decisions {

enum class Outcome {
  AsDrawn,      // within the tolerance of its kind
  Follows,      // steps still to be done are worked with other figures
  Contradicts,  // finished work was done with figures that would differ
  Refused,      // it cannot be recorded
};

struct MadeOutcome {
  Outcome outcome = Outcome::AsDrawn;
  // Of what the figures ahead are that follow: "band", "board" and the like, as their ids begin.
  std::set<std::string> follow;
  std::string refusal;  // the id of the message that refuses it
  friend bool operator==(const MadeOutcome&, const MadeOutcome&) = default;
};

struct MadeBand {
  double from = 0, to = 0;  // mm
  MadeOutcome outcome;
};

// Returns what would come of the measure. `planned` is the design without it.
MadeOutcome outcomeOf(const jobs::JobState& state, const design::Design& planned, const std::string& figure,
                      units::Length value);

// Returns the bands from `from` to `to` (mm, above nothing), without a gap. Their ends are found to a quarter of the
// reading, the tolerance's exactly.
std::vector<MadeBand> bandsBetween(const jobs::JobState& state, const design::Design& planned,
                                   const std::string& figure, double from, double to, double reading);

}  // namespace core::decisions
