#include "app/commands/job_called.h"

#include "core/base/text.h"

namespace app::commands {

using core::base::Message;
using workbench::JobEntry;

core::base::Result<const JobEntry*, Message> jobCalled(const std::vector<JobEntry>& entries, const std::string& name) {
  std::vector<const JobEntry*> found;
  std::vector<std::string> ids;
  std::vector<std::string> names;
  for (const JobEntry& entry : entries) {
    names.push_back(entry.reference.empty() ? entry.id : entry.reference);
    if (entry.id != name && entry.reference != name) continue;
    found.push_back(&entry);
    ids.push_back(entry.id);
  }
  const auto refused = [&](const char* id, const std::vector<std::string>& instead) {
    return Message(id).with("name", name).with("names", core::base::join(instead, ", "));
  };
  if (names.empty()) return Message("called.no-jobs");
  if (found.empty()) return refused("called.no-such-job", names);
  if (found.size() > 1) return refused("called.several-jobs", ids);
  return found.front();
}

}  // namespace app::commands
