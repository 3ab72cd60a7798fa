#pragma once
// What is kept of a job, so that it need not be folded to be listed. A projection of its events: thrown away wherever
// its stamp is not the one that would be written now.
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
  core::record::Hlc newest;           // clock of the newest event it rests on
  std::set<std::string> sharedSteps;  // with other jobs, by id
  core::jobs::Observed lessons;
};

// Without what runs and without its lessons.
std::string summaryText(const JobSummary& summary);
// Nothing where the text is not one in every part.
std::optional<JobSummary> readSummary(const std::string& jobId, const std::string& text);

// Its lessons, which are many and wanted later. Begins with
// the stamp, so that what was kept at two times is never taken together.
std::string lessonsText(const core::jobs::Observed& lessons, const std::string& stamp);
std::optional<core::jobs::Observed> readLessons(const std::string& text, const std::string& stamp);

// `arrived`: the id of the event of the job that came in last; `shop`: see core::shop::ShopPrint. Other words,
// another program and another form of summary give other stamps.
std::string summaryStamp(const std::string& arrived, const std::string& shop);

}  // namespace app::workbench
