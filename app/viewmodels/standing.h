#pragma once
// The state of a job in words: its progress, what comes next, and the running wait that is tested first.
#include <QString>
#include <map>
#include <string>
#include <vector>

#include "app/workbench/workbench.h"

namespace app::viewmodels {

struct Standing {
  QString act;                    // the step to work now, or what stands in its place; why the job cannot be opened
  QString wait;                   // "paste sets: test 11:40"; "" for none
  bool window = false;            // what it waits for closes again
  std::size_t more = 0;           // running waits beside that
  std::size_t done = 0, all = 0;  // steps; 0 of a job that cannot be opened

  QString runs() const;  // "paste sets: test 11:40, 2 more"
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
