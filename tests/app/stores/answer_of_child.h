#pragma once
// What is asked in a process of its own: one that gives up its rights, or that sees mounts of its own.
#include <sys/wait.h>
#include <unistd.h>

#include <functional>
#include <string>

#include "tests/support/catch.h"

namespace tests {

// Returns what `ask` answered there.
inline std::string answerOfChild(const std::function<std::string()>& ask) {
  int ends[2];
  REQUIRE(pipe(ends) == 0);
  const pid_t child = fork();
  REQUIRE(child >= 0);
  if (child == 0) {
    const std::string answer = ask();
    const ssize_t written = write(ends[1], answer.data(), answer.size());
    _exit(written == static_cast<ssize_t>(answer.size()) ? 0 : 1);
  }
  close(ends[1]);
  std::string answer;
  char buffer[256];
  for (ssize_t got = read(ends[0], buffer, sizeof buffer); got > 0; got = read(ends[0], buffer, sizeof buffer)) {
    answer.append(buffer, static_cast<std::size_t>(got));
  }
  close(ends[0]);
  int status = 0;
  REQUIRE(waitpid(child, &status, 0) == child);
  INFO("child ended with " << status);
  REQUIRE(status == 0);
  return answer;
}

}  // namespace tests
