#pragma once
// Defines which benches' preparations count in a job. A preparation of one bench serves every job that bench works and
// no other shop's: paste on another maker's table does not advance the work here.
#include <set>
#include <string>
#include <vector>

#include "core/record/event.h"

namespace core::record {

// Returns whether an event of a bench stream can change a job's state: a step done or begun, or an act taken back.
bool touchesJobs(const Event& event);

// Returns the step an event is about; "" for an event that is about none.
std::string stepOf(const Event& event);

// Decides which events of benches count in a job, from the job's own events (any order): those of every device that
// wrote any of these, those the job's record takes into use (PreparationAccepted), and every undo of one of these. A
// device that never worked the job can undo in it only its own acts.
class Counting {
 public:
  explicit Counting(std::vector<Event> own);

  // Returns whether an event of a step counts. For an undo see `takenBack`.
  bool counts(const Event& event) const;
  // Returns those of `bench` that count, including undos.
  std::vector<Event> of(const std::vector<Event>& bench) const;
  // Returns whether the maker took the act of another bench into use.
  bool accepted(const std::string& intentId) const { return m_accepted.contains(intentId); }

 private:
  std::set<std::string> m_devices;
  std::set<std::string> m_accepted;  // intents
  std::set<std::string> m_intents;   // of the job's own events
};

// Returns the events of benches that changed a job: those that count and concern the steps it shares with others, and
// the undos.
std::vector<Event> benchEventsOf(const std::vector<Event>& bench, const std::vector<Event>& own,
                                 const std::set<std::string>& sharedSteps);

}  // namespace core::record
