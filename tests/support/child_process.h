#pragma once
// A program started by a test, with a pipe to or from it; it is ended with its object.
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <string>
#include <vector>

extern char** environ;

namespace tests {

class ChildProcess {
 public:
  enum class Pipe { None, FromChild, ToChild };

  ChildProcess(std::vector<std::string> command, Pipe pipe) {
    int ends[2] = {-1, -1};
    if (pipe != Pipe::None && ::pipe(ends) != 0) return;
    const int theirs = pipe == Pipe::ToChild ? ends[0] : ends[1];
    m_pipe = pipe == Pipe::ToChild ? ends[1] : ends[0];
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    if (pipe != Pipe::None) {
      posix_spawn_file_actions_adddup2(&actions, theirs, pipe == Pipe::ToChild ? STDIN_FILENO : STDOUT_FILENO);
      posix_spawn_file_actions_addclose(&actions, ends[0]);
      posix_spawn_file_actions_addclose(&actions, ends[1]);
    }
    std::vector<char*> arguments;
    for (std::string& part : command) arguments.push_back(part.data());
    arguments.push_back(nullptr);
    if (posix_spawnp(&m_pid, arguments[0], &actions, nullptr, arguments.data(), environ) != 0) m_pid = -1;
    posix_spawn_file_actions_destroy(&actions);
    if (theirs >= 0) close(theirs);
  }
  ChildProcess(const ChildProcess&) = delete;
  ChildProcess& operator=(const ChildProcess&) = delete;
  ~ChildProcess() {
    end();
    if (m_pipe >= 0) close(m_pipe);
  }

  pid_t pid() const { return m_pid; }
  bool running() const { return m_pid > 0; }
  int pipe() const { return m_pipe; }
  void send(int signal) const {
    if (m_pid > 0) kill(m_pid, signal);
  }
  void end() {
    if (m_pid <= 0) return;
    kill(m_pid, SIGTERM);
    waitpid(m_pid, nullptr, 0);
    m_pid = -1;
  }
  // Waits for it to end by itself.
  int exitStatus() {
    int status = -1;
    if (m_pid > 0) waitpid(m_pid, &status, 0);
    m_pid = -1;
    return status;
  }

 private:
  pid_t m_pid = -1;
  int m_pipe = -1;
};

}  // namespace tests
