#include "app/convert/content_hash.h"
#include "app/words/words.h"
#include "app/workbench/stored_plan.h"
#include "core/base/text.h"
#include "core/workflow/compose.h"
#include "core/workflow/workflow_json.h"
#include "tests/app/workbench/bench.h"
#include "tests/support/events.h"

using core::base::replaceAll;
using namespace tests;

namespace {

std::string stepsOf(const core::workflow::Workflow& workflow) {
  return core::base::writeJson(core::workflow::stepsJson(workflow), 0);
}

}  // namespace

TEST_CASE("a job taken in is the job its file and the library make, before and after a restart") {
  const std::string text = demoJob(GENERATE("pilots-chart", "heron"));
  const auto design = core::design::readDesign(text).design;
  REQUIRE(design.has_value());
  const auto composed = core::workflow::compose(*design, tradeLibrary().library.catalogue, app::words::thingWords());
  REQUIRE(composed.ok());
  MemoryEventStore store;
  std::string job;
  {
    StoredBench bench(store);
    job = bench.takeIn(text);
    CHECK(stepsOf(bench.work.job(job)->plan->workflow) == stepsOf(composed.value()));
    CHECK(bench.work.jobs().at(0).title == design->job.title);
    CHECK(bench.work.jobs().at(0).reference == design->job.reference);
  }
  // A library that has nothing any more: the job follows the texts it was taken in with.
  FakeClock clock;
  app::workbench::Workbench later(store, clock, {}, "tablet");
  REQUIRE(later.load().id.empty());
  REQUIRE(later.job(job) != nullptr);
  CHECK(stepsOf(later.job(job)->plan->workflow) == stepsOf(composed.value()));
}

TEST_CASE("the same bytes are the job that is there") {
  MemoryEventStore store;
  StoredBench bench(store);
  const std::string job = bench.takeIn(demoJob());
  const auto events = store.all().size();
  const auto again = bench.work.takeIn(demoJob());
  CHECK(again.already);
  CHECK(again.jobId == job);
  CHECK(bench.work.jobs().size() == 1);
  CHECK(store.all().size() == events);
}

TEST_CASE("another content under the same reference is taken in as a design of its own, and said") {
  MemoryEventStore store;
  StoredBench bench(store);
  const auto first = bench.work.takeIn(demoJob());
  CHECK_FALSE(first.sameReference);
  const auto second = bench.work.takeIn(demoJob() + "\n");
  CHECK(second.sameReference);
  CHECK_FALSE(second.already);
  CHECK(second.jobId != first.jobId);
  CHECK(bench.work.jobs().size() == 2);
  CHECK_FALSE(bench.work.takeIn(demoJob("heron")).sameReference);
}

TEST_CASE("a file that is no job is refused with its problems and nothing is kept") {
  MemoryEventStore store;
  StoredBench bench(store);
  const auto taken = bench.work.takeIn("{ \"format\": \"mountwright-job/1\" }");
  CHECK(taken.jobId.empty());
  CHECK_FALSE(taken.problems.empty());
  CHECK(store.all().empty());
  CHECK(bench.work.jobs().empty());
}

TEST_CASE("a job whose steps nobody can make is refused and nothing is kept") {
  MemoryEventStore store;
  FakeClock clock;
  app::workbench::Library library = tradeLibrary().library;
  core::craft::Catalogue fewer;
  for (const auto* technique : library.catalogue.all()) {
    if (technique->id != "cut-windows") fewer.add(*technique);
  }
  library.catalogue = fewer;
  app::workbench::Workbench work(store, clock, library, "tablet");
  REQUIRE(work.load().id.empty());
  const auto taken = work.takeIn(demoJob());
  CHECK(taken.jobId.empty());
  CHECK_FALSE(taken.refusals.empty());
  CHECK(store.all().empty());
}

TEST_CASE("a job that cannot be kept is not on the bench") {
  MemoryEventStore store;
  StoredBench bench(store);
  store.failWrites(core::base::Message("store.full").with("path", "disk"));
  const auto taken = bench.work.takeIn(demoJob());
  CHECK(taken.jobId.empty());
  REQUIRE(taken.refusals.size() == 1);
  CHECK(taken.refusals[0].id == "store.full");
  CHECK(bench.work.jobs().empty());
  store.failWrites({});
  CHECK_FALSE(bench.takeIn(demoJob()).empty());
}

TEST_CASE("a job whose kept texts are gone, wrong or no longer read is listed with its trouble") {
  // With a summary at hand it is told when the job is opened, without one at once.
  const bool summed = GENERATE(true, false);
  MemoryEventStore store;
  std::string job;
  std::string jobHash;
  std::string techniqueHash;
  {
    StoredBench bench(store);
    job = bench.takeIn(demoJob());
    bench.takeIn(demoJob("heron"));
    jobHash = bench.work.jobs().at(0).jobHash;
    const auto takenIn = app::workbench::takenInBy(store.all().at(0));
    REQUIRE(takenIn.has_value());
    techniqueHash = takenIn->techniques.at(0).hash;
  }
  std::string expected;
  SECTION("the job's text is missing") {
    store.forgetText(jobHash);
    expected = "kept.text-missing";
  }
  SECTION("the job's text is another") {
    store.replaceText(jobHash, "{}");
    expected = "kept.text-damaged";
  }
  SECTION("a technique's text is missing") {
    store.forgetText(techniqueHash);
    expected = "kept.text-missing";
  }
  if (!summed) store.forgetSummaries();
  StoredBench bench(store);
  REQUIRE(bench.work.jobs().size() == 2);
  if (summed) CHECK(bench.work.job(job) == nullptr);
  const auto& entry = bench.work.jobs().at(bench.work.jobs().at(0).id == job ? 0 : 1);
  CHECK(entry.trouble.id == expected);
  CHECK_FALSE(entry.title.empty());
  CHECK(bench.work.job(job) == nullptr);
  CHECK(bench.work.submit(core::intents::OfJob{job, core::intents::BeginStep{"any"}}).id == expected);
  CHECK_FALSE(bench.work.exportRecord(job).empty());
}

TEST_CASE("a kept job text that this version cannot read is said so") {
  MemoryEventStore store;
  const std::string body = replaceAll(demoJob(), "mountwright-job/1", "mountwright-job/9");
  core::intents::TakeIn intent;
  intent.jobHash = app::convert::contentHash(body);
  REQUIRE(store.append({}, {{intent.jobHash, "job", "", body}}).ok());
  const auto plan = app::workbench::storedPlan(store, "one", intent);
  REQUIRE_FALSE(plan.ok());
  CHECK(plan.error().id == "kept.job-unreadable");
}

TEST_CASE("a job whose taking in this version cannot read is listed with its trouble") {
  MemoryEventStore store;
  core::record::Event strange = event("other", 1, 1000, "job/strange");
  SECTION("the first event is another") {}
  SECTION("it has another payload") {
    strange.type = core::record::JobTakenIn::kType;
    strange.payload = core::base::Value::texts({"one"});
  }
  SECTION("it has a later version") {
    strange.type = core::record::JobTakenIn::kType;
    strange.version = 2;
  }
  REQUIRE(store.append({strange}, {}).ok());
  StoredBench bench(store);
  REQUIRE(bench.work.jobs().size() == 1);
  CHECK(bench.work.jobs().at(0).trouble.id == "kept.taking-in-unreadable");
  CHECK(bench.work.job("strange") == nullptr);
}
