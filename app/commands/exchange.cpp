// Jobs handed on with their record: out of this program's record, and into it.
#include <algorithm>
#include <memory>
#include <optional>

#include "app/clocks/system_clock.h"
#include "app/commands/commands.h"
#include "app/commands/each.h"
#include "app/commands/input.h"
#include "app/commands/job_called.h"
#include "app/commands/saying.h"
#include "app/files/whole_file.h"
#include "app/stores/data_dir.h"
#include "app/stores/open_record.h"
#include "app/workbench/workbench.h"
#include "core/base/text.h"
#include "core/jobs/one_piece.h"
#include "core/record/record_file.h"

namespace app::commands {
namespace {

using core::base::Message;
using workbench::JobEntry;

// The record, for as long as no bench works with it.
struct Record {
  stores::OpenRecord opened;
  clocks::SystemClock clock;
  std::optional<workbench::Workbench> bench;
};

std::unique_ptr<Record> openRecord(const CommandLine& line, std::ostream& err) {
  auto record = std::make_unique<Record>();
  const auto fail = [&](const Message& message) {
    say(err, message);
    return nullptr;
  };
  const auto folder = stores::dataDirectory(line.data);
  if (!folder) return fail(folder.error());
  auto opened = stores::openRecord(folder.value());
  if (!opened) return fail(opened.error());
  record->opened = std::move(opened).value();
  auto& store = *record->opened.store;
  record->bench.emplace(store, record->clock, workbench::Library(), record->opened.deviceId);
  if (const Message trouble = record->bench->load(); !trouble.id.empty()) return fail(trouble);
  return record;
}

// "Pilot's chart, 26-041 2/3": pieces of one job differ in their reference alone.
std::string nameOf(const JobEntry& entry) {
  std::vector<std::string> names = {entry.title, entry.reference};
  std::erase(names, "");
  return names.empty() ? entry.id : core::base::join(names, ", ");
}

std::string nameOf(const workbench::Workbench& bench, const std::string& jobId) {
  const auto& jobs = bench.jobs();
  const auto found = std::find_if(jobs.begin(), jobs.end(), [&](const JobEntry& entry) { return entry.id == jobId; });
  return found == jobs.end() ? jobId : nameOf(*found);
}

// The whole that the job is a piece of, or the pieces of it, that are in the record beside it; "" for none.
std::string namesBeside(const workbench::Workbench& bench, const std::string& jobId) {
  std::vector<std::string> names;
  for (const JobEntry& entry : bench.jobs()) {
    if (core::jobs::isPieceOf(jobId, entry.id) || core::jobs::isPieceOf(entry.id, jobId)) {
      names.push_back(entry.reference.empty() ? entry.id : entry.reference);
    }
  }
  return core::base::join(names, "; ");
}

int importOne(workbench::Workbench& bench, const QString& file, std::ostream& err) {
  const auto text = files::readWhole(file, core::record::kMaximumRecordBytes);
  if (!text) {
    sayProblem(err, file, text.error());
    return kUnreadable;
  }
  const auto imported = bench.importJob(text.value());
  for (const auto& problem : imported.problems) sayProblem(err, file, problem);
  for (const auto& refusal : imported.refusals) sayProblem(err, file, refusal);
  if (imported.jobId.empty()) return imported.refusals.empty() ? kProblem : kUnreadable;
  const std::string title = nameOf(bench, imported.jobId);
  if (imported.mended > 0) say(err, Message("import.mended").with("title", title));
  if (imported.added > 0) {
    const std::string beside = namesBeside(bench, imported.jobId);
    say(err, Message(beside.empty() ? "import.done" : "import.done-beside")
                 .with("title", title)
                 .with("count", static_cast<std::int64_t>(imported.added))
                 .with("beside", beside));
  } else if (imported.mended == 0) {
    say(err, Message("import.nothing-new").with("title", title));
  }
  return kDone;
}

}  // namespace

int importJobs(const CommandLine& line, std::ostream&, std::ostream& err) {
  const auto record = openRecord(line, err);
  if (!record) return kUnreadable;
  int exit = kDone;
  for (const QString& file : line.files) exit = std::max(exit, importOne(*record->bench, file, err));
  return exit;
}

int exportJob(const CommandLine& line, std::ostream& out, std::ostream& err) {
  const auto record = openRecord(line, err);
  if (!record) return kUnreadable;
  const auto job = jobCalled(record->bench->jobs(), line.files.first().toStdString());
  if (!job) {
    say(err, job.error());
    return kProblem;
  }
  const auto text = record->bench->handOn(job.value()->id, line.piece);
  if (!text) {
    say(err, text.error());
    return text.error().id == "export.no-such-piece" ? kProblem : kUnreadable;
  }
  out << text.value();
  return kDone;
}

}  // namespace app::commands
