#pragma once
// The state of a job, in one line each: its progress, and its running waits.
#include <QString>
#include <map>
#include <string>
#include <vector>

#include "app/workbench/workbench.h"

namespace app::viewmodels {

struct Standing {
  QString where;  // step reached and the act; or why the job cannot be opened
  QString runs;   // running waits; "" for none
  friend bool operator==(const Standing&, const Standing&) = default;
};

// Returns its title, or its reference where it has none; a substitute where neither can be read.
QString nameOf(const workbench::JobEntry& entry);

// Returns a name for each job by which it is known among these: a word of its title, as for the shelf, or the title up
// to its first comma. Jobs of one name are told apart by their references, or by their places.
std::map<std::string, QString> shortNames(const std::vector<workbench::JobEntry>& jobs);
std::map<std::string, QString> titlesApart(const std::vector<workbench::JobEntry>& jobs);

Standing standingOf(const workbench::Workbench& workbench, const workbench::JobEntry& entry, const std::string& zone);

}  // namespace app::viewmodels
