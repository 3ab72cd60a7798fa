#pragma once
// Where a job stands, in a line each: how far it is, and what runs.
#include <QString>

#include "app/workbench/workbench.h"

namespace app::viewmodels {

struct Standing {
  QString where;  // step reached and the act; what is wrong where the job cannot be opened
  QString runs;   // "" where nothing does
  friend bool operator==(const Standing&, const Standing&) = default;
};

Standing standingOf(const workbench::Workbench& workbench, const workbench::JobEntry& entry);

}  // namespace app::viewmodels
