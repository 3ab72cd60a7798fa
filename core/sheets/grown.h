#pragma once
// How far a piece has grown: which shapes of its drawing are there by the record of the job.
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "core/jobs/job_state.h"
#include "core/sheets/drawing.h"

namespace core::sheets {

class Grown {
 public:
  explicit Grown(const jobs::JobState& state);

  // Returns whether a shape is made: every step is done that works its thing with the act that makes such a shape (a
  // strip is laid, a line ruled); where no step of the thing has such an act, all steps of the thing.
  bool isMade(const std::string& element, Role role) const;
  // Returns whether a bevel that is cut has its colour too.
  bool isColoured(const std::string& board) const;

 private:
  struct Progress {
    int steps = 0;
    int done = 0;
  };
  using Acts = std::vector<craft::Act>;

  bool isDone(const std::string& thing, const Acts& makers, bool ofPiece) const;

  std::map<std::string, Progress> m_things;
  std::map<std::pair<std::string, craft::Act>, Progress> m_acts;
  std::map<craft::Act, Progress> m_ofPiece;  // whatever it was done to
};

// Returns whether a shape is what the step works: it is of the step's thing, and where the step's act makes or colours
// such shapes, one of these. Of a step for the whole piece every shape is that is made of anything.
bool isWorkedBy(const Primitive& primitive, const workflow::WorkflowStep& step);

// Gives every shape of a piece its standing. A bevel that is cut and not yet coloured is bare core.
void stand(Drawing& piece, const Grown& grown);

}  // namespace core::sheets
