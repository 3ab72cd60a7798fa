#pragma once
// Whether what is worked in one go reads in one sense: the same steps over all pieces, or the steps of one of them;
// never the end of the work on one together with the beginning of the work on the next.
#include <cstddef>
#include <string>
#include <vector>

#include "core/workflow/expand.h"

namespace core::workflow {

// Returns what a step does, whatever it is done for: "cut-windows/cut-window" of "cut-windows/cut-window@top#2".
std::string kindOfStep(const std::string& stepId);

class Sense {
 public:
  explicit Sense(const std::vector<DraftStep>& drafts);

  // Returns whether the steps together read in one sense: every piece has the same kinds of steps, and of like things
  // (boards, strips of bands) none has a kind that another lacks while that one has what the first lacks. What is done
  // once for all pieces, or for the job as a whole, goes with anything.
  bool isOne(const std::vector<std::size_t>& steps) const;

 private:
  struct Part {
    std::size_t kind = 0;   // what is done
    std::size_t thing = 0;  // what it is done for, each piece's apart
    std::size_t like = 0;   // equal for things of which the same is done in the workflow
    int piece = 0;
    bool ofThing = false;
  };
  std::vector<Part> m_parts;
};

}  // namespace core::workflow
