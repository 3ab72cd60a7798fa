#pragma once
// Finds the effects of a measure: the figures that follow from it, and the finished steps that were worked with the old
// ones.
#include <string>
#include <vector>

#include "core/design/design.h"
#include "core/jobs/job_state.h"

namespace core::decisions {

struct FigureChange {
  std::string figure;
  double before = 0, after = 0;  // mm, or the figure's own unit
  std::string displayBefore, displayAfter;
  bool ahead = false;  // a step still to be done uses it
};

// A finished step that used a figure which now differs by more than the tolerance of its kind.
struct Contradiction {
  std::size_t step = 0;  // index into the workflow
  FigureChange change;
};

struct MadeChanges {
  std::vector<FigureChange> figures;  // whose display differs, in the order of figures; the measured one is left out
  std::vector<Contradiction> contradicted;
};

// Compares two designs of the job. The size a measured opening was cut to is no contradiction: figures of the element
// that was measured are left out of `contradicted`.
MadeChanges changesBetween(const jobs::JobState& state, const design::Design& before, const design::Design& after);

// Returns the design as it would be if one figure had this measure. `decide` turns its problems into a refusal.
design::ReadDesign designWith(const jobs::JobState& state, const std::string& figure, units::Length value,
                              const std::string& overrules = "");
// Returns the design as it would be if a board followed in this way.
design::ReadDesign designWith(const jobs::JobState& state, const std::string& board, design::Follow follow);
// Returns the design without one measure.
design::ReadDesign designWithout(const jobs::JobState& state, const std::string& figure);

// Returns the board whose choice between cover and reveal is open: the first inner board not yet cut whose opening
// above differs from the plan. Returns "" where there is none.
std::string boardToFollow(const jobs::JobState& state);

// The sizes of a board that follows in a given way.
struct Kept {
  std::string reveal, flat, width, height;  // as shown; of its opening at the back
  std::optional<double> cover;              // mm, at the side that covers least; nothing where the work floats
};
// Returns nothing where the board cannot follow in that way.
std::optional<Kept> keptBy(const jobs::JobState& state, const std::string& board, design::Follow follow);

}  // namespace core::decisions
