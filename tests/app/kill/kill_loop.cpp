// Kills the real process at random instants of a scripted job, half of them within 5 ms of a commit it has
// acknowledged, starts it again, and asks: is every acknowledged act there, whole; does it open at the same place;
// with the same measures and the same figures, to the last bit; do the waits that run show the time that is really
// left; is the file sound.
//
// A killed process leaves what it wrote with the operating system. This says nothing of power loss, where the disk
// may lose what the system believed to be written.
//
//   kill_loop KILLS SCRIPTED_BENCH JOB RECIPES [SEED]
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

#include "tests/app/kill/kept_record.h"
#include "tests/support/child_lines.h"
#include "tests/support/child_process.h"

namespace {

using kill_loop::KeptRecord;
using kill_loop::readRecord;
using tests::boottimeNanoseconds;
using tests::ChildProcess;
using tests::Lines;
using tests::sleepUntil;

struct Ack {
  std::string intentId;
  std::string place;
};

struct Program {
  std::string path;
  std::string job;
  std::string recipes;

  std::vector<std::string> working(const QTemporaryDir& data) const {
    return {path, "work", data.path().toStdString(), job, recipes, "1"};
  }
  std::vector<std::string> saying(const QTemporaryDir& data) const {
    return {path, "state", data.path().toStdString(), job, recipes};
  }
};

[[noreturn]] void fail(const std::string& what) {
  std::printf("FAILED: %s\n", what.c_str());
  std::exit(1);
}

std::vector<Ack> acksIn(const Lines& said) {
  std::vector<Ack> found;
  std::istringstream lines(said.whole());
  std::string word;
  for (Ack ack; lines >> word >> ack.intentId >> ack.place;) found.push_back(ack);
  return found;
}

// The same job worked by the same script and never killed: what every killed run is held against.
struct Reference {
  std::vector<Ack> acks;
  KeptRecord record;
  std::int64_t firstAckAfter = 0;  // nanoseconds since the start
};

QString recordFile(const QTemporaryDir& data) { return data.filePath("record.sqlite"); }

Reference workUndisturbed(const Program& program) {
  Reference reference;
  QTemporaryDir data;
  const std::int64_t start = boottimeNanoseconds();
  ChildProcess child(program.working(data), ChildProcess::Pipe::FromChild);
  Lines lines(child.pipe());
  while (lines.readMore()) {
    if (reference.firstAckAfter == 0) reference.firstAckAfter = boottimeNanoseconds() - start;
  }
  if (child.exitStatus() != 0) fail("the script does not reach the end of the job undisturbed");
  reference.acks = acksIn(lines);
  std::string error;
  reference.record = readRecord(recordFile(data), error);
  if (!error.empty()) fail(error);
  if (reference.acks.size() != reference.record.acts.size()) fail("undisturbed, not every act was acknowledged");
  return reference;
}

class Trial {
 public:
  Trial(Program program, Reference reference, unsigned seed)
      : m_program(std::move(program)), m_reference(std::move(reference)), m_random(seed), m_data(new QTemporaryDir) {}

  void killOnce(bool soonAfterAck) {
    ChildProcess child(m_program.working(*m_data), ChildProcess::Pipe::FromChild);
    if (!child.running()) fail("the program does not start");
    Lines lines(child.pipe());
    if (soonAfterAck) {
      const std::size_t wanted = pick(1, 12);
      while (acksIn(lines).size() < wanted && lines.readMore()) {
      }
      sleepUntil(boottimeNanoseconds() + static_cast<std::int64_t>(pick(0, 5000)) * 1000);
    } else {
      // From before the first act to well into the work.
      const auto reach = static_cast<std::size_t>(m_reference.firstAckAfter / 1000 * 2);
      const std::int64_t instant = boottimeNanoseconds() + static_cast<std::int64_t>(pick(0, reach)) * 1000;
      while (lines.readMoreUntil(instant)) {
      }
      sleepUntil(instant);
    }
    child.send(SIGKILL);
    while (lines.readMore()) {
    }
    const int status = child.exitStatus();
    const bool killed = WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
    if (!killed && status != 0) fail("the program ended by itself with status " + std::to_string(status));
    (soonAfterAck ? m_afterAck : m_anywhere) += killed ? 1 : 0;
    for (const Ack& ack : acksIn(lines)) m_acks.push_back(ack);
    judge();
    if (!killed || m_finished) startAnew();
  }

  int kills() const { return m_afterAck + m_anywhere; }

  void report() const {
    std::printf(
        "%d kills (%d within 5 ms of an acknowledged commit): %zu acts kept, %d of them before their "
        "acknowledgement got out, %d running waits checked, %d jobs begun\n",
        kills(), m_afterAck, m_actsKept + m_actsHere, m_unacknowledged + m_unacknowledgedHere, m_waitsChecked, m_jobs);
    if (m_actsKept + m_actsHere == 0 || m_waitsChecked == 0) fail("nothing was put to the proof");
  }

 private:
  std::size_t pick(std::size_t least, std::size_t most) {
    return std::uniform_int_distribution<std::size_t>(least, most)(m_random);
  }

  void judge() {
    // The restarted program comes first: it has to cope with the file just as the kill left it.
    const std::string said = sayState();
    std::string error;
    const KeptRecord record = readRecord(recordFile(*m_data), error);
    if (!error.empty()) fail(error);
    if (record.integrity != "ok") fail("integrity_check: " + record.integrity);
    if (!record.countHasNoGap) fail("the device's count has a gap");
    judgeActs(record);
    judgePlace(record, said);
    judgeWaits(record, said);
  }

  std::string sayState() {
    ChildProcess child(m_program.saying(*m_data), ChildProcess::Pipe::FromChild);
    Lines lines(child.pipe());
    while (lines.readMore()) {
    }
    if (child.exitStatus() != 0) fail("the program does not start again");
    return lines.text();
  }

  void judgeActs(const KeptRecord& record) {
    std::set<std::string> kept;
    for (std::size_t index = 0; index < record.acts.size(); ++index) {
      kept.insert(record.acts[index].intentId);
      if (index >= m_reference.record.acts.size()) fail("more acts than the job has");
      if (record.acts[index].types != m_reference.record.acts[index].types) {
        fail("act " + std::to_string(index + 1) + " is not whole");
      }
    }
    for (const Ack& ack : m_acks) {
      if (kept.count(ack.intentId) == 0) fail("acknowledged and lost: " + ack.intentId);
    }
    m_actsHere = kept.size();
    m_unacknowledgedHere = static_cast<int>(kept.size() - m_acks.size());
    m_killsHere += 1;
    if (m_unacknowledgedHere > m_killsHere) fail("more acts unacknowledged than kills can explain");
  }

  void judgePlace(const KeptRecord& record, const std::string& said) {
    std::istringstream lines(said);
    std::string word;
    std::string place;
    lines >> word >> place;
    const std::string expected = record.acts.empty() ? "none" : m_reference.acks[record.acts.size() - 1].place;
    if (place != expected) fail("opens at " + place + " instead of " + expected);
    const bool lastWasAcknowledged =
        !m_acks.empty() && !record.acts.empty() && m_acks.back().intentId == record.acts.back().intentId;
    if (lastWasAcknowledged && place != m_acks.back().place) fail("opens elsewhere than was acknowledged");
    m_finished = place.substr(0, place.find('|')) == "finished";
  }

  // Time left is what the wait says it takes, less what has passed on the machine's clock since the step was done.
  void judgeWaits(const KeptRecord& record, const std::string& said) {
    const std::int64_t now = boottimeNanoseconds();
    std::istringstream lines(said);
    for (std::string line; std::getline(lines, line);) {
      std::istringstream words(line);
      std::string word;
      std::string wait;
      std::string step;
      std::int64_t left = 0;
      std::int64_t opens = 0;
      int looks = 0;
      int certain = 0;
      words >> word;
      if (word != "wait") continue;
      words >> wait >> step >> left >> opens >> looks >> certain;
      if (!words) fail("cannot read: " + line);
      if (certain != 1) fail("the time of " + wait + " is uncertain within one boot");
      if (looks > 0) continue;
      const auto done = record.doneAt.find(step);
      if (done == record.doneAt.end()) fail(wait + " runs although its step was never done");
      const std::int64_t really = opens - (now - done->second) / 1'000'000;
      if (std::llabs(really - left) > 1000) {
        fail(wait + " shows " + std::to_string(left) + " ms left instead of " + std::to_string(really));
      }
      m_waitsChecked += 1;
    }
  }

  void startAnew() {
    m_actsKept += m_actsHere;
    m_unacknowledged += m_unacknowledgedHere;
    m_actsHere = 0;
    m_unacknowledgedHere = 0;
    m_killsHere = 0;
    m_acks.clear();
    m_data = std::make_unique<QTemporaryDir>();
    m_jobs += 1;
  }

  Program m_program;
  Reference m_reference;
  std::mt19937 m_random;
  std::unique_ptr<QTemporaryDir> m_data;
  std::vector<Ack> m_acks;
  bool m_finished = false;
  std::size_t m_actsHere = 0;
  int m_unacknowledgedHere = 0;
  int m_killsHere = 0;
  std::size_t m_actsKept = 0;
  int m_unacknowledged = 0;
  int m_waitsChecked = 0;
  int m_afterAck = 0;
  int m_anywhere = 0;
  int m_jobs = 1;
};

}  // namespace

int main(int argc, char* argv[]) {
  QCoreApplication application(argc, argv);
  if (argc < 5) return 2;
  std::setvbuf(stdout, nullptr, _IOLBF, 0);
  const int wanted = std::atoi(argv[1]);
  const Program program{argv[2], argv[3], argv[4]};
  const unsigned seed = argc > 5 ? static_cast<unsigned>(std::strtoul(argv[5], nullptr, 10)) : std::random_device{}();
  std::printf("seed %u\n", seed);
  Trial trial(program, workUndisturbed(program), seed);
  for (int round = 0; trial.kills() < wanted; ++round) {
    if (round > 3 * wanted + 10) fail("the program ends before it can be killed");
    trial.killOnce(trial.kills() % 2 == 0);
  }
  trial.report();
  return 0;
}
