// One of several identical pieces handed on alone.
#include <algorithm>
#include <random>

#include "core/base/text.h"
#include "core/jobs/one_piece.h"
#include "tests/app/workbench/bench.h"

using core::jobs::BenchPlace;
using core::jobs::StepStatus;
using namespace tests;

namespace {

std::string threeOf(const std::string& name) {
  std::string text = demoJob(name);
  text.insert(text.find('{') + 1, R"("deliver": "mount", "count": 3, )");
  return text;
}

// The step of the whole job that is a piece's step, whichever of the two it is named as.
const core::workflow::WorkflowStep* stepOf(const core::workflow::Workflow& whole, const std::string& step, int piece) {
  if (piece > 1) {
    if (const auto* own = whole.find(step + '#' + std::to_string(piece))) return own;
  }
  return whole.find(step);
}

// Works the job by chance for a while: acts, takings back, faults and notes at one piece or another.
std::string workedByChance(StoredBench& bench, const std::string& name, unsigned seed) {
  std::mt19937 random(seed);
  const std::string job = bench.takeIn(threeOf(name));
  for (int i = 0; i < 220 && core::jobs::benchPlace(bench.work.at(job)).kind != BenchPlace::Kind::Finished; ++i) {
    bench.clock.advance(61'000);
    const auto& state = *bench.work.job(job);
    const auto place = core::jobs::benchPlace(bench.work.at(job));
    if (i % 11 == 5) {
      REQUIRE(bench.refusal(job, core::intents::Undo{state.lastIntent}) == "");
    } else if (i % 17 == 9 && place.kind == BenchPlace::Kind::Step) {
      REQUIRE(bench.refusal(job, core::intents::AddNote{"a note", state.plan->workflow.steps[*place.step].id}) == "");
    } else {
      bench.goOn(job);
    }
    std::vector<std::pair<std::string, std::string>> faults;
    const auto& steps = bench.work.job(job)->plan->workflow.steps;
    for (std::size_t step = 0; step < steps.size(); ++step) {
      if (bench.work.job(job)->steps[step].status != StepStatus::Done) continue;
      for (const auto& fault : steps[step].faults) {
        if (fault.ways.empty()) faults.emplace_back(steps[step].id, fault.id);
      }
    }
    if (random() % 40 == 0 && !faults.empty()) {
      const auto& [step, fault] = faults[random() % faults.size()];
      REQUIRE(bench.refusal(job, core::intents::ReportFault{step, fault}) == "");
    }
  }
  return job;
}

}  // namespace

TEST_CASE("a piece handed on alone stands where it stands among the others, and is a job of its own") {
  const std::string name = GENERATE("pilots-chart", "tide-table");
  const unsigned seed = GENERATE(1U, 2U, 3U);
  INFO(name << ", seed " << seed);
  MemoryEventStore ours;
  StoredBench bench(ours);
  const std::string job = workedByChance(bench, name, seed);
  const auto& whole = *bench.work.job(job);
  MemoryEventStore theirs;
  StoredBench other(theirs, "another");
  std::size_t done = 0;
  for (int piece = 1; piece <= 3; ++piece) {
    INFO("piece " << piece);
    const auto file = bench.work.handOn(job, piece);
    INFO((file ? "" : core::base::dump(file.error())));
    REQUIRE(file);
    CHECK(bench.work.handOn(job, piece).value() == file.value());
    const auto imported = other.work.importJob(file.value());
    INFO(said(imported));
    REQUIRE(imported.jobId == core::jobs::idOfPiece(job, piece));
    CHECK(imported.problems.empty());
    const auto& alone = *other.work.job(imported.jobId);
    CHECK(alone.design->job.count == 1);
    const auto& steps = alone.plan->workflow.steps;
    for (std::size_t i = 0; i < steps.size(); ++i) {
      INFO(steps[i].id);
      const auto* own = stepOf(whole.plan->workflow, steps[i].id, piece);
      REQUIRE(own != nullptr);
      CHECK(alone.steps[i].status == whole.steps[*whole.plan->workflow.indexOf(own->id)].status);
      done += alone.steps[i].status == StepStatus::Done ? 1 : 0;
    }
    CHECK(other.work.importJob(file.value()).added == 0);
  }
  CHECK(done > 60);
  // All four lie beside each other in one record.
  REQUIRE(other.work.importJob(bench.work.exportJob(job)).jobId == job);
  CHECK(other.work.jobs().size() == 4);
}

TEST_CASE("a piece that there is not is refused in words, and so is one of a job of one") {
  MemoryEventStore ours;
  StoredBench bench(ours);
  const std::string three = bench.takeIn(threeOf("heron"));
  for (const int number : {0, -1, 4, 1000}) {
    const auto none = bench.work.handOn(three, number);
    REQUIRE_FALSE(none);
    CHECK(core::base::dump(none.error()) == "export.no-such-piece count=3");
  }
  const std::string one = bench.takeIn(demoJob("pilots-chart"));
  CHECK_FALSE(bench.work.handOn(one, 1));
}

TEST_CASE("a piece that went on elsewhere is taken up again without doubling what was done before") {
  MemoryEventStore ours;
  StoredBench bench(ours);
  const std::string job = bench.takeIn(threeOf("pilots-chart"));
  for (int i = 0; i < 30; ++i) {
    bench.clock.advance(61'000);
    bench.goOn(job);
  }
  MemoryEventStore theirs;
  StoredBench other(theirs, "another");
  const auto imported = other.work.importJob(bench.work.handOn(job, 2).value());
  for (int i = 0; i < 10; ++i) {
    other.clock.advance(61'000);
    other.goOn(imported.jobId);
  }
  REQUIRE(bench.work.importJob(other.work.exportJob(imported.jobId)).jobId == imported.jobId);
  CHECK(stateOf(bench, imported.jobId) == stateOf(other, imported.jobId));
}
