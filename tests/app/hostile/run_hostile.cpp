// Runs every command of the program on hostile files, each as a process of its own, and fails where one takes too long,
// takes too much memory, or does not leave by itself with one of its four exit codes.
//
// Usage: run_hostile PROGRAM RECIPES COUNT FIRST-SEED [SLACK]
//   SLACK  by how much a command may be slower than kSeconds of processor time (its own, not the clock's); 1 unless
//          said. A machine that is busy with other work slows a process's own time too; memory has no slack.
#include <fcntl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>

#include "tests/app/hostile/hostile_files.h"

namespace {

namespace fs = std::filesystem;
using Command = std::vector<std::string>;

constexpr double kSeconds = 2;
constexpr long kKilobytes = 300 * 1024;

struct Taken {
  double seconds = 0;
  long kilobytes = 0;
  int status = 0;
};

double secondsOf(const timeval& time) {
  return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) / 1e6;
}

void limit(int resource, rlim_t most) {
  const rlimit both{most, most};
  setrlimit(resource, &both);
}

Taken run(Command command, const fs::path& folder) {
  const pid_t child = fork();
  if (child == 0) {
    // Far beyond what is asked, so that the machine stays usable when a command breaks its promise.
    limit(RLIMIT_CPU, 60);
    limit(RLIMIT_AS, 4ULL << 30);
    limit(RLIMIT_CORE, 0);
    setenv("HOME", folder.c_str(), 1);
    const int out = open((folder / "out").c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    const int err = open((folder / "err").c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    dup2(out, STDOUT_FILENO);
    dup2(err, STDERR_FILENO);
    std::vector<char*> arguments;
    for (std::string& part : command) arguments.push_back(part.data());
    arguments.push_back(nullptr);
    execv(arguments[0], arguments.data());
    _exit(127);
  }
  Taken taken;
  rusage used{};
  wait4(child, &taken.status, 0, &used);
  taken.seconds = secondsOf(used.ru_utime) + secondsOf(used.ru_stime);
  taken.kilobytes = used.ru_maxrss;
  return taken;
}

std::string textOf(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

void write(const fs::path& path, const std::string& text) {
  fs::create_directories(path.parent_path());
  std::ofstream(path, std::ios::binary) << text;
}

// What must never reach a terminal: a C0 control but line ends, DEL, a C1 control, a mark of direction. What is
// exported is a file and holds what the record holds.
bool commandsTerminal(const std::string& text) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    const unsigned char c = static_cast<unsigned char>(text[i]);
    const unsigned char next = i + 1 < text.size() ? static_cast<unsigned char>(text[i + 1]) : 0;
    if ((c < 0x20 && c != '\n' && c != '\t') || c == 0x7F || (c == 0xC2 && next >= 0x80 && next < 0xA0)) return true;
    if (text.compare(i, 3, "\xE2\x80\xAE") == 0 || text.compare(i, 3, "\xE2\x81\xA6") == 0) return true;
  }
  return false;
}

class Runner {
 public:
  Runner(std::string program, std::string recipes, double slack)
      : m_program(std::move(program)), m_recipes(std::move(recipes)), m_slack(slack) {
    char name[] = "/tmp/mountwright-hostile-XXXXXX";
    m_folder = mkdtemp(name);
    std::vector<fs::path> paths;
    for (const auto& entry : fs::directory_iterator(m_recipes)) {
      if (entry.path().string().ends_with(".technique.json")) paths.push_back(entry.path());
    }
    std::sort(paths.begin(), paths.end());
    for (const fs::path& path : paths) m_techniques.push_back(textOf(path));
  }
  Runner(const Runner&) = delete;
  Runner& operator=(const Runner&) = delete;
  ~Runner() { fs::remove_all(m_folder); }

  void work(std::uint64_t seed) {
    const hostile::File file = hostile::hostileFile(seed, m_techniques);
    m_what = "seed " + std::to_string(seed) + ", " + file.name;
    const fs::path data = m_folder / "data";
    fs::remove_all(data);
    fs::create_directories(data);
    if (file.kind == hostile::Kind::Record) {
      const fs::path path = m_folder / "hostile.record.json";
      write(path, file.text);
      command("import", {path, "--data", data});
      command("export", {file.id, "--data", data});
      return;
    }
    fs::path path = m_folder / "hostile.job.json";
    if (file.kind == hostile::Kind::Technique) {
      const fs::path technique = data / "techniques" / (file.id + ".technique.json");
      write(technique, file.text);
      command("check", {technique, "--data", data, "--recipes", m_recipes});
      path = m_recipes + "/jobs/heron.job.json";
    } else {
      write(path, file.text);
    }
    for (const char* name : {"check", "figures", "steps", "rehearse", "materials", "care"}) {
      command(name, {path, "--data", data, "--recipes", m_recipes});
    }
    for (const char* name : {"figures", "steps", "materials"}) {
      command(name, {path, "--json", "--data", data, "--recipes", m_recipes});
    }
  }

  // Of each command the slowest and the largest. Returns whether every promise was kept.
  bool report() const {
    for (const auto& [name, worst] : m_worst) {
      std::printf("%-10s slowest %6.2f s (%s)\n%-10s largest %6ld MB (%s)\n", name.c_str(), worst.seconds,
                  worst.slowest.c_str(), "", worst.kilobytes / 1024, worst.largest.c_str());
    }
    return m_kept;
  }

 private:
  struct Worst {
    double seconds = 0;
    long kilobytes = 0;
    std::string slowest, largest;
  };

  void command(const std::string& name, const std::vector<std::string>& rest) {
    Command command = {m_program, name};
    command.insert(command.end(), rest.begin(), rest.end());
    const Taken taken = run(command, m_folder);
    Worst& worst = m_worst[name];
    if (taken.seconds > worst.seconds) worst.seconds = taken.seconds, worst.slowest = m_what;
    if (taken.kilobytes > worst.kilobytes) worst.kilobytes = taken.kilobytes, worst.largest = m_what;
    const bool left = WIFEXITED(taken.status) && WEXITSTATUS(taken.status) <= 3;
    if (!left) fail(name, "did not leave with 0 to 3: " + textOf(m_folder / "err").substr(0, 300));
    if (taken.seconds > kSeconds * m_slack) fail(name, "took " + std::to_string(taken.seconds) + " s");
    if (taken.kilobytes > kKilobytes) fail(name, "took " + std::to_string(taken.kilobytes / 1024) + " MB");
    if (commandsTerminal(textOf(m_folder / "err")) || (name != "export" && commandsTerminal(textOf(m_folder / "out"))))
      fail(name, "lets a file command the terminal");
  }

  void fail(const std::string& name, const std::string& why) {
    m_kept = false;
    std::printf("%s: %s %s\n", m_what.c_str(), name.c_str(), why.c_str());
    std::fflush(stdout);
  }

  std::string m_program, m_recipes;
  double m_slack;
  fs::path m_folder;
  std::vector<std::string> m_techniques;
  std::string m_what;
  std::map<std::string, Worst> m_worst;
  bool m_kept = true;
};

}  // namespace

int main(int argc, char** argv) {
  if (argc < 5) {
    std::fprintf(stderr, "usage: run_hostile PROGRAM RECIPES COUNT FIRST-SEED [SLACK]\n");
    return 2;
  }
  const std::uint64_t count = std::strtoull(argv[3], nullptr, 10);
  const std::uint64_t first = std::strtoull(argv[4], nullptr, 10);
  Runner runner(argv[1], argv[2], argc > 5 ? std::strtod(argv[5], nullptr) : 1);
  for (std::uint64_t seed = first; seed < first + count; ++seed) runner.work(seed);
  return runner.report() ? 0 : 1;
}
