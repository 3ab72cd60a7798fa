#pragma once
// The input of commands: files, the job in one, and the techniques at hand.
#include <optional>
#include <ostream>
#include <string>

#include "app/commands/command_line.h"
#include "app/workbench/library_loader.h"
#include "core/base/result.h"
#include "core/design/design.h"
#include "core/workflow/workflow.h"

namespace app::commands {

// A result, or the exit code after all messages have been written to `err`.
template <typename Value>
struct OrExit {
  std::optional<Value> value;
  int exit = 0;
};

OrExit<core::design::Design> readJob(const QString& path, std::ostream& err);
// Broken technique files are reported and left out.
OrExit<workbench::Library> readTechniques(const CommandLine& line, std::ostream& err);
// Composes the job's work from the techniques at hand; where it cannot be composed, the reason is reported for the
// job's file.
OrExit<core::workflow::Workflow> composeDesign(const CommandLine& line, const core::design::Design& design,
                                               std::ostream& err);

}  // namespace app::commands
