#pragma once
// Finds jobs by what a maker remembers of them.
#include <string_view>
#include <vector>

#include "app/workbench/job_entry.h"

namespace app::workbench {

enum class Shelf { Bench, PutAway, Both };

// Returns the jobs in which every word asked for begins a word of title, reference or client, in any order; capitals
// and accents make no difference. An empty search finds all. Sorted by due (none last), then newest change first, then
// id. The pointers point into `entries`.
std::vector<const JobEntry*> searched(const std::vector<JobEntry>& entries, std::string_view asked, Shelf shelf);

}  // namespace app::workbench
