#pragma once
// Finds how long what is made ready beforehand may be left: a paste or a size is made as late as its soaking and its
// keeping allow, never so late that the piece would wait for it.
#include <vector>

#include "core/workflow/agenda.h"

namespace core::workflow {

// When a preparation may and when it has to be begun, in minutes from now. Both are 0 for all other steps, and for one
// whose preparation is under way: soaked starch is cooked.
struct Lead {
  double notBefore = 0;  // begun earlier, too much of its keeping time would be over before it is used
  double due = 0;        // begun later, the piece may have to wait for it
  friend bool operator==(const Lead&, const Lead&) = default;
};

// Returns the lead of each step of the workflow. Reckoned from the waits ahead and the work before each use, without
// the time in which the hands are on something else, so that it comes rather too early;
// exact where `starts` says when each step is started in a plan.
std::vector<Lead> leadsOf(const Agenda& agenda, const std::vector<double>& starts = {});

// The same, later on the agenda's way: `work` is the minutes of each step that is then left, below zero for the others.
std::vector<Lead> leadsAt(double now, const Agenda& agenda, const std::vector<double>& starts,
                          std::vector<double> work);

}  // namespace core::workflow
