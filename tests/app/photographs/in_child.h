#pragma once
// An act in a process of its own: one that gives up its rights, or that is killed.
#include <sys/wait.h>
#include <unistd.h>

#include <functional>

#include "tests/support/catch.h"

namespace tests {

// Returns what `act` returned, or 128 and the signal that ended it.
inline int inChild(const std::function<int()>& act) {
  const pid_t child = ::fork();
  if (child == 0) ::_exit(act());
  int status = 0;
  REQUIRE(::waitpid(child, &status, 0) == child);
  return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

}  // namespace tests
