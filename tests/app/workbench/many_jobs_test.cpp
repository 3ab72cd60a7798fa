// Jobs that are not folded are as if they were: whatever was done, by whom, and however the program ended.
#include <QTemporaryDir>
#include <algorithm>
#include <random>

#include "app/stores/sqlite_event_store.h"
#include "app/workbench/job_search.h"
#include "app/workbench/job_summary.h"
#include "core/base/text.h"
#include "core/workflow/agenda.h"
#include "tests/app/workbench/bench.h"
#include "tests/support/many_jobs.h"

using namespace tests;
using app::workbench::JobEntry;
using core::jobs::BenchPlace;

namespace {

// Everything a bench shows of its jobs.
std::string shown(StoredBench& bench) {
  std::string text;
  const auto schedule = bench.work.schedule();
  for (const auto& alert : schedule->alerts) {
    text += "alert " + alert.wait + ' ' + std::string(core::intents::name(alert.alert)) + ' ' +
            std::to_string(alert.dueBoottimeNanoseconds) + '\n';
  }
  const auto& learning = bench.work.shop().learning;
  for (const JobEntry& entry : bench.work.jobs()) {
    text += entry.id + '|' + entry.title + '|' + entry.reference + '|' + entry.client + '|' + entry.due + '|' +
            core::base::dump(entry.trouble) + '|' + (entry.archived ? "away|" : "here|") +
            std::to_string(entry.changedUtc) + '|' + std::to_string(static_cast<int>(entry.place)) + '|' + entry.step +
            '|' + std::to_string(entry.done) + '/' + std::to_string(entry.all) + (entry.rests ? "|rests" : "") + '\n';
    for (const auto& run : entry.runs) {
      text += "  runs " + run.wait + ' ' + std::to_string(run.opens.likely.inMilliseconds()) + ' ' +
              std::to_string(run.elapsed.inMilliseconds()) + '\n';
    }
  }
  for (const JobEntry& entry : std::vector<JobEntry>(bench.work.jobs())) {
    const auto* state = bench.work.job(entry.id);
    REQUIRE(state != nullptr);
    text += core::jobs::dump(*state) + state->lastIntent + '|' + state->lastUndo + '\n';
    for (const auto& [id, run] : state->waits) {
      const auto belief = learning.opening.of(core::workflow::kindOf(*run.wait));
      text += core::base::shortestNumber(belief.mean) + ' ' + std::to_string(belief.count) + '\n';
    }
    // As it is listed once it is folded.
    const auto place = core::jobs::benchPlace(bench.work.at(entry.id));
    REQUIRE(entry.place == place.kind);
    REQUIRE(entry.done == place.stepsDone);
    REQUIRE(entry.all == bench.work.job(entry.id)->plan->workflow.steps.size());
  }
  return text;
}

// The same record opened by a bench that knows nothing of it, and by one that believes what was kept beside it.
void checkSame(const MemoryEventStore& store, const FakeClock& clock) {
  const auto opened = [&](bool believes) {
    MemoryEventStore copy = store;
    if (!believes) copy.forgetSummaries();
    StoredBench bench(copy);
    bench.clock = clock;
    REQUIRE(bench.work.heartbeat().id.empty());
    return shown(bench);
  };
  const std::string believing = opened(true);
  const std::string folding = opened(false);
  REQUIRE(believing == folding);
}

class Life {
 public:
  Life(std::uint32_t seed, MemoryEventStore& store) : m_random(seed), m_store(store) { start(); }

  void act() {
    m_bench->clock.advance(std::uniform_int_distribution<std::int64_t>(1000, 4'000'000)(m_random));
    const auto& jobs = m_bench->work.jobs();
    const std::string job = jobs.empty() ? "" : jobs[pick(jobs.size())].id;
    switch (pick(24)) {
      case 0:
        m_bench->takeIn(demoJob(pick(2) == 0 ? "pilots-chart" : "tide-table") + std::string(++m_taken, '\n'));
        break;
      case 1: room(); break;
      case 2: (void)m_bench->work.heartbeat(); break;
      case 3: end(pick(2) == 0); break;
      case 4: (void)m_bench->work.submit(core::intents::OfJob{job, core::intents::PutAway{}}); break;
      case 5: (void)m_bench->work.submit(core::intents::OfJob{job, core::intents::BringBack{}}); break;
      case 6: undo(job); break;
      case 7: otherTablet(job); break;
      case 8: look(job); break;
      case 9: toItsEnd(job); break;
      default:
        for (int i = 0; i < 6; ++i) goOn(job);
    }
  }
  const FakeClock& clock() const { return m_bench->clock; }
  StoredBench& bench() { return *m_bench; }

 private:
  std::size_t pick(std::size_t count) { return std::uniform_int_distribution<std::size_t>(0, count - 1)(m_random); }

  void start() {
    const FakeClock clock = m_bench ? m_bench->clock : FakeClock();
    m_bench = nullptr;
    m_bench = std::make_unique<StoredBench>(m_store);
    m_bench->clock = clock;
  }
  // Ended or killed: then nothing more is written.
  void end(bool killed) {
    if (killed) m_store.failWrites(core::base::Message("store.full"));
    const FakeClock clock = m_bench->clock;
    m_bench = nullptr;
    m_store.failWrites({});
    m_bench = std::make_unique<StoredBench>(m_store);
    m_bench->clock = clock;
    if (pick(3) == 0) m_bench->clock.reboot(60'000);
  }
  void room() {
    core::intents::EnterRoom intent;
    intent.room.temperature = core::units::Temperature::celsius(17.0 + static_cast<double>(pick(6)));
    intent.room.humidity = core::units::Humidity::percent(45.0 + static_cast<double>(pick(20)));
    REQUIRE(m_bench->work.submit(core::intents::OfShop{intent}).id.empty());
  }
  void undo(const std::string& job) {
    if (job.empty() || m_bench->work.job(job) == nullptr) return;
    const auto& log = m_bench->work.job(job)->log;
    if (log.size() < 2) return;
    (void)m_bench->work.submit(core::intents::OfJob{
        job, core::intents::Undo{log[log.size() - 1 - pick(std::min<std::size_t>(4, log.size() - 1))].intentId}});
  }
  void look(const std::string& job) {
    if (job.empty() || m_bench->work.job(job) == nullptr) return;
    const auto& waits = m_bench->work.job(job)->waits;
    if (waits.empty()) return;
    (void)m_bench->work.submit(core::intents::OfJob{
        job, core::intents::LookAt{std::next(waits.begin(), static_cast<std::ptrdiff_t>(pick(waits.size())))->first,
                                   core::intents::Verdict::NotYet}});
  }
  void goOn(const std::string& job) {
    if (job.empty() || m_bench->work.job(job) == nullptr || m_bench->work.job(job)->putAway) return;
    const auto place = core::jobs::benchPlace(m_bench->work.at(job));
    if (place.kind == BenchPlace::Kind::Finished || place.kind == BenchPlace::Kind::Stuck) return;
    (void)m_bench->work.submit(core::intents::OfJob{job, nextAct(m_bench->work.at(job))});
  }
  void toItsEnd(const std::string& job) {
    for (int i = 0; i < 400; ++i) goOn(job);
  }
  // The job goes to another tablet, is worked there, and comes back.
  void otherTablet(const std::string& job) {
    if (job.empty()) return;
    MemoryEventStore theirs;
    {
      StoredBench other(theirs, "tablet-" + std::to_string(++m_taken));
      other.clock = m_bench->clock;
      REQUIRE(other.work.importJob(m_bench->work.exportJob(job)).jobId == job);
      for (std::size_t acts = pick(5); acts > 0; --acts) {
        const auto place = core::jobs::benchPlace(other.work.at(job));
        if (place.kind == BenchPlace::Kind::Finished || place.kind == BenchPlace::Kind::Stuck) break;
        (void)other.work.submit(core::intents::OfJob{job, nextAct(other.work.at(job))});
      }
      const auto imported = m_bench->work.importJob(other.work.exportJob(job));
      REQUIRE(imported.jobId == job);
    }
  }

  std::mt19937 m_random;
  MemoryEventStore& m_store;
  std::unique_ptr<StoredBench> m_bench;
  std::size_t m_taken = 0;
};

}  // namespace

TEST_CASE("jobs listed from summaries are as if they were folded, whatever life they had") {
  for (std::uint32_t seed = 1; seed <= 4; ++seed) {
    INFO("seed " << seed);
    MemoryEventStore store;
    Life life(seed, store);
    for (int acts = 0; acts < 60; ++acts) {
      life.act();
      if (acts % 6 == 5) checkSame(store, life.clock());
    }
    // The bench that lived it, with what it never folded, beside one that begins anew.
    REQUIRE(life.bench().work.heartbeat().id.empty());
    const std::string lived = shown(life.bench());
    MemoryEventStore copy = store;
    copy.forgetSummaries();
    StoredBench anew(copy);
    anew.clock = life.clock();
    REQUIRE(anew.work.heartbeat().id.empty());
    for (const JobEntry& entry : life.bench().work.jobs()) {
      CHECK(core::jobs::dump(*anew.work.job(entry.id)) == core::jobs::dump(*life.bench().work.job(entry.id)));
    }
  }
}

TEST_CASE("a job that is not folded learns of what another made ready for it, and of its taking back") {
  MemoryEventStore store;
  std::string first;
  std::string second;
  {
    StoredBench bench(store);
    first = bench.takeIn(demoJob());
    second = bench.takeIn(demoJob() + "\n");
  }
  StoredBench bench(store);
  const auto line = [&] { return bench.work.jobs().at(bench.work.jobs().at(0).id == second ? 0 : 1); };
  (void)bench.work.schedule();
  const int loads = store.loads();
  (void)bench.work.job(first);
  const JobEntry untouched = line();
  CHECK(untouched.rests);
  CHECK(untouched.done == 0);
  const auto ofBench = [&] { return store.all().back().stream == "bench/tablet"; };
  for (int acts = 0; !ofBench(); ++acts) {
    REQUIRE(acts < 500);
    CHECK(store.loads() == loads + 1);
    bench.goOn(first);
  }
  CHECK(line().done == 1);
  CHECK_FALSE(line().rests);
  checkSame(store, bench.clock);
  REQUIRE(bench.refusal(first, core::intents::Undo{bench.work.lastIntentId()}) == "");
  JobEntry back = line();
  CHECK(back.done == 0);
  CHECK(back.rests);
  checkSame(store, bench.clock);
  REQUIRE(bench.refusal(first, core::intents::Undo{bench.work.lastIntentId()}) == "");
  CHECK(line().done == 1);
  checkSame(store, bench.clock);
}

TEST_CASE("a finished job whose preparation another bench takes back later is finished no more") {
  MemoryEventStore store;
  std::string job;
  FakeClock clock;
  {
    StoredBench bench(store);
    job = bench.takeIn(demoJob());
    for (int acts = 0; core::jobs::benchPlace(bench.work.at(job)).kind != BenchPlace::Kind::Finished; ++acts) {
      REQUIRE(acts < 500);
      bench.clock.advance(1000);
      bench.goOn(job);
    }
    clock = bench.clock;
  }
  const auto made = std::find_if(store.all().begin(), store.all().end(), [](const core::record::Event& event) {
    return event.stream == "bench/tablet" && event.type == core::record::StepDone::kType;
  });
  REQUIRE(made != store.all().end());
  core::record::Event event = *made;
  event.deviceId = "another";
  event.stream = "bench/another";
  std::int64_t number = 0;
  const auto keep = [&](const char* type, const char* key, const std::string& value) {
    event.deviceSequence = ++number;
    event.eventId = "another-" + std::to_string(number);
    event.intentId = "act-" + std::to_string(number);
    event.hlc = core::record::tick(store.position("another").value().hlc, 0);
    event.type = type;
    event.payload = core::base::Value::object().set(key, core::base::Value::text(value));
    REQUIRE(store.append({event}, {}).ok());
    checkSame(store, clock);
    StoredBench bench(store);
    (void)bench.work.schedule();
    return bench.work.jobs().at(0).place == BenchPlace::Kind::Finished;
  };
  const std::string step = core::record::textOf(made->payload, "step");
  const std::string first = made->intentId;
  // A bench that has not worked the job has no say in it.
  CHECK(keep(core::record::Undone::kType, "intent", first));
  event.stream = "job/" + job;
  CHECK_FALSE(keep(core::record::NoteAdded::kType, "text", "worked here too"));
  event.stream = "bench/another";
  CHECK(keep(core::record::StepDone::kType, "step", step));
  CHECK_FALSE(keep(core::record::Undone::kType, "intent", "act-3"));
  CHECK(keep(core::record::Undone::kType, "intent", "act-4"));
}

TEST_CASE("opening reads no job that rests, and what runs before anything but the lines is asked for") {
  MemoryEventStore store;
  FakeClock clock;
  ManyJobs many;
  many.jobs = 60;
  many.events = 260;
  many.inHand = 3;
  REQUIRE(makeManyJobs(many, store, clock, tradeLibrary().library, demoJob()) > 60 * 260);
  std::vector<JobEntry> folded;
  {
    StoredBench bench(store);
    bench.work.schedule();
    folded = bench.work.jobs();
  }
  REQUIRE(folded.size() == 60);
  const int before = store.loads();
  StoredBench bench(store);
  const int benches = 1;
  CHECK(store.loads() - before == benches);
  CHECK(bench.work.jobs().size() == 60);
  const auto running = std::count_if(folded.begin(), folded.end(), [](const JobEntry& one) { return !one.rests; });
  CHECK(running == 3);
  CHECK_FALSE(bench.work.schedule()->alerts.empty());
  CHECK(store.loads() - before == benches + 3);
  CHECK(bench.work.jobs() == folded);
  // An act of the whole bench folds none of the others.
  REQUIRE(bench.work.submit(core::intents::OfShop{core::intents::EnterRoom{}}).id.empty());
  CHECK(store.loads() - before == benches + 3);
  const std::string resting =
      std::find_if(folded.begin(), folded.end(), [](const JobEntry& one) { return one.rests; })->id;
  const auto* state = bench.work.job(resting);
  REQUIRE(state != nullptr);
  CHECK(store.loads() - before == benches + 4);
  CHECK(bench.work.job(resting) == state);
}

TEST_CASE("many jobs in one file are the same after every opening") {
  QTemporaryDir folder;
  FakeClock clock;
  auto opened = app::stores::SqliteEventStore::open(folder.filePath("record.sqlite"));
  REQUIRE(opened.ok());
  ManyJobs many;
  many.jobs = 20;
  many.events = 260;
  many.inHand = 2;
  REQUIRE(makeManyJobs(many, *opened.value(), clock, tradeLibrary().library, demoJob()) > 0);
  std::vector<JobEntry> first;
  for (int opening = 0; opening < 3; ++opening) {
    StoredBench bench(*opened.value(), "this-tablet");
    (void)bench.work.schedule();
    if (opening == 0) first = bench.work.jobs();
    CHECK(bench.work.jobs() == first);
    CHECK(opened.value()->summaries().value().size() == (opening == 0 ? 0 : 20));
  }
}

TEST_CASE("a summary of another time, another program or gone wrong is not believed") {
  MemoryEventStore store;
  std::string job;
  {
    StoredBench bench(store);
    job = bench.takeIn(demoJob());
  }
  REQUIRE(store.summariesKept().size() == 1);
  core::record::Summary summary = store.summariesKept().begin()->second;
  SECTION("another stamp") { summary.stamp += "x"; }
  SECTION("cut short") { summary.body.resize(summary.body.size() / 2); }
  SECTION("nothing") { summary.body.clear(); }
  SECTION("lessons of another time") { summary.detail = "x" + summary.detail; }
  SECTION("lessons cut short") { summary.detail.pop_back(); }
  store.replaceSummary(summary);
  const int before = store.loads();
  {
    StoredBench bench(store);
    REQUIRE(bench.work.schedule() != nullptr);
    CHECK(store.loads() == before + 1);
    CHECK(bench.work.jobs().at(0).title == "Pilot's chart of the outer bar");
  }
  // And a good one is written in its place.
  const int again = store.loads();
  StoredBench bench(store);
  REQUIRE(bench.work.schedule() != nullptr);
  CHECK(store.loads() == again);
}

TEST_CASE("no text crashes the reader of summaries") {
  std::mt19937 random(7);
  app::workbench::JobSummary summary;
  summary.entry.title = "tab\t, line\n and \\ stroke";
  summary.sharedSteps = {"a", "b\t"};
  summary.entry.width = 356.25;
  summary.entry.height = 1e6;
  summary.lessons.opening[{"kind", core::waits::Cause::Film}] = {
      {{1, "boot", 2, true}, 0.5, std::numeric_limits<double>::infinity()}};
  const std::string text = app::workbench::summaryText(summary);
  const auto back = app::workbench::readSummary("", text);
  REQUIRE(back.has_value());
  CHECK(back->entry == summary.entry);
  CHECK(back->sharedSteps == summary.sharedSteps);
  for (const char* width : {"nan", "inf", "-1", "1000001", "wide"}) {
    INFO(width);
    CHECK_FALSE(app::workbench::readSummary("", core::base::replaceAll(text, "356.25", width)).has_value());
  }
  const std::string lessons = app::workbench::lessonsText(summary.lessons, "stamp");
  CHECK(app::workbench::readLessons(lessons, "stamp") == summary.lessons);
  CHECK_FALSE(app::workbench::readLessons(lessons, "other").has_value());
  for (int i = 0; i < 20'000; ++i) {
    std::string wrong = i % 2 == 0 ? text : lessons;
    wrong[random() % wrong.size()] = static_cast<char>(random());
    if (i % 3 == 0) wrong.resize(random() % wrong.size());
    (void)app::workbench::readSummary("", wrong);
    (void)app::workbench::readLessons(wrong, "stamp");
  }
}

TEST_CASE("jobs are found by the beginnings of words in any order, without capitals or accents") {
  std::vector<JobEntry> entries(5);
  const auto fill = [&](std::size_t i, const char* title, const char* reference, const char* client, const char* due) {
    entries[i].id = std::to_string(i);
    entries[i].title = title;
    entries[i].reference = reference;
    entries[i].client = client;
    entries[i].due = due;
    entries[i].changedUtc = static_cast<std::int64_t>(i);
  };
  fill(0, "Carte de la c\xC3\xB4te, \xC3\x89t\xC3\xA9", "26-041", "Harbour library", "2026-12-11");
  fill(1, "Heron", "26-042", "Harbour library", "2026-11-01");
  fill(2,
       "Stra\xC3\x9F"
       "e im Schnee",
       "", "S\xC3\xB8ren", "");
  fill(3, "Tide table", "26-043", "", "");
  fill(4, "Old heron", "25-001", "", "2025-01-01");
  entries[4].archived = true;
  using app::workbench::Shelf;
  const auto found = [&](const char* asked, Shelf shelf = Shelf::Bench) {
    std::string ids;
    for (const JobEntry* entry : app::workbench::searched(entries, asked, shelf)) ids += entry->id;
    return ids;
  };
  CHECK(found("") == "1032");
  CHECK(found("", Shelf::Both) == "41032");
  CHECK(found("COTE ete") == "0");
  CHECK(found("\xC3\xA9t c\xC3\xB4t") == "0");
  CHECK(found("harb") == "10");
  CHECK(found("library her") == "1");
  CHECK(found("ibrary").empty());
  CHECK(found("26-04") == "103");
  CHECK(found("strasse soren") == "2");
  CHECK(found("heron", Shelf::PutAway) == "4");
  CHECK(found("heron", Shelf::Both) == "41");
  CHECK(found(" ,;- ") == "1032");
}
