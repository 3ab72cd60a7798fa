#pragma once
// Whose preparations count in a job. What one bench makes ready serves every job it works and no other shop's: paste on
// another maker's table moves nothing here on.
#include <set>
#include <string>
#include <vector>

#include "core/record/event.h"

namespace core::record {

// Whether an event of a bench stream can make any difference to a job's state: a step done or begun, or a taking back.
bool touchesJobs(const Event& event);

// The step an event of a step is of; "" of any other event.
std::string stepOf(const Event& event);

// Which events of benches count in a job, from the job's own events (any order): those of every device that wrote any
// of these, those the job's record takes into use (PreparationAccepted), and whatever takes one of these back. A device
// that never worked the job takes back in it only what is its own.
class Counting {
 public:
  explicit Counting(std::vector<Event> own);

  // Of a step: whether it counts. Of a taking back see `takenBack`.
  bool counts(const Event& event) const;
  // Those of `bench` that count, takings back among them.
  std::vector<Event> of(const std::vector<Event>& bench) const;
  // Whether the maker took the act of another bench into use.
  bool accepted(const std::string& intentId) const { return m_accepted.contains(intentId); }

 private:
  std::set<std::string> m_devices;
  std::set<std::string> m_accepted;  // intents
  std::set<std::string> m_intents;   // of the job's own events
};

// Of events of benches those that made a difference to a job: those that count and that its steps share with others,
// and what was taken back.
std::vector<Event> benchEventsOf(const std::vector<Event>& bench, const std::vector<Event>& own,
                                 const std::set<std::string>& sharedSteps);

}  // namespace core::record
