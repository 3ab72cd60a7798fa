// Techniques changed while a job is worked by them: told, taken, taken back, handed on.
#include <QTemporaryDir>

#include "core/base/text.h"
#include "tests/app/workbench/bench.h"

using core::base::replaceAll;
using core::workflow::StepChange;
using namespace tests;

namespace {

// The trade's techniques, but for one that the bench's own file stands in for.
app::workbench::Library with(const std::string& id,
                             const std::vector<std::pair<std::string, std::string>>& replacements) {
  auto text = readWholeFile(PROJECT_ROOT "/recipes/" + id + ".technique.json");
  REQUIRE(text.has_value());
  for (const auto& [found, put] : replacements) {
    INFO(found);
    REQUIRE(text->find(found) != std::string::npos);
    text = replaceAll(*text, found, put);
  }
  QTemporaryDir own;
  REQUIRE(writeWholeFile(own.filePath("own.technique.json").toStdString(), *text));
  const auto loaded = app::workbench::loadLibrary(QStringLiteral(PROJECT_ROOT "/recipes"), own.path());
  for (const auto& problem : loaded.problems) UNSCOPED_INFO(core::base::dump(problem.problem));
  REQUIRE(loaded.problems.empty());
  return loaded.library;
}

app::workbench::Library longerLook() {
  return with("final-look", {{R"("early": "2 min", "likely": "4 min", "late": "8 min")",
                              R"("early": "20 min", "likely": "40 min", "late": "80 min")"}});
}

// What stands between blank and corner is another fact by another name.
app::workbench::Library otherBlanks() { return with("square-boards", {{"this.blank.cut", "this.blank.sawn"}}); }

// A step before the first, which needs what it makes.
app::workbench::Library wipedBlanks() {
  return with("square-boards", {{R"("steps": [
    {
      "id": "cut-blank",)",
                                 R"("steps": [
    {
      "id": "wipe",
      "title": "Wipe the sheet for the {name}",
      "do": ["Brush the dust off both sides."],
      "good": "No speck on either side.",
      "hands": "clean",
      "work": { "early": "1 min", "likely": "2 min", "late": "3 min", "source": "the bench's own" },
      "needs": ["art.measured"],
      "makes": ["this.sheet.wiped"]
    },
    {
      "id": "cut-blank",)"},
                                {R"("needs": ["art.measured", {)", R"("needs": ["this.sheet.wiped", {)"}});
}

std::string begunJob(core::record::EventStore& store, int acts) {
  StoredBench bench(store);
  const std::string job = bench.takeIn(demoJob());
  for (int i = 0; i < acts; ++i) {
    bench.clock.advance(61'000);
    bench.goOn(job);
  }
  CHECK_FALSE(bench.work.renewalOf(job).has_value());
  CHECK(bench.work.renew(job).id == "renewal.nothing");
  return job;
}

std::size_t doneIn(const core::jobs::JobState& state) {
  std::size_t count = 0;
  for (const auto& step : state.steps) count += step.status == core::jobs::StepStatus::Done ? 1 : 0;
  return count;
}

}  // namespace

TEST_CASE("a technique changed under way is offered, taken, and what is done stays done") {
  MemoryEventStore store;
  const std::string job = begunJob(store, 25);
  StoredBench bench(store, "tablet", longerLook());
  const std::string before = stateOf(bench, job);
  const std::size_t done = doneIn(*bench.work.job(job));
  const auto renewal = bench.work.renewalOf(job);
  REQUIRE(renewal);
  CHECK(renewal->refused.id.empty());
  REQUIRE(renewal->differences.size() == 1);
  CHECK(renewal->differences[0].step == "final-look/look");
  CHECK(renewal->differences[0].change == StepChange::Differs);
  REQUIRE(renewal->differences[0].what.size() == 1);
  CHECK(core::base::dump(renewal->differences[0].what[0]) ==
        "renewal.time before=120000..480000(240000)ms after=1200000..4800000(2400000)ms");

  REQUIRE(bench.work.renew(job).id.empty());
  CHECK_FALSE(bench.work.renewalOf(job).has_value());
  const auto* state = bench.work.job(job);
  CHECK(doneIn(*state) == done);
  CHECK(state->plan->workflow.find("final-look/look")->work.likely == core::units::Duration::minutes(40));
  const std::string renewed = stateOf(bench, job);

  SECTION("opened again it is as it was") {
    StoredBench again(store, "tablet", longerLook());
    CHECK(stateOf(again, job) == renewed);
    CHECK_FALSE(again.work.renewalOf(job).has_value());
  }
  SECTION("whatever techniques the program has by then") {
    StoredBench again(store);
    CHECK(stateOf(again, job) == renewed);
    REQUIRE(again.work.renewalOf(job));
    REQUIRE(again.work.renew(job).id.empty());
    CHECK_FALSE(again.work.renewalOf(job).has_value());
    CHECK(again.work.job(job)->plan->workflow.find("final-look/look")->work.likely ==
          core::units::Duration::minutes(4));
  }
  SECTION("taken back it is worked as it was begun, and can be taken once more") {
    const std::string act = bench.work.lastIntentId();
    REQUIRE(bench.refusal(job, core::intents::Undo{act}) == "");
    CHECK(stateOf(bench, job) == before);
    CHECK(bench.work.job(job)->plan->workflow.find("final-look/look")->work.likely ==
          core::units::Duration::minutes(4));
    REQUIRE(bench.work.renewalOf(job));
    REQUIRE(bench.refusal(job, core::intents::Undo{bench.work.lastIntentId()}) == "");
    CHECK(stateOf(bench, job) == renewed);
    StoredBench again(store, "tablet", longerLook());
    CHECK(stateOf(again, job) == renewed);
  }
  SECTION("not once something was worked by the new ones") {
    const std::string act = bench.work.lastIntentId();
    bench.goOn(job);
    CHECK(bench.work.submit(core::intents::OfJob{job, core::intents::Undo{act}}).id == "record.others-rest-on-it");
  }
  SECTION("handed on it is worked by the same, taken back there too") {
    const std::string act = bench.work.lastIntentId();
    MemoryEventStore theirs;
    StoredBench other(theirs, "another");
    const auto imported = other.work.importJob(bench.work.exportJob(job));
    for (const auto& problem : imported.problems) UNSCOPED_INFO(core::base::dump(problem));
    REQUIRE(imported.jobId == job);
    CHECK(stateOf(other, job) == renewed);
    REQUIRE(other.refusal(job, core::intents::Undo{act}) == "");
    CHECK(stateOf(other, job) == before);
  }
  SECTION("the record says so") {
    const auto timeline = bench.work.timeline(job, core::jobs::Order::NewestFirst);
    REQUIRE_FALSE(timeline.empty());
    CHECK(timeline[0].what.id == "timeline.techniques-renewed");
  }
}

TEST_CASE("what is done is not made another thing") {
  MemoryEventStore store;
  const std::string job = begunJob(store, 25);
  StoredBench bench(store, "tablet", otherBlanks());
  const std::string before = stateOf(bench, job);
  const auto renewal = bench.work.renewalOf(job);
  REQUIRE(renewal);
  CHECK(renewal->refused.id == "renewal.contradicts-done");
  CHECK(bench.work.renew(job).id == "renewal.contradicts-done");
  CHECK(stateOf(bench, job) == before);
  CHECK(bench.work.exportRecord(job).find("TechniquesRenewed") == std::string::npos);
}

TEST_CASE("before anything is done all of it can be taken") {
  MemoryEventStore store;
  const std::string job = begunJob(store, 0);
  StoredBench bench(store, "tablet", otherBlanks());
  REQUIRE(bench.work.renew(job).id.empty());
  for (int i = 0; i < 25; ++i) {
    bench.clock.advance(61'000);
    bench.goOn(job);
  }
}

TEST_CASE("a step that comes too late is said to") {
  MemoryEventStore store;
  const std::string job = begunJob(store, 25);
  StoredBench bench(store, "tablet", wipedBlanks());
  const auto renewal = bench.work.renewalOf(job);
  REQUIRE(renewal);
  CHECK(renewal->refused.id.empty());
  REQUIRE_FALSE(renewal->differences.empty());
  std::size_t coming = 0;
  for (const auto& difference : renewal->differences) {
    if (difference.change != StepChange::Comes) continue;
    ++coming;
    REQUIRE(renewal->comesLate.contains(difference.step));
    CHECK(renewal->comesLate.at(difference.step).find("to the outer size") != std::string::npos);
  }
  CHECK(coming == bench.work.job(job)->plan->design.job.boards.size());
  REQUIRE(bench.work.renew(job).id.empty());
  const auto place = core::jobs::benchPlace(bench.work.at(job));
  REQUIRE(place.kind == core::jobs::BenchPlace::Kind::Step);
  CHECK(bench.work.job(job)->plan->workflow.steps[*place.step].id.find("square-boards/wipe@") == 0);
}

TEST_CASE("put away, nothing is taken anew") {
  MemoryEventStore store;
  const std::string job = begunJob(store, 1);
  StoredBench bench(store, "tablet", longerLook());
  REQUIRE(bench.refusal(job, core::intents::PutAway{}) == "");
  CHECK(bench.work.renew(job).id == "record.put-away");
}
