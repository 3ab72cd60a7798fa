#pragma once
// There is one function for each command; only run() calls these. Each returns an exit code.
#include <ostream>

#include "app/commands/command_line.h"

namespace app::commands {

int check(const CommandLine& line, std::ostream& out, std::ostream& err);
int figures(const CommandLine& line, std::ostream& out, std::ostream& err);
int steps(const CommandLine& line, std::ostream& out, std::ostream& err);
int materials(const CommandLine& line, std::ostream& out, std::ostream& err);
int care(const CommandLine& line, std::ostream& out, std::ostream& err);
int rehearse(const CommandLine& line, std::ostream& out, std::ostream& err);
int exportJob(const CommandLine& line, std::ostream& out, std::ostream& err);
int importJobs(const CommandLine& line, std::ostream& out, std::ostream& err);

}  // namespace app::commands
