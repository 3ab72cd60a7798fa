// One job, several devices: whose word counts, whatever order it comes in.
#include <algorithm>
#include <random>

#include "core/base/text.h"
#include "core/craft/technique_reader.h"
#include "core/decisions/decide.h"
#include "core/decisions/offers.h"
#include "core/jobs/bench_place.h"
#include "core/jobs/timeline.h"
#include "core/record/counting.h"
#include "tests/support/catch.h"
#include "tests/support/events.h"
#include "tests/support/recipes.h"
#include "tests/support/tiny_job.h"

using namespace core;
using record::Event;

namespace {

constexpr std::int64_t kMorning = 1'764'000'000'000;

std::shared_ptr<const jobs::JobPlan> plan() {
  static const auto made = [] {
    auto job = std::make_shared<jobs::JobPlan>();
    job->id = "one";
    job->design = tests::designOf(tests::kTinyJob);
    craft::Catalogue catalogue;
    tests::addTechnique(catalogue, tests::kTinyPaste);
    tests::addTechnique(catalogue, tests::kTinySize);
    job->workflow = tests::composed(job->design, catalogue);
    return job;
  }();
  return made;
}

std::string idOf(const std::string& end) {
  for (const auto& step : plan()->workflow.steps) {
    if (base::endsWith(step.id, end) || step.id.find(end + "@") != std::string::npos) return step.id;
  }
  FAIL("no step " << end);
  return "";
}

// What a device wrote at a minute; each device counts for itself.
class Record {
 public:
  Event& write(const std::string& device, const char* type, int minute, const std::string& step, bool ofBench = false) {
    const std::int64_t utc = kMorning + std::int64_t{minute} * 60'000;
    Event event = tests::event(device, ++m_counts[device], utc, ofBench ? "bench/" + device : "job/one");
    event.type = type;
    event.bootId = "boot of " + device;
    event.boottimeNanoseconds = (std::int64_t{minute} + 100) * 60'000'000'000;
    event.payload = base::Value::object();
    if (!step.empty()) event.payload.set("step", base::Value::text(step));
    events.push_back(event);
    return events.back();
  }
  Event& done(const std::string& device, int minute, const std::string& step, bool ofBench = false) {
    return write(device, record::StepDone::kType, minute, step, ofBench);
  }
  Event& undo(const std::string& device, int minute, const std::string& intent, bool ofBench = false) {
    Event& event = write(device, record::Undone::kType, minute, "", ofBench);
    event.payload.set("intent", base::Value::text(intent));
    return event;
  }
  jobs::JobState state() const { return jobs::fold(plan(), events); }

  std::vector<Event> events;

 private:
  std::map<std::string, std::int64_t> m_counts;
};

const jobs::StepState& stepOf(const jobs::JobState& state, std::string_view id) {
  return state.steps.at(*state.plan->workflow.indexOf(std::string(id)));
}

}  // namespace

TEST_CASE("a step done is done from the first word of it on: a second one moves no window that runs", "[devices]") {
  const std::string brush = idOf("brush");
  Record record;
  record.done("tablet", 10, brush);
  const auto once = record.state();
  const Event second = record.done("phone", 70, brush);
  const auto twice = record.state();
  CHECK(jobs::dump(twice) == jobs::dump(once));
  REQUIRE(twice.waits.size() == 1);
  CHECK(twice.waits.begin()->second.started.bootId == "boot of tablet");
  CHECK(twice.repeated == std::set<std::string>{second.eventId});
  CHECK(twice.lastIntent == once.lastIntent);
  // It is kept and told.
  const shop::Shop shop;
  const auto timeline = jobs::timelineOf(twice, shop, record.events, jobs::Order::NewestFirst);
  CHECK(timeline.at(0).kind == record::TimelineKind::Repeated);
  CHECK(timeline.at(0).what.id == "timeline.done-repeated");
  CHECK(timeline.at(1).what.id == "timeline.done");
}

TEST_CASE("taken back or brought back, a step is done by the next word of it", "[devices]") {
  const std::string brush = idOf("brush");
  Record record;
  const std::string first = record.done("tablet", 10, brush).intentId;
  record.done("phone", 70, brush);
  SECTION("taken back") {
    record.undo("tablet", 80, first);
    const auto state = record.state();
    CHECK(stepOf(state, brush).deviceId == "phone");
    CHECK(state.waits.begin()->second.started.bootId == "boot of phone");
    CHECK(state.repeated.empty());
  }
  SECTION("nothing rests on it, so that it can be taken back at all") {
    const auto state = record.state();
    const shop::Shop shop;
    const waits::ClockReading now{kMorning + 5'000'000, "boot of tablet", 200 * 60'000'000'000, true};
    CHECK(decisions::decide(jobs::JobAt(state, shop, now), intents::Undo{first}));
  }
  SECTION("brought back by a fault") {
    record.write("tablet", record::FaultReported::kType, 80, brush).payload.set("fault", base::Value::text("thick"));
    CHECK(stepOf(record.state(), brush).status == jobs::StepStatus::Ahead);
    record.done("phone", 90, brush);
    const auto state = record.state();
    CHECK(stepOf(state, brush).status == jobs::StepStatus::Done);
    CHECK(stepOf(state, brush).doneAt.utcMilliseconds == kMorning + 90 * 60'000);
  }
}

TEST_CASE("what one device says of a run that is over is no word of the run another began since", "[devices]") {
  const std::string brush = idOf("brush");
  const std::string tack = brush + "/tack";
  Record record;
  const std::string first = record.done("tablet", 10, brush).intentId;
  record.write("tablet", record::FaultReported::kType, 20, brush).payload.set("fault", base::Value::text("thick"));
  const std::string second = record.done("tablet", 30, brush).intentId;
  const std::string before = jobs::dump(record.state());
  const auto say = [&](const char* type, const std::string& of) {
    Event& said = record.write("phone", type, 40, "");
    said.payload.set("wait", base::Value::text(tack)).set("alert", base::Value::text("open"));
    said.payload.set("verdict", base::Value::text("pastIt")).set("minutes", base::Value::integer(5));
    if (!of.empty()) said.payload.set("of", base::Value::text(of));
  };
  const char* types[] = {record::Looked::kType, record::Heard::kType, record::Snoozed::kType,
                         record::MissedMended::kType};
  for (const char* type : types) {
    INFO(type);
    say(type, first);
    CHECK(jobs::dump(record.state()) == before);
    record.events.pop_back();
    say(type, second);
    CHECK(jobs::dump(record.state()) != before);
    record.events.pop_back();
    // A record written before events said which.
    say(type, "");
    CHECK(jobs::dump(record.state()) != before);
    record.events.pop_back();
  }
  Event& fault = record.write("phone", record::FaultReported::kType, 40, brush);
  fault.payload.set("fault", base::Value::text("thick")).set("of", base::Value::text(first));
  CHECK(jobs::dump(record.state()) == before);
  record.events.back().payload.set("of", base::Value::text(second));
  CHECK(stepOf(record.state(), brush).status == jobs::StepStatus::Ahead);
}

TEST_CASE("every word about a wait says of which run it is", "[devices]") {
  const std::string brush = idOf("brush");
  Record record;
  record.write("tablet", record::JobTakenIn::kType, 0, "");
  const std::string act = record.done("tablet", 10, brush).intentId;
  const auto state = record.state();
  const std::string tack = state.waits.begin()->first;
  const shop::Shop shop;
  const waits::ClockReading now{kMorning + 3000 * 60'000LL, "boot of tablet", 3100 * 60'000'000'000LL, true};
  const jobs::JobAt at(state, shop, now);
  const intents::Intent said[] = {intents::LookAt{tack, intents::Verdict::NotYet},
                                  intents::Hear{tack, intents::AlertClass::Missed}, intents::MendMissed{tack},
                                  intents::ReportFault{brush, "thick"}};
  for (const intents::Intent& intent : said) {
    INFO(intents::name(intent));
    const auto decided = decisions::decide(at, intent);
    REQUIRE(decided);
    CHECK(record::textOf(decided.value()[0].payload, "of") == act);
  }
}

TEST_CASE("a preparation is made anew by its own bench, or when it was too old, and by no second word of another",
          "[devices]") {
  const std::string soak = idOf("soak");
  Record record;
  record.write("tablet", record::JobTakenIn::kType, 0, "");
  record.write("phone", record::Heard::kType, 1, "");
  record.done("tablet", 10, soak, true);
  SECTION("its own bench") {
    record.done("tablet", 70, soak, true);
    CHECK(stepOf(record.state(), soak).doneAt.utcMilliseconds == kMorning + 70 * 60'000);
  }
  SECTION("another bench, while it keeps") {
    record.done("phone", 70, soak, true);
    CHECK(stepOf(record.state(), soak).doneAt.utcMilliseconds == kMorning + 10 * 60'000);
  }
  SECTION("another bench, when it is over by the clock") {
    record.done("phone", 8 * 24 * 60, soak, true);
    CHECK(stepOf(record.state(), soak).deviceId == "phone");
  }
  SECTION("another bench that found it over, whatever the clock says") {
    record.done("phone", 70, soak, true).payload.set("anew", base::Value::boolean(true));
    CHECK(stepOf(record.state(), soak).deviceId == "phone");
  }
}

TEST_CASE("what is made ready too old is made anew, and says so", "[devices]") {
  Record record;
  record.write("tablet", record::JobTakenIn::kType, 0, "");
  const std::string soak = idOf("soak");
  record.done("tablet", 10, soak, true);
  const auto state = record.state();
  shop::Shop shop;
  const std::int64_t later = 9LL * 24 * 60 * 60'000;
  const waits::ClockReading now{kMorning + later, "boot of tablet", 6'000'000'000'000 + later * 1'000'000, true};
  const auto decided = decisions::decide(jobs::JobAt(state, shop, now), intents::FinishStep{soak, {}, false});
  REQUIRE(decided);
  const auto& done = decided.value().back();
  CHECK(done.type == record::StepDone::kType);
  REQUIRE(done.payload.find("anew") != nullptr);
  CHECK(done.payload.find("anew")->asBoolean());
}

TEST_CASE("another shop's preparation moves nothing on until the maker uses it, and its taking back is no word here",
          "[devices]") {
  const std::string soak = idOf("soak");
  const std::string cook = idOf("cook");
  Record record;
  record.write("tablet", record::JobTakenIn::kType, 0, "");
  record.write("tablet", record::NoteAdded::kType, 1, "").payload.set("text", base::Value::text("begun"));
  const std::string before = jobs::dump(record.state());
  const std::string theirSoak = record.done("stranger", 2, soak, true).intentId;
  record.done("stranger", 90, cook, true);
  auto state = record.state();
  CHECK(jobs::dump(state) == before);
  REQUIRE(state.elsewhere.size() == 2);
  CHECK(state.elsewhere[0].deviceId == "stranger");

  shop::Shop shop;
  const waits::ClockReading now{kMorning + 100 * 60'000, "boot of tablet", 200 * 60'000'000'000, true};
  const auto timeline = jobs::timelineOf(state, shop, record.events, jobs::Order::OldestFirst);
  CHECK(std::count_if(timeline.begin(), timeline.end(),
                      [](const auto& entry) { return entry.kind == record::TimelineKind::Elsewhere; }) == 2);
  const auto offered = decisions::offers(jobs::JobAt(state, shop, now));
  const auto use = std::find_if(offered.begin(), offered.end(), [](const auto& offer) {
    return std::holds_alternative<intents::AcceptPreparation>(offer.intent);
  });
  REQUIRE(use != offered.end());
  const auto decided = decisions::decide(jobs::JobAt(state, shop, now), use->intent);
  REQUIRE(decided);
  REQUIRE(decided.value().size() == 1);
  CHECK(decided.value()[0].stream == record::EventDraft::Stream::Job);

  Event& accepted = record.write("tablet", record::PreparationAccepted::kType, 100, "");
  accepted.payload = decided.value()[0].payload;
  const std::string act = accepted.intentId;
  state = record.state();
  CHECK(stepOf(state, soak).status == jobs::StepStatus::Done);
  CHECK(stepOf(state, cook).status == jobs::StepStatus::Done);
  CHECK(state.elsewhere.empty());
  CHECK(state.lastIntent == act);
  SECTION("taken back it counts no more") {
    record.undo("tablet", 101, act);
    CHECK(stepOf(record.state(), cook).status == jobs::StepStatus::Ahead);
  }
  SECTION("its own bench may take it back") {
    record.undo("stranger", 101, theirSoak, true);
    CHECK(stepOf(record.state(), soak).status == jobs::StepStatus::Ahead);
    CHECK(stepOf(record.state(), cook).status == jobs::StepStatus::Done);
  }
  SECTION("a stranger takes nothing back that is not his, not under a borrowed act either") {
    const std::string brush = idOf("brush");
    const std::string mine = record.done("tablet", 110, brush).intentId;
    record.undo("other", 120, mine, true);
    record.undo("other", 121, theirSoak, true);
    record.done("other", 122, soak, true).intentId = mine;
    record.undo("other", 123, mine, true);
    const auto after = record.state();
    CHECK(stepOf(after, brush).status == jobs::StepStatus::Done);
    CHECK(stepOf(after, soak).status == jobs::StepStatus::Done);
  }
}

TEST_CASE("a bench that worked the job brings its preparations with it", "[devices]") {
  const std::string soak = idOf("soak");
  Record record;
  record.write("tablet", record::JobTakenIn::kType, 0, "");
  record.done("phone", 5, soak, true);
  CHECK(stepOf(record.state(), soak).status == jobs::StepStatus::Ahead);
  record.write("phone", record::Heard::kType, 6, "");
  CHECK(stepOf(record.state(), soak).status == jobs::StepStatus::Done);
}

TEST_CASE("a bench's stream says nothing of a job but what it made ready", "[devices]") {
  const std::string brush = idOf("brush");
  Record record;
  record.write("tablet", record::JobTakenIn::kType, 0, "");
  const std::string before = jobs::dump(record.state());
  record.done("tablet", 5, brush, true);
  record.write("tablet", record::JobPutAway::kType, 6, "", true);
  record.write("tablet", record::Measured::kType, 7, brush, true)
      .payload.set("figure", base::Value::text("board.top.sight.width"))
      .set("nanometres", base::Value::integer(300'000'000));
  record.write("tablet", "SungTo", 8, "", true);
  const auto state = record.state();
  CHECK(jobs::dump(state) == before);
  CHECK_FALSE(state.readOnly());
}

TEST_CASE("what was done last is the last act, though the wall clock went back between", "[devices]") {
  Record record;
  record.write("tablet", record::JobTakenIn::kType, 0, "");
  record.done("tablet", 10, idOf("soak"), true);
  Event& later = record.done("tablet", 100, idOf("cook"), true);
  later.occurredUtc -= 86'400'000;
  const auto state = record.state();
  const shop::Shop shop;
  const waits::ClockReading now{kMorning, "boot of tablet", 300 * 60'000'000'000, true};
  const auto place = jobs::benchPlace(jobs::JobAt(state, shop, now));
  REQUIRE(place.lastDone);
  CHECK(state.plan->workflow.steps[*place.lastDone].id == idOf("cook"));
  CHECK(place.lastDoneAt.utcMilliseconds == kMorning + 100 * 60'000 - 86'400'000);
}

TEST_CASE("an event whose clock cannot be believed comes after what its device wrote before it, and is told so",
          "[devices]") {
  const std::string brush = idOf("brush");
  Record record;
  record.write("tablet", record::JobTakenIn::kType, 0, "");
  record.done("tablet", 10, brush);
  // The clock rolls over; then it is put right.
  Event& lost = record.write("tablet", record::FaultReported::kType, 20, brush);
  lost.payload.set("fault", base::Value::text("thick"));
  lost.occurredUtc = lost.recordedUtc = waits::kLatestBelievableUtc + 1'000'000;
  const record::Hlc wrong[] = {{waits::kLatestBelievableUtc + 1'000'000, 3}, {}};
  lost.hlc = wrong[GENERATE(0, 1)];
  record.done("tablet", 30, brush);
  const auto state = record.state();
  CHECK(stepOf(state, brush).doneAt.utcMilliseconds == kMorning + 30 * 60'000);
  const shop::Shop shop;
  const auto timeline = jobs::timelineOf(state, shop, record.events, jobs::Order::OldestFirst);
  REQUIRE(timeline.size() == 4);
  CHECK(timeline[2].kind == record::TimelineKind::Fault);
  CHECK_FALSE(timeline[2].timeKnown);
  CHECK(timeline[3].timeKnown);
}

TEST_CASE("many words of three devices give one state, in whatever order and however often they come", "[devices]") {
  std::mt19937 random(20261128);
  const std::string steps[] = {idOf("soak"), idOf("cook"), idOf("brush"), idOf("lay")};
  const char* devices[] = {"tablet", "phone", "stranger"};
  std::size_t repeated = 0;
  for (int round = 0; round < 300; ++round) {
    Record record;
    record.write("tablet", record::JobTakenIn::kType, 0, "");
    std::vector<std::string> acts;
    for (int i = 0; i < 30; ++i) {
      const std::string device = devices[random() % (round % 2 == 0 ? 2 : 3)];
      const std::size_t which = random() % 4;
      const int minute = static_cast<int>(random() % 200);
      const bool shop = which < 2;
      if (device == "stranger" && !shop) continue;
      switch (random() % 5) {
        case 0:
          if (!acts.empty()) record.undo(device, minute, acts[random() % acts.size()], device == "stranger");
          break;
        case 1:
          if (device != "stranger") {
            record.write(device, record::FaultReported::kType, minute, steps[2])
                .payload.set("fault", base::Value::text("thick"));
          }
          break;
        default: acts.push_back(record.done(device, minute, steps[which], shop).intentId);
      }
      if (random() % 9 == 0) record.events.back().hlc = {waits::kLatestBelievableUtc + 5, 0};
    }
    const auto state = record.state();
    repeated += state.repeated.size();
    const std::string expected = jobs::dump(state);
    for (int again = 0; again < 5; ++again) {
      auto events = record.events;
      events.insert(events.end(), record.events.begin(), record.events.end());
      std::shuffle(events.begin(), events.end(), random);
      REQUIRE(jobs::dump(jobs::fold(plan(), events)) == expected);
    }
    // Of each run of a wait the start is that of a word that counts.
    for (const auto& [id, run] : state.waits) {
      const auto& step = stepOf(state, run.step->id);
      if (step.status == jobs::StepStatus::Done) CHECK(step.doneAt == run.started);
    }
  }
  CHECK(repeated > 100);
}
