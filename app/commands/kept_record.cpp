#include "app/commands/kept_record.h"

#include <QFileInfo>
#include <algorithm>

#include "app/commands/commands.h"
#include "app/commands/saying.h"
#include "app/stores/data_dir.h"
#include "app/stores/open_record.h"

namespace app::commands {

using core::base::Message;
using workbench::KeptJobs;

OrExit<KeptRecord> openKeptRecord(const CommandLine& line, std::ostream& err) {
  KeptRecord record;
  const QString folder = stores::wantedDataDirectory(line.data);
  if (folder.isEmpty() || !QFileInfo::exists(stores::recordFile(folder))) return {std::move(record), kDone};
  auto opened = stores::openRecord(folder, stores::Opening::ToRead);
  if (!opened) {
    say(err, opened.error());
    return {std::nullopt, kUnreadable};
  }
  record.store = std::move(opened).value().store;
  record.jobs = std::make_unique<KeptJobs>(*record.store);
  if (const Message trouble = record.jobs->load(record.shop); !trouble.id.empty()) {
    say(err, trouble);
    return {std::nullopt, kUnreadable};
  }
  return {std::move(record), kDone};
}

core::waits::Learning learnedFrom(const CommandLine& line, std::ostream& err) {
  auto record = openKeptRecord(line, err);
  if (!record.value) {
    say(err, Message("command.nothing-learned"));
    return {};
  }
  if (!record.value->jobs) return {};
  record.value->jobs->settle(record.value->shop);
  const auto lessons = record.value->jobs->lessons();
  const core::waits::ClockReading* newest = nullptr;
  for (const core::jobs::Observed* job : lessons) {
    for (const auto* part : {&job->opening, &job->width}) {
      for (const auto& [kind, all] : *part) {
        for (const core::jobs::Lesson& lesson : all) {
          const bool newer = newest == nullptr || newest->utcMilliseconds < lesson.started.utcMilliseconds;
          if (newer) newest = &lesson.started;
        }
      }
    }
  }
  if (newest == nullptr) return {};
  return core::jobs::learn(lessons, record.value->shop.clockLog, *newest);
}

}  // namespace app::commands
