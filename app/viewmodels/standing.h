#pragma once
// The state of a job, in one line each: its progress, and its running waits.
#include <QString>

#include "app/workbench/workbench.h"

namespace app::viewmodels {

struct Standing {
  QString where;  // step reached and the act; or why the job cannot be opened
  QString runs;   // running waits; "" for none
  friend bool operator==(const Standing&, const Standing&) = default;
};

// Returns its title, or its reference where it has none; a substitute where neither can be read.
QString nameOf(const workbench::JobEntry& entry);

Standing standingOf(const workbench::Workbench& workbench, const workbench::JobEntry& entry, const std::string& zone);

}  // namespace app::viewmodels
