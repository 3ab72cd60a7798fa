#pragma once
// Lists what is still to do in a job: the steps with the time they take, and the running and later waits as they are
// expected in a room, corrected by this maker's own times. Every view of the work ahead uses this: the list of steps,
// the rehearsal, the desk.
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/waits/wait_state.h"
#include "core/workflow/workflow.h"

namespace core::workflow {

// Kinds are distinguished by technique, step and wait: "fast-oil-size/lay-size/tack"; the thing and the part are left
// out. Water leaving a film is one cause for all that dries by evaporation.
waits::Kind kindOf(const WorkflowWait& wait);

// Returns the stated terms of a wait, with the longest act its fact gates and no looks.
waits::WaitTerms termsOf(const Workflow& workflow, const WorkflowWait& wait, const std::optional<units::Room>& planned);

// Where, and by whom, a job is worked.
struct Bench {
  std::optional<units::Room> room;  // nothing: no room is known; every wait is as it is stated
  waits::Learning learning;
};

struct AgendaWait {
  units::Span opens;  // after its step is done; for a running wait from now on, negative where that is past
  std::optional<units::Span> closes;
  waits::Basis basis = waits::Basis::Label;
  bool byTouch = false;  // nothing can be predicted in this room: the spans are the stated ones
};

struct AgendaStep {
  std::size_t step = 0;  // in the workflow
  units::Span work;      // still to be worked; of a step in hand what is left of it
};

struct AgendaRun {
  std::size_t step = 0;  // the step that began it
  const WorkflowWait* wait = nullptr;
  AgendaWait from;
};

// A preparation that is made and not too old; see batches.h.
struct AgendaBatch {
  std::string technique;
  units::Duration left;  // until it is too old
};

class Agenda {
 public:
  // The agenda of a piece not begun. The workflow must outlive the agenda.
  explicit Agenda(const Workflow& workflow, const Bench& bench = {});
  // The agenda of a piece under way: the steps that are left, in list order, and the waits that run and matter, in the
  // order in which they were begun, and the batches at hand.
  Agenda(const Workflow& workflow, const Bench& bench, std::vector<AgendaStep> steps, std::vector<AgendaRun> running,
         std::vector<AgendaBatch> batches = {});

  const Workflow& workflow() const { return *m_workflow; }
  const std::vector<AgendaStep>& steps() const& { return m_steps; }
  const std::vector<AgendaRun>& running() const& { return m_running; }
  const std::vector<AgendaBatch>& batches() const& { return m_batches; }
  // A temporary agenda cannot be read, since the parts would not outlive it.
  const std::vector<AgendaStep>& steps() const&& = delete;
  const std::vector<AgendaRun>& running() const&& = delete;
  const std::vector<AgendaBatch>& batches() const&& = delete;
  // Requires a wait of a step that is still to do, or of one that makes a batch at hand. Where the room is outside the
  // wait's model nothing is predicted: the spans are as they are stated.
  const AgendaWait& of(const WorkflowWait& wait) const { return m_byId.at(wait.id); }
  // Returns the room it is reckoned for; nothing where none is known.
  const std::optional<units::Room>& room() const { return m_room; }
  // Returns why some waits are not predicted, each reason once: room.too-cold and its like.
  const std::vector<base::Message>& byTouch() const { return m_byTouch; }

 private:
  void expect(const Bench& bench);
  void expect(const Bench& bench, const WorkflowWait& wait);

  const Workflow* m_workflow;
  std::optional<units::Room> m_room;
  std::vector<AgendaStep> m_steps;
  std::vector<AgendaRun> m_running;
  std::vector<AgendaBatch> m_batches;
  std::map<std::string, AgendaWait> m_byId;
  std::vector<base::Message> m_byTouch;
};

}  // namespace core::workflow
