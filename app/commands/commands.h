#pragma once
// Everything the program does without a bench: no display, no sound; only `import` records anything.
#include <ostream>

#include "app/commands/command_line.h"

namespace app::commands {

enum Exit {
  kDone = 0,
  kProblem = 1,  // of the input
  kWrongUse = 2,
  kUnreadable = 3,  // something cannot be read or written, or the machine lacks something
};

// Returns whether the bench is to be opened; otherwise run() does all that was asked.
bool opensBench(const CommandLine& line);

// Writes the result to `out` (JSON alone, with "--json") and messages about it to `err`, both UTF-8 and the same in
// every locale. Returns the exit code: kUnreadable where `out` did not take all of it, too.
int run(const CommandLine& line, std::ostream& out, std::ostream& err);
int run(const QStringList& arguments, std::ostream& out, std::ostream& err);

}  // namespace app::commands
