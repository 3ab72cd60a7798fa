// Kills the real process at random instants while its waits run and its alerts call, starts it again, and asks: does
// it call at once what it owes; does it ever call what was heard, in that life or an earlier one.
//
//   calls_loop KILLS CALLING_BENCH JOB RECIPES [SEED]
#include <QCoreApplication>
#include <QTemporaryDir>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <random>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "tests/support/child_lines.h"
#include "tests/support/child_process.h"

namespace {

[[noreturn]] void fail(const std::string& what) {
  std::printf("FAILED: %s\n", what.c_str());
  std::exit(1);
}

struct Counts {
  int kills = 0;
  int jobs = 1;
  int owed = 0;
  int sounded = 0;
  int heard = 0;
};

// One life of the program, to its kill. False where it came to the end of its job.
bool live(const std::vector<std::string>& command, std::int64_t microseconds, std::set<std::string>& heard,
          Counts& counts) {
  tests::ChildProcess child(command, tests::ChildProcess::Pipe::FromChild);
  if (!child.running()) fail("the program does not start");
  tests::Lines lines(child.pipe());
  // From its first word on, so that it has a life to lose.
  if (!lines.readMore()) fail("the program said nothing");
  const std::int64_t instant = tests::boottimeNanoseconds() + microseconds * 1000;
  while (lines.readMoreUntil(instant)) {
  }
  tests::sleepUntil(instant);
  child.send(SIGKILL);
  while (lines.readMore()) {
  }
  const int status = child.exitStatus();
  const bool killed = WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
  if (!killed && status != 0) fail("the program ended by itself with status " + std::to_string(status));
  counts.kills += killed ? 1 : 0;

  std::set<std::string> owed;
  std::istringstream said(lines.whole());
  std::string word;
  for (std::string key; said >> word >> key;) {
    if (word == "owed") {
      owed.insert(key);
      ++counts.owed;
      if (heard.contains(key)) fail("owed although it was heard: " + key);
    } else if (word == "sounded") {
      ++counts.sounded;
      owed.erase(key);
      if (heard.contains(key)) fail("sounded after it was heard: " + key);
    } else if (word == "heard") {
      if (owed.contains(key)) fail("heard before it was called: " + key);
      ++counts.heard;
      heard.insert(key);
    }
  }
  // It is called in the same turn in which it is found: what was owed and not called was cut off by the kill.
  if (owed.size() > 1) fail("what was owed was not called at once");
  return killed;
}

}  // namespace

int main(int count, char** arguments) {
  QCoreApplication application(count, arguments);
  if (count < 5) return 2;
  const int kills = std::atoi(arguments[1]);
  std::mt19937_64 random(count > 5 ? std::strtoull(arguments[5], nullptr, 10) : 1);
  std::set<std::string> heard;
  Counts counts;
  auto data = std::make_unique<QTemporaryDir>();
  while (counts.kills < kills) {
    const std::vector<std::string> command = {arguments[2], data->path().toStdString(), arguments[3], arguments[4],
                                              "1"};
    if (live(command, std::uniform_int_distribution<std::int64_t>(0, 150'000)(random), heard, counts)) continue;
    data = std::make_unique<QTemporaryDir>();
    ++counts.jobs;
  }
  std::printf("%d kills in %d jobs: %d calls owed at the start of a life, %d called, %d heard, none called after\n",
              counts.kills, counts.jobs, counts.owed, counts.sounded, counts.heard);
  if (counts.owed == 0 || counts.heard == 0) fail("nothing was put to the proof");
  return 0;
}
