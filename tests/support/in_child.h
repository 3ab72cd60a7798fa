#pragma once
// Runs a function in a process of its own: one that gives up its rights, is killed, or has mounts of its own.
#include <sys/wait.h>
#include <unistd.h>

#include <functional>
#include <string>

#include "tests/support/catch.h"

namespace tests {

// Returns what `act` returned, or 128 and the signal that ended it. `meanwhile` runs in this process at the same time.
inline int inChild(
    const std::function<int()>& act, const std::function<void()>& meanwhile = [] {}) {
  const pid_t child = ::fork();
  REQUIRE(child >= 0);
  if (child == 0) ::_exit(act());
  meanwhile();
  int status = 0;
  REQUIRE(::waitpid(child, &status, 0) == child);
  return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

// Returns what `ask` returned there.
inline std::string answerOfChild(const std::function<std::string()>& ask) {
  int ends[2];
  REQUIRE(::pipe(ends) == 0);
  std::string answer;
  const auto tell = [&] {
    const std::string told = ask();
    return ::write(ends[1], told.data(), told.size()) == static_cast<ssize_t>(told.size()) ? 0 : 1;
  };
  const auto listen = [&] {
    ::close(ends[1]);
    char buffer[256];
    for (ssize_t got = ::read(ends[0], buffer, sizeof buffer); got > 0; got = ::read(ends[0], buffer, sizeof buffer)) {
      answer.append(buffer, static_cast<std::size_t>(got));
    }
    ::close(ends[0]);
  };
  REQUIRE(inChild(tell, listen) == 0);
  return answer;
}

}  // namespace tests
