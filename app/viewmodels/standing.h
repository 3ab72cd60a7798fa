#pragma once
// The state of a job in words: its progress, what comes next, and the running wait that is tested first.
#include <QString>

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

Standing standingOf(const workbench::Workbench& workbench, const workbench::JobEntry& entry, const std::string& zone);

}  // namespace app::viewmodels
