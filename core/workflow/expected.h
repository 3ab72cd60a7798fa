#pragma once
// What waits come to in a room, after what this maker's own times have taught. It is what the bench shows of a wait in
// the moment in which it begins; the list of steps, the rehearsal and the desk's total have it from here.
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/waits/wait_state.h"
#include "core/workflow/workflow.h"

namespace core::workflow {

// Kinds are told apart by technique, step and wait: "fast-oil-size/lay-size/tack"; the thing and the part are left out.
// Water leaving a film is one cause for all that dries by evaporation.
waits::Kind kindOf(const WorkflowWait& wait);

// What is stated of a wait, with the longest act its fact gates; nothing looked at yet.
waits::WaitTerms termsOf(const Workflow& workflow, const WorkflowWait& wait, const std::optional<units::Room>& planned);

// Where, and by whom, a job is worked.
struct Bench {
  std::optional<units::Room> room;  // nothing: nobody has said; every wait is as it is stated
  waits::Learning learning;
};

struct ExpectedWait {
  units::Span opens;  // after the step is done
  std::optional<units::Span> closes;
  waits::Basis basis = waits::Basis::Label;
};

class Expected {
 public:
  explicit Expected(const Workflow& workflow, const Bench& bench = {});

  // Requires a wait of the workflow. Where the room lies outside the wait's model nothing is predicted: the spans are
  // as they are stated.
  const ExpectedWait& of(const WorkflowWait& wait) const { return m_byId.at(wait.id); }
  // Why some waits are not predicted, each reason once: room.too-cold and its like.
  const std::vector<base::Message>& byTouch() const { return m_byTouch; }

 private:
  std::map<std::string, ExpectedWait> m_byId;
  std::vector<base::Message> m_byTouch;
};

}  // namespace core::workflow
