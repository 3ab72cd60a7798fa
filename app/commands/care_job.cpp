#include "app/commands/care_job.h"

#include <QFileInfo>

#include "app/commands/commands.h"
#include "app/commands/job_called.h"
#include "app/commands/kept_record.h"
#include "app/commands/saying.h"
#include "app/convert/content_hash.h"
#include "app/files/whole_file.h"
#include "app/stores/data_dir.h"
#include "app/workbench/kept_jobs.h"
#include "core/base/text.h"

namespace app::commands {
namespace {

using core::base::Message;
using workbench::JobEntry;
using workbench::KeptJobs;

OrExit<CareJob> fromRecord(KeptRecord& record, const JobEntry& entry, std::ostream& err) {
  const core::jobs::JobState* state = record.jobs->state(entry.id, record.shop);
  if (state == nullptr) {
    say(err, entry.trouble);
    return {std::nullopt, kUnreadable};
  }
  CareJob job;
  job.state = *state;
  auto events = record.jobs->eventsOf(entry.id, KeptJobs::Of::AllBenches);
  if (!events) {
    say(err, events.error());
    return {std::nullopt, kUnreadable};
  }
  job.events = std::move(events).value();
  job.shop = record.shop;
  const auto text = record.store->text(entry.jobHash);
  if (text && text.value()) job.jobText = text.value()->body;
  job.recorded = true;
  return {std::move(job), kDone};
}

core::base::Result<const JobEntry*, Message> called(const KeptRecord& record, const QString& name) {
  static const std::vector<JobEntry> kNone;
  return jobCalled(record.jobs ? record.jobs->entries() : kNone, name.toStdString());
}

bool areSeveral(const Message& trouble) { return trouble.id == "called.several-jobs"; }

OrExit<CareJob> byName(KeptRecord& record, const QString& name, std::ostream& err) {
  const auto job = called(record, name);
  if (job) return fromRecord(record, *job.value(), err);
  if (areSeveral(job.error())) {
    sayProblem(err, name, job.error());
    return {std::nullopt, kProblem};
  }
  // It may have been meant as a file.
  sayProblem(err, name, Message("care.no-such-job"));
  return {std::nullopt, kUnreadable};
}

OrExit<CareJob> planned(const CommandLine& line, const std::string& text, std::ostream& err) {
  OrExit<core::design::Design> design = readJob(line.files.first(), err);
  if (!design.value) return {std::nullopt, design.exit};
  auto workflow = composeDesign(line, *design.value, err);
  if (!workflow.value) return {std::nullopt, workflow.exit};
  auto plan = std::make_shared<core::jobs::JobPlan>();
  plan->jobHash = convert::contentHash(text);
  plan->design = std::move(*design.value);
  plan->workflow = std::move(*workflow.value);
  CareJob job;
  job.state = core::jobs::fold(std::move(plan), {});
  job.jobText = text;
  say(err, Message("care.nothing-recorded"));
  return {std::move(job), workflow.exit};
}

}  // namespace

OrExit<CareJob> readCareJob(const CommandLine& line, std::ostream& err) {
  const QString& name = line.files.first();
  OrExit<KeptRecord> record = openKeptRecord(line, err);
  if (!record.value) return {std::nullopt, record.exit};
  const bool looksLikeFile = name.contains(u'/') || name.endsWith(QStringLiteral(".json"));
  // The reference of one of several pieces, "26-041 3/12", looks like a path.
  const auto job = called(*record.value, name);
  const bool isName = !looksLikeFile || job || areSeveral(job.error());
  if (isName && !QFileInfo::exists(name)) return byName(*record.value, name, err);
  const auto text = files::readWhole(name, core::base::kMaximumJsonBytes);
  if (!text) {
    sayProblem(err, name, text.error());
    return {std::nullopt, kUnreadable};
  }
  if (record.value->jobs) {
    const std::string hash = convert::contentHash(text.value());
    const JobEntry* newest = nullptr;
    for (const JobEntry& entry : record.value->jobs->entries()) {
      if (entry.jobHash == hash && (newest == nullptr || newest->id < entry.id)) newest = &entry;
    }
    if (newest != nullptr) return fromRecord(*record.value, *newest, err);
  }
  return planned(line, text.value(), err);
}

}  // namespace app::commands
