#pragma once
// A job's stored summary, from which it can be listed without being folded. It is a projection of its events, and is
// discarded where its stamp is not the one that would be written now.
#include <optional>
#include <set>
#include <string>

#include "app/workbench/job_entry.h"
#include "core/jobs/looks.h"
#include "core/record/event.h"

namespace app::workbench {

struct JobSummary {
  JobEntry entry;
  bool settled = false;               // see core::jobs::settled
  core::record::Hlc newest;           // clock of the newest event it was made from
  std::set<std::string> sharedSteps;  // shared with other jobs, by id
  core::jobs::Observed lessons;
};

// Writes the summary without running waits and without lessons.
std::string summaryText(const JobSummary& summary);
// Returns nullopt where any part of the text is not valid.
std::optional<JobSummary> readSummary(const std::string& jobId, const std::string& text);

// Writes the lessons, which are long and needed later than the summary. The text begins with the stamp, so that a
// summary and lessons stored at different times are never combined.
std::string lessonsText(const core::jobs::Observed& lessons, const std::string& stamp);
std::optional<core::jobs::Observed> readLessons(const std::string& text, const std::string& stamp);

// `arrived`: the id of the job's event that was added last; `shop`: see core::shop::ShopPrint. A change of the wording,
// the program or the summary's format changes the stamp.
std::string summaryStamp(const std::string& arrived, const std::string& shop);

}  // namespace app::workbench
