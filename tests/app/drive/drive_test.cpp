// The whole demo job on the real screens by real input, and what is asserted is the record it left.
#include <QThread>

#include <functional>
#include <map>
#include <set>

#include "tests/app/drive/driven_bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using core::base::Value;
using tests::DrivenBench;
using tests::textOf;

using tests::kJob;

namespace {

// BenchViewModel::Kind
enum Kind { NoJob, Step, Waiting, Missed, Finished };

int kindOf(const Value& state) { return static_cast<int>(state.find("kind")->asInteger()); }

// Works until the bench says the piece is finished. `forward` is one press of Done, `heard` answers an alert. Returns
// the number of presses.
int workThrough(DrivenBench& bench, const std::function<void(const Value&)>& forward,
                const std::function<void(const Value&)>& heard) {
  int idle = 0;
  int presses = 0;
  for (Value state = bench.state(); kindOf(state) != Finished || textOf(state, "screen") != "bench";
       state = bench.state()) {
    INFO(core::base::writeJson(state, 0));
    REQUIRE(kindOf(state) != NoJob);
    REQUIRE(kindOf(state) != Missed);
    REQUIRE(textOf(state, "refusal").empty());
    REQUIRE(presses < 2000);
    if (textOf(state, "screen") == "alert") {
      heard(state);
      ++presses;
    } else if (kindOf(state) == Waiting && textOf(state, "screen") == "bench") {
      REQUIRE(++idle < 4000);
      bench.advance(10);
    } else {
      forward(state);
      ++presses;
    }
  }
  return presses;
}

bool isOffered(const Value& state, const char* legend) {
  for (const Value& key : state.find("keys")->items()) {
    if (textOf(key, "legend") == legend) return true;
  }
  return false;
}

// Done, or where measures have to be told before it, that one is as drawn.
const char* onward(const Value& state) {
  return !isOffered(state, "Done") && isOffered(state, "As drawn") ? "As drawn" : "Done";
}

// Every step done once, none before those that must come before it.
void requireWholeRecord(const Value& exported) {
  const auto design = tests::designOf(tests::demoJobText());
  const auto workflow = tests::composed(design, tests::shippedTechniques());
  std::set<std::string> done;
  std::size_t events = 0;
  for (const Value& event : exported.find("events")->items()) {
    ++events;
    if (textOf(event, "type") != "StepDone") continue;
    const std::string step = textOf(*event.find("payload"), "step");
    const auto index = workflow.indexOf(step);
    INFO(step);
    REQUIRE(index);
    for (const std::size_t before : workflow.steps[*index].before) CHECK(done.contains(workflow.steps[before].id));
    CHECK(done.insert(step).second);
  }
  CHECK(done.size() == workflow.steps.size());
  CHECK(events > done.size());
}

}  // namespace

TEST_CASE("the demo job is finished by touch alone", "[touch]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  std::string last;
  const auto click = [&](const Value& state, const char* legend) {
    const std::string screen = textOf(state, "screen") + textOf(state, "alert");
    if (screen != last) bench.letGuardPass();
    last = screen;
    INFO(core::base::writeJson(state, 0));
    REQUIRE(bench.click(legend));
    QThread::msleep(300);  // the same key again so soon would be the same touch
  };
  workThrough(
      bench, [&](const Value& state) { click(state, onward(state)); },
      [&](const Value& state) { click(state, "Heard"); });
  requireWholeRecord(bench.exported());
}

TEST_CASE("led the short way, the demo job is finished by touch with at most ninety presses", "[touch]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  std::string last;
  const auto click = [&](const Value& state, const char* legend) {
    const std::string screen = textOf(state, "screen") + textOf(state, "alert");
    if (screen != last) bench.letGuardPass();
    last = screen;
    INFO(core::base::writeJson(state, 0));
    REQUIRE(bench.click(legend));
    QThread::msleep(300);
  };
  click(bench.state(), "More");
  click(bench.state(), "Jobs");
  click(bench.state(), "Pilot's chart of the outer bar");
  click(bench.state(), "Short way");
  click(bench.state(), "Done");
  const int presses = workThrough(
      bench, [&](const Value& state) { click(state, onward(state)); },
      [&](const Value& state) { click(state, "Heard"); });
  WARN(presses << " presses");
  CHECK(presses <= 90);
  requireWholeRecord(bench.exported());
}

TEST_CASE("the demo job is finished by pedal keys alone", "[pedal]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  int turn = 0;
  // Any of the keys a pedal may send.
  const char* const forward[] = {"Page_Down", "Right", "Down", "space", "Return"};
  const auto press = [&](const Value&) { bench.key(forward[turn++ % 5]); };
  const auto heard = [&](const Value&) {
    bench.letGuardPass();
    if (turn++ % 2 == 0) {
      bench.key("Return");
    } else {
      bench.key("Page_Down", 850);
    }
  };
  workThrough(bench, press, heard);
  requireWholeRecord(bench.exported());
}

TEST_CASE("an act taken back by pedal and done again stands once, and what was taken back stays in the record",
          "[pedal]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  const std::string first = textOf(bench.state(), "step");
  while (textOf(bench.state(), "step") == first) bench.key("Page_Down");
  QThread::msleep(300);
  for (int i = 0; i < 4 && textOf(bench.state(), "step") != first; ++i) {
    bench.key("Page_Up");
    QThread::msleep(300);
  }
  REQUIRE(textOf(bench.state(), "step") == first);
  while (textOf(bench.state(), "step") == first) {
    bench.key("Right");
    QThread::msleep(300);
  }
  std::map<std::string, int> done;
  int undone = 0;
  const Value exported = bench.exported();
  for (const Value& event : exported.find("events")->items()) {
    if (textOf(event, "type") == "StepDone") ++done[textOf(*event.find("payload"), "step")];
    undone += textOf(event, "type") == "Undone" ? 1 : 0;
  }
  CHECK_FALSE(done.empty());
  for (const auto& [step, times] : done) CHECK(times == 2);
  CHECK(undone == 1);
}
