#pragma once
// What commands work on: files, the job in one, and the techniques at hand.
#include <optional>
#include <ostream>
#include <string>

#include "app/commands/command_line.h"
#include "app/workbench/library_loader.h"
#include "core/base/result.h"
#include "core/design/design.h"
#include "core/workflow/workflow.h"

namespace app::commands {

// A result, or the exit code after everything there was to say has been said on `err`.
template <typename Value>
struct OrExit {
  std::optional<Value> value;
  int exit = 0;
};

OrExit<core::design::Design> readJob(const QString& path, std::ostream& err);
// Broken technique files are told and left out.
OrExit<workbench::Library> readTechniques(const CommandLine& line, std::ostream& err);
// The job's work from the techniques at hand; why it cannot be composed is told of the job's file.
OrExit<core::workflow::Workflow> composeDesign(const CommandLine& line, const core::design::Design& design,
                                               std::ostream& err);

}  // namespace app::commands
