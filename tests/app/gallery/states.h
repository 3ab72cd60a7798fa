#pragma once
// A bench in memory brought into every state the screens have to show.
#include <QSize>
#include <algorithm>
#include <functional>
#include <string>
#include <vector>

#include "app/viewmodels/desk.h"
#include "app/workbench/workbench.h"
#include "tests/support/fake_clock.h"
#include "tests/support/memory_event_store.h"

namespace tests {

class Stage {
 public:
  // Takes in these jobs of the recipes folder ("heron", "pilots-chart"); "heron*12": as twelve mounts.
  explicit Stage(const std::vector<std::string>& jobs);

  app::viewmodels::Desk& desk() { return *m_desk; }
  FakeClock& clock() { return m_clock; }
  app::workbench::Workbench& workbench() { return *m_workbench; }
  const MemoryEventStore& store() const { return m_store; }

  // Begins a design from the job of that name and opens it.
  bool beginDesign(const std::string& job);

  // The program opened again where a technique was changed meanwhile: in its file `put` instead of `found`.
  bool reopenWith(const std::string& technique, const std::string& found, const std::string& put);

  // Spoils the kept text of the job of that name, as a disk may.
  bool damage(const std::string& job);
  // The program opened again.
  bool reopen();

  // Finishes what is shown, letting minutes go by where nothing can be started, until `there`. False where that never
  // happens.
  bool workUntil(const std::function<bool()>& there);

 private:
  FakeClock m_clock;
  MemoryEventStore m_store;
  // Two stages are two benches.
  std::string m_deviceId = [] {
    static int stages = 0;
    return "bench-" + std::to_string(++stages);
  }();
  std::unique_ptr<app::workbench::Workbench> m_workbench;
  std::unique_ptr<app::viewmodels::Desk> m_desk;
};

struct State {
  std::string name;
  std::string screen;  // of Main.qml
  std::vector<std::string> jobs;
  std::function<bool(Stage&)> reach;
};

const std::vector<State>& states();

// A tablet's screen, and how long its longer side is.
struct Tablet {
  QSize size;
  double longerMm = 217;

  bool upright() const { return size.height() > size.width(); }
  bool isSmall() const { return longerMm < 200; }
  double dotsPerMm() const { return std::max(size.width(), size.height()) / longerMm; }
};

// Ten inches at two densities, ten that stand upright, and seven: 155 mm by little more than three corner keys.
const std::vector<Tablet>& tablets();
// Of the bench and not of the desk: to be worked on a tablet that stands upright, and on a small one, as well.
bool isOfBench(const State& state);
bool isShownOn(const State& state, const Tablet& tablet);

}  // namespace tests
