// Acts over many made-up jobs: gathering changes no order that the facts ask for, parts nothing that belongs to one
// thing alone, and takes down no set-up unused.
#include <algorithm>
#include <map>
#include <random>
#include <set>

#include "core/base/text.h"
#include "core/workflow/acts.h"
#include "core/workflow/rehearse.h"
#include "tests/recipes/made_up_jobs.h"
#include "tests/recipes/shipped_techniques.h"
#include "tests/support/bench.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using tests::composed;
using tests::designOf;
using tests::MadeUp;
using tests::shippedCatalogue;
using workflow::Act;
using workflow::Workflow;

namespace {

MadeUp byChance(std::mt19937& random) {
  const auto one = [&](unsigned of) { return random() % of == 0; };
  MadeUp job;
  job.boards = 1 + static_cast<int>(random() % 3);
  job.coloured = !one(3);
  job.bands = static_cast<int>(random() % 3);
  job.arched = one(5);
  job.lineAlongWindow = one(2);
  job.lineAlongBand = job.bands > 0 && one(2);
  job.spandrel = job.arched && one(2);
  if (one(4)) job.washOrder = one(2) ? "linesFirst" : "washFirst";
  // Beside the window there is room for one of them.
  if (job.spandrel && job.bands < 2) job.washOrder.clear();
  if (job.spandrel || (!job.washOrder.empty() && job.bands < 2)) job.lineAlongWindow = false;
  const char* const sizes[] = {"methylCellulose", "starch", "water", "oil"};
  if (one(2)) {
    const std::size_t size = random() % 4;
    const std::string method = size < 2 ? R"("scattered", "coverage": 0.2)" : R"("laid")";
    job.leaf[job.bands > 0 ? "outside:near" : "face"] = R"("method": )" + method + R"(, "size": ")" + sizes[size] + '"';
  }
  const char* const thicknesses[] = {"1.4 mm", "1.5 mm", "2 mm"};
  for (int i = 0; i < job.boards; ++i) {
    job.thickness.push_back(thicknesses[random() % 3]);
    job.angle.push_back(one(3) ? 60 : 45);
  }
  if (job.boards > 1 && one(3)) job.techniques["joining"] = one(2) ? "join-wet" : "join-last";
  if (job.coloured && one(3)) job.techniques["bevel-mask"] = "colour-bevel-fluid";
  if (job.bands > 0 && one(3)) job.techniques["strip-adhesive"] = one(2) ? "strips-mixed" : "strips-starch";
  job.deliver = one(3) ? "mount" : one(2) ? "attached" : "framed";
  if (one(4)) job.count = 2 + static_cast<int>(random() % 5);
  job.floats = one(4);
  job.spacer = one(3);
  if (job.bands > 0 && one(5))
    job.leaf["on:near"] = R"("method": "scattered", "coverage": 0.2, "size": "methylCellulose")";
  return job;
}

// Made once: composing takes its time.
const std::vector<Workflow>& manyWorkflows() {
  static const std::vector<Workflow> kMany = [] {
    std::mt19937 random(26);
    const auto catalogue = shippedCatalogue();
    std::vector<Workflow> many;
    while (many.size() < 400) many.push_back(composed(designOf(byChance(random)), catalogue));
    return many;
  }();
  return kMany;
}

template <typename Visit>
void forEachWay(const Workflow& workflow, Visit visit) {
  for (const craft::Way way : units::kWays) visit(way, workflow.acts(way));
}

}  // namespace

TEST_CASE("every step stands in exactly one act of each way, and the list is in the order of the acts") {
  for (const Workflow& workflow : manyWorkflows()) {
    forEachWay(workflow, [&](craft::Way, const std::vector<Act>& acts) {
      std::size_t next = 0;
      for (const Act& act : acts) {
        REQUIRE_FALSE(act.steps.empty());
        CHECK_FALSE(act.title.empty());
        // What is made ready again belongs to the shop, and was made ready before.
        for (const std::size_t anew : act.anew) {
          CHECK(workflow.steps[anew].ofShop);
          CHECK(anew < act.steps.front());
        }
        for (const std::size_t step : act.steps) REQUIRE(step == next++);
      }
      REQUIRE(next == workflow.steps.size());
    });
    // Who changes the way in the middle of an act of one finds whole acts of the other.
    for (const Act& act : workflow.everyActs) {
      const std::size_t brief = workflow.actOf(craft::Way::Short, act.steps.front());
      for (const std::size_t step : act.steps) CHECK(workflow.actOf(craft::Way::Short, step) == brief);
    }
  }
}

TEST_CASE("no step comes before what it waits for, and none of an act waits for a wait begun in it") {
  for (const Workflow& workflow : manyWorkflows()) {
    for (std::size_t i = 0; i < workflow.steps.size(); ++i) {
      for (const std::size_t earlier : workflow.steps[i].before) REQUIRE(earlier < i);
    }
    forEachWay(workflow, [&](craft::Way, const std::vector<Act>& acts) {
      for (const Act& act : acts) {
        std::set<std::string> waitedFor;
        for (const std::size_t step : act.steps) {
          INFO(workflow.steps[step].id);
          for (const std::string& need : workflow.steps[step].needs) CHECK_FALSE(waitedFor.contains(need));
          for (const auto& wait : workflow.steps[step].waits) {
            if (wait.opens.late > units::Duration()) waitedFor.insert(wait.makes);
          }
        }
      }
    });
  }
}

TEST_CASE("no tool is set otherwise before all that it was set for is done") {
  std::size_t settings = 0;
  std::size_t shared = 0;
  for (const Workflow& workflow : manyWorkflows()) {
    // By tool: what it is set to, and the steps that still have to use the setting.
    std::map<std::string, std::pair<std::string, std::set<std::size_t>>> tools;
    for (std::size_t i = 0; i < workflow.steps.size(); ++i) {
      for (auto& [tool, setting] : tools) setting.second.erase(i);
      const auto& setup = workflow.steps[i].setup;
      if (!setup) continue;
      auto& [to, users] = tools[setup->tool];
      INFO(workflow.steps[i].id << " sets the " << setup->tool << " to " << setup->to << ", it is at " << to);
      if (to != setup->to) {
        CHECK(users.empty());
        ++settings;
      } else {
        ++shared;
      }
      to = setup->to;
      std::size_t uses = 0;
      for (const std::string& fact : workflow.steps[i].makes) {
        for (const std::size_t user : workflow.needing(fact)) uses += users.insert(user).second ? 1 : 0;
      }
      CHECK(uses > 0);
    }
    for (const auto& [tool, setting] : tools) CHECK(setting.second.empty());
  }
  CHECK(settings > 500);
  // A tool that stands so already is set again only where the trial itself is wanted, or a wait follows it.
  CHECK(shared * 20 < settings);
}

namespace {

std::string kindOf(const workflow::WorkflowStep& step) { return step.id.substr(0, step.id.find_first_of("@#")); }

// "3" of "brush@inner.top#3", and of part 2 "size@field#2#3"; "" of the first piece. Parts are numbered from 1, pieces
// bear their number from 2.
std::string pieceOf(const Workflow& workflow, const workflow::WorkflowStep& step) {
  std::vector<std::string> numbers = base::split(step.id, '#');
  numbers.erase(numbers.begin());
  const std::string thing = step.id.substr(0, step.id.find('#'));
  if (!numbers.empty() && workflow.find(thing + "#1") != nullptr) numbers.erase(numbers.begin());
  return numbers.empty() ? "" : numbers.front();
}

}  // namespace

TEST_CASE("no act finishes the work on one of several pieces and begins it on the next") {
  std::vector<Workflow> several;
  for (const char* job : {"pilots-chart", "heron", "tide-table"}) {
    for (const int count : {2, 3, 12}) {
      std::string text = tests::fileText(PROJECT_ROOT "/recipes/jobs/" + std::string(job) + ".job.json");
      text.insert(text.find('{') + 1, "\"count\": " + std::to_string(count) + ", ");
      several.push_back(composed(designOf(text), shippedCatalogue()));
    }
  }
  std::size_t ofSeveral = 0;
  const auto look = [&](const Workflow& workflow) {
    for (const Act& act : workflow.shortActs) {
      std::map<std::string, std::set<std::string>> kinds;  // by piece
      for (const std::size_t index : act.steps) {
        const auto& step = workflow.steps[index];
        if (!step.once && !step.ofShop) kinds[pieceOf(workflow, step)].insert(kindOf(step));
      }
      ofSeveral += kinds.size() > 1 ? 1 : 0;
      for (const auto& [piece, ofPiece] : kinds) {
        INFO(act.title << ": " << piece << " and " << kinds.begin()->first);
        CHECK(ofPiece == kinds.begin()->second);
      }
    }
  };
  for (const Workflow& workflow : manyWorkflows()) look(workflow);
  for (const Workflow& workflow : several) look(workflow);
  CHECK(ofSeveral > 500);
}

TEST_CASE("no made-up job misses a window, and the short way has fewer acts than the other") {
  std::size_t brief = 0;
  std::size_t every = 0;
  for (const Workflow& workflow : manyWorkflows()) {
    for (const craft::Way way : units::kWays) CHECK_FALSE(workflow::rehearse(workflow, way).missed);
    brief += workflow.shortActs.size();
    every += workflow.everyActs.size();
  }
  WARN("400 jobs: " << every << " acts one by one, " << brief << " the short way");
  CHECK(brief * 10 < every * 7);
}

TEST_CASE("the demo jobs ask no more of the maker than was promised") {
  const struct {
    const char* job;
    std::size_t brief, every;
    int changes;
    double days;  // 0: not promised
  } promised[] = {{"pilots-chart", 45, 90, 16, 4.84}, {"heron", 60, 120, 99, 0}, {"tide-table", 60, 120, 99, 0}};
  for (const auto& one : promised) {
    const auto design = designOf(tests::fileText(PROJECT_ROOT "/recipes/jobs/" + std::string(one.job) + ".job.json"));
    const Workflow workflow = composed(design, shippedCatalogue());
    const auto rehearsal = workflow::rehearse(workflow::Agenda(workflow, {design.job.room, {}}), craft::Way::Short);
    WARN(one.job << ": " << workflow.shortActs.size() << " acts the short way, " << workflow.everyActs.size()
                 << " one by one, " << rehearsal.handsChanges << " changes of hands, " << rehearsal.setups
                 << " set-ups, " << rehearsal.minutes / 1440 << " d");
    CHECK(workflow.shortActs.size() <= one.brief);
    CHECK(workflow.everyActs.size() <= one.every);
    CHECK(rehearsal.handsChanges <= one.changes);
    if (one.days > 0) CHECK(rehearsal.minutes / 1440 <= one.days);
  }
}

namespace {

// Works a job to its end; `whole`: act by act, otherwise step by step.
void work(tests::Bench& bench, bool whole) {
  for (int round = 0; round < 50'000; ++round) {
    const auto place = bench.place();
    if (place.kind == jobs::BenchStand::Kind::Finished) return;
    if (place.kind != jobs::BenchStand::Kind::Step) {
      REQUIRE(place.kind == jobs::BenchStand::Kind::Waiting);
      bench.advance(5);
    } else if (whole) {
      const std::string before = jobs::dump(bench.state());
      REQUIRE(bench.finishAct().empty());
      // What one press did, one undo takes back, and nothing else.
      const std::string act = bench.lastIntent();
      const std::string after = jobs::dump(bench.state());
      REQUIRE(bench.ask(intents::Undo{act}).empty());
      REQUIRE(jobs::dump(bench.state()) == before);
      REQUIRE(bench.ask(intents::Undo{bench.lastIntent()}).empty());
      REQUIRE(jobs::dump(bench.state()) == after);
    } else {
      REQUIRE_FALSE(bench.finishShown().empty());
    }
  }
  FAIL("the job does not end");
}

std::map<std::string, bool> factsOf(const tests::Bench& bench) {
  std::map<std::string, bool> facts;
  for (const auto& step : bench.plan()->workflow.steps) {
    for (const std::string& fact : step.makes) facts[fact] = bench.at().holds(fact);
    for (const auto& wait : step.waits) facts[wait.makes] = bench.at().holds(wait.makes);
  }
  return facts;
}

}  // namespace

TEST_CASE("worked act by act, in either way, the same facts hold in the end as step by step") {
  for (const char* job : {"pilots-chart", "heron"}) {
    const std::string text = tests::fileText(PROJECT_ROOT "/recipes/jobs/" + std::string(job) + ".job.json");
    tests::Bench steps(text, shippedCatalogue());
    work(steps, false);
    for (const craft::Way way : units::kWays) {
      tests::Bench acts(text, shippedCatalogue());
      acts.lead(way);
      work(acts, true);
      CHECK(factsOf(acts) == factsOf(steps));
    }
  }
}

TEST_CASE("a strip that tears brings back its own steps alone, though four were laid in one act") {
  tests::Bench bench(tests::demoJobText(), shippedCatalogue());
  bench.lead(craft::Way::Short);
  for (int i = 0; i < 5000 && bench.shown() != "strips-adhesive/brush@inner.top"; ++i) {
    if (bench.place().kind == jobs::BenchStand::Kind::Step) {
      REQUIRE(bench.finishAct().empty());
    } else {
      bench.advance(5);
    }
  }
  REQUIRE(bench.place().steps.size() == 8);
  REQUIRE(bench.finishAct().empty());
  REQUIRE(bench.ask(intents::ReportFault{"strips-adhesive/lay@inner.left", "mitre-gap"}).empty());
  const auto& workflow = bench.plan()->workflow;
  for (const std::string side : {"top", "right", "bottom"}) {
    CHECK(bench.at().isDone(*workflow.indexOf("strips-adhesive/lay@inner." + side)));
  }
  CHECK_FALSE(bench.at().isDone(*workflow.indexOf("strips-adhesive/lay@inner.left")));
  // The act that is shown again is what is left of it.
  for (int i = 0; i < 50 && bench.shown() != "strips-adhesive/brush@inner.left"; ++i) {
    if (bench.place().kind != jobs::BenchStand::Kind::Step) {
      bench.advance(5);
      continue;
    }
    REQUIRE(bench.finishAct().empty());
  }
  CHECK(bench.place().steps.size() == 2);
}
