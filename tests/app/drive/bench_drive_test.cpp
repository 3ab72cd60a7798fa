// What a maker sees from step to step on the real window: the right number, the right next act, a choice as keys.
#include <QThread>

#include "tests/app/drive/driven_bench.h"
#include "tests/support/catch.h"

using core::base::Value;
using tests::DrivenBench;
using tests::textOf;

using tests::kJob;

namespace {

constexpr int kStep = 1;  // BenchViewModel::Kind

int numberOf(const Value& state, const char* key) { return static_cast<int>(state.find(key)->asInteger()); }

bool onTheBench(const Value& state) { return textOf(state, "screen") == "bench" && numberOf(state, "kind") == kStep; }

// One press of Done by keyboard, or what the bench wants instead.
void goOn(DrivenBench& bench, const Value& state) {
  if (textOf(state, "screen") == "alert") {
    bench.letGuardPass();
  } else if (textOf(state, "screen") == "bench" && numberOf(state, "kind") != kStep) {
    bench.advance(10);
    return;
  }
  bench.key("Return");
}

void workUntil(DrivenBench& bench, const char* step) {
  for (int presses = 0; presses < 600; ++presses) {
    const Value state = bench.state();
    if (onTheBench(state) && textOf(state, "step").find(step) != std::string::npos) return;
    goOn(bench, state);
  }
  FAIL("the bench never comes to " << step);
}

}  // namespace

TEST_CASE("each step begins at its own first number, whichever was looked at last", "[touch]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  bench.letGuardPass();
  const Value first = bench.state();
  REQUIRE(numberOf(first, "numbers") > 1);
  const std::string step = textOf(first, "step");
  SECTION("turned in place, and the act done at its second") {
    bench.press("Next");
    REQUIRE(numberOf(bench.state(), "number") == 1);
    for (int i = 0; i < 6 && textOf(bench.state(), "step") == step; ++i) {
      bench.letGuardPass();
      bench.press("Done");
    }
    CHECK(textOf(bench.state(), "step") != step);
    CHECK(numberOf(bench.state(), "number") == 0);
  }
  SECTION("read from afar, one press away, and turned there by pedal, past the last one") {
    bench.press("From afar");
    REQUIRE(textOf(bench.state(), "screen") == "far");
    bench.letGuardPass();
    bench.key("Page_Down");
    CHECK(numberOf(bench.state(), "number") == 1);
    for (int i = 0; i < 10 && textOf(bench.state(), "screen") == "far"; ++i) {
      QThread::msleep(300);  // the same pedal again so soon would be the same press
      bench.key("Page_Down");
    }
    CHECK(textOf(bench.state(), "screen") == "bench");
    CHECK(textOf(bench.state(), "step") == step);
  }
}

TEST_CASE("setting out turns its numbers on the bench, by touch and by pedal, and the way of marking under More",
          "[touch]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  workUntil(bench, "mark-window@");
  const std::string step = textOf(bench.state(), "step");
  const int numbers = numberOf(bench.state(), "numbers");
  REQUIRE(numbers == 4);
  bench.letGuardPass();
  bench.press("Next");
  CHECK(numberOf(bench.state(), "number") == 1);
  CHECK(textOf(bench.state(), "screen") == "bench");
  SECTION("after the last one from the first") {
    for (int i = 2; i < numbers; ++i) {
      QThread::msleep(400);
      bench.press("Next");
    }
    CHECK(numberOf(bench.state(), "number") == numbers - 1);
    QThread::msleep(400);
    bench.press("First");
    CHECK(numberOf(bench.state(), "number") == 0);
    CHECK(textOf(bench.state(), "step") == step);
  }
  SECTION("by pedal, past the last one: done") {
    for (int i = 2; i < numbers; ++i) {
      bench.key("Page_Down");
      QThread::msleep(300);  // the same pedal again so soon would be the same press
      CHECK(numberOf(bench.state(), "number") == i);
      CHECK(textOf(bench.state(), "step") == step);
    }
    for (int i = 0; i < 6 && textOf(bench.state(), "step") == step; ++i) {
      bench.key("Page_Down");
      QThread::msleep(300);
    }
    CHECK(textOf(bench.state(), "step") != step);
    CHECK(numberOf(bench.state(), "number") == 0);
  }
  SECTION("by pedal, before the first one: the last act taken back") {
    bench.key("Page_Up");
    QThread::msleep(300);
    CHECK(numberOf(bench.state(), "number") == 0);
    CHECK(textOf(bench.state(), "step") == step);
    bench.key("Page_Up");
    CHECK(textOf(bench.state(), "step") != step);
  }
  SECTION("by borders, which the record then holds") {
    bench.letGuardPass();
    bench.press("More");
    bench.letGuardPass();
    bench.press("By borders");
    CHECK(textOf(bench.state(), "screen") == "bench");
    CHECK(numberOf(bench.state(), "numbers") == numbers);
    CHECK(numberOf(bench.state(), "number") == 0);
    bench.letGuardPass();
    bench.press("More");
    bench.letGuardPass();
    bench.press("By marks");
    CHECK(textOf(bench.state(), "screen") == "bench");
  }
  SECTION("done before the last number") {
    for (int i = 0; i < 6 && textOf(bench.state(), "step") == step; ++i) {
      bench.letGuardPass();
      bench.press("Done");
    }
    CHECK(textOf(bench.state(), "step") != step);
  }
}

TEST_CASE("what stood as next is what is shown when Done has been pressed", "[pedal]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  int compared = 0;
  std::string next, from;
  for (int presses = 0; presses < 260 && compared < 40; ++presses) {
    const Value state = bench.state();
    if (onTheBench(state)) {
      const std::string step = textOf(state, "step");
      if (!from.empty() && step != from && next.find("next: wait") != 0) {
        INFO(from << " said \"" << next << "\"; now " << step);
        CHECK(next.find("next: " + textOf(state, "title")) == 0);
        ++compared;
      }
      from = step;
      next = textOf(state, "next");
    } else if (textOf(state, "screen") == "bench" && !from.empty()) {
      INFO(from << " said \"" << next << "\"; now the bench waits");
      CHECK(next.find("next: wait") == 0);
      from.clear();
    } else if (textOf(state, "screen") == "alert") {
      // Answered or heard it may change what comes.
      from.clear();
    }
    goOn(bench, state);
  }
  CHECK(compared >= 20);
}

TEST_CASE("an overcut that leaves a decision offers both ways as keys, and the one pressed is in the record",
          "[touch]") {
  DrivenBench bench(QString::fromLatin1(kJob));
  workUntil(bench, "cut-window@");
  const std::string step = textOf(bench.state(), "step");
  const auto toTheChoice = [&] {
    bench.letGuardPass();
    bench.press("More");
    bench.letGuardPass();
    bench.press("Went wrong");
    bench.letGuardPass();
    bench.press("An overcut between 0.5 and 1 mm");
    bench.letGuardPass();
    CHECK(textOf(bench.state(), "screen") == "mend");
  };
  toTheChoice();
  CHECK(bench.payloads("FaultReported").empty());
  bench.press("Back");
  CHECK(bench.payloads("FaultReported").empty());
  toTheChoice();
  bench.press("Close it");
  REQUIRE(bench.payloads("FaultReported").size() == 1);
  CHECK(textOf(bench.payloads("FaultReported")[0], "way") == "close");
  bench.press("Done");
  CHECK(textOf(bench.state(), "step") == step);
  toTheChoice();
  bench.press("New blank");
  REQUIRE(bench.payloads("FaultReported").size() == 2);
  CHECK(textOf(bench.payloads("FaultReported")[1], "way") == "new-blank");
  bench.press("Done");
  CHECK(textOf(bench.state(), "step").find("cut-blank@") != std::string::npos);
}

TEST_CASE("on a tablet that stands upright Done is under the hand", "[touch]") {
  DrivenBench bench(QString::fromLatin1(kJob), 750, 1200);
  bench.letGuardPass();
  const std::string first = textOf(bench.state(), "step");
  for (int i = 0; i < 8 && textOf(bench.state(), "step") == first; ++i) {
    bench.letGuardPass();
    bench.press("Done");
  }
  CHECK(textOf(bench.state(), "step") != first);
  bench.letGuardPass();
  bench.press("Back");
  CHECK(textOf(bench.state(), "step") == first);
}
