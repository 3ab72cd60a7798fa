#include "tests/support/sound_faults.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QThread>
#include <csignal>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iostream>

namespace tests {

using app::alerts::Alerts;
using core::alerts::AlertSchedule;

int shell(const std::string& command) { return std::system((command + " >/dev/null 2>&1").c_str()); }

SoundServer::SoundServer() {
  // The others give up where the first does not answer yet.
  const std::filesystem::path socket = std::filesystem::path(qgetenv("XDG_RUNTIME_DIR").toStdString()) / "pipewire-0";
  std::filesystem::remove(socket);
  for (const char* part : {"pipewire", "wireplumber", "pipewire-pulse"}) {
    m_parts.emplace_back(std::vector<std::string>{part}, ChildProcess::Pipe::None);
    for (int i = 0; i < 500 && !std::filesystem::exists(socket); ++i) QThread::msleep(10);
  }
  for (int i = 0; i < 250 && shell("pactl info") != 0; ++i) QThread::msleep(20);
  m_answeredAt = boottimeNow();
}

SoundServer::~SoundServer() {
  send(SIGCONT);
  while (!m_parts.empty()) m_parts.pop_back();
}

void SoundServer::send(int signal) {
  for (const auto& part : m_parts) part.send(signal);
}

bool plugIn() {
  for (const std::int64_t until = boottimeNow() + 10 * kSecond; boottimeNow() < until; QThread::msleep(20)) {
    if (shell("pactl load-module module-null-sink sink_name=bench") != 0) continue;
    for (int i = 0; i < 40; ++i) {
      if (shell("test \"$(pactl get-default-sink)\" = bench") == 0) return true;
      shell("pactl set-default-sink bench");
      QThread::msleep(20);
    }
    // It came while the session manager was still starting and was never taken up.
    pullOut();
  }
  return false;
}

bool pullOut() { return shell("pactl unload-module module-null-sink") == 0; }

void spin(std::int64_t nanoseconds) {
  const std::int64_t until = boottimeNow() + nanoseconds;
  while (boottimeNow() < until) {
    QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
    QThread::msleep(5);
  }
}

bool becomes(const Alerts& alerts, Alerts::Sound sound, double seconds) {
  const std::int64_t start = boottimeNow();
  while (alerts.sound() != sound && double(boottimeNow() - start) / 1e9 < seconds) spin(kSecond / 200);
  std::cout << "sound " << int(alerts.sound()) << " after " << double(boottimeNow() - start) / 1e9 << " s\n";
  return alerts.sound() == sound;
}

std::shared_ptr<const AlertSchedule> dueNow(core::intents::AlertClass kind) {
  return scheduleOf({dueAlert("size", kind, boottimeNow())});
}

bool heard(Alerts& alerts) {
  SoundRecording recording;
  if (!recording.waitForSamples(3 * kSecond)) return false;
  const std::int64_t due = boottimeNow();
  alerts.publish(dueNow(core::intents::AlertClass::Open));
  spin(2 * kSecond);
  alerts.publish(std::make_shared<AlertSchedule>());
  return recording.onset(due, due + kSecond).has_value();
}

std::optional<double> soundsAfter(const SoundRecording& recording, std::int64_t from, double seconds) {
  const std::int64_t until = from + static_cast<std::int64_t>(seconds * 1e9);
  std::optional<std::size_t> onset;
  while (!onset && boottimeNow() < until + kSecond / 5) {
    spin(kSecond / 20);
    onset = recording.onset(from, until);
  }
  if (!onset) return std::nullopt;
  const double after = static_cast<double>(recording.instantOf(*onset) - from) / 1e9;
  std::cout << "heard after " << after << " s\n";
  return after;
}

pid_t playerOf(pid_t process) {
  // The kernel keeps fifteen letters of a name.
  const std::string command = "pgrep -x mountwright-sou -P " + std::to_string(process);
  FILE* found = popen(command.c_str(), "r");
  if (!found) return 0;
  int pid = 0;
  if (std::fscanf(found, "%d", &pid) != 1) pid = 0;
  pclose(found);
  return pid;
}

bool isAlive(pid_t process) {
  std::ifstream status("/proc/" + std::to_string(process) + "/stat");
  std::string line;
  // The state stands after the name in brackets; one that only waits to be buried plays nothing.
  return std::getline(status, line) && line.find(") Z ") == std::string::npos;
}

long wakeUps(pid_t process, const std::string& thread) {
  long sum = 0;
  const std::filesystem::path tasks = "/proc/" + std::to_string(process) + "/task";
  for (const auto& task : std::filesystem::directory_iterator(tasks)) {
    std::ifstream status(task.path() / "status");
    bool counts = thread.empty();
    for (std::string line; std::getline(status, line);) {
      if (line == "Name:\t" + thread) counts = true;
      if (counts && line.rfind("voluntary_ctxt_switches:", 0) == 0) sum += std::stol(line.substr(line.find('\t')));
    }
  }
  return sum;
}

}  // namespace tests
