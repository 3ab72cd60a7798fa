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

// Its title, its reference where it has none; what to call it where neither can be read.
QString nameOf(const workbench::JobEntry& entry);

Standing standingOf(const workbench::Workbench& workbench, const workbench::JobEntry& entry);

}  // namespace app::viewmodels
