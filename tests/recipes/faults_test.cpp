// What a fault ends, asked of the record itself: everything done, then the fault reported.
#include <algorithm>
#include <map>
#include <memory>
#include <set>

#include "core/jobs/job_state.h"
#include "tests/recipes/made_up_jobs.h"
#include "tests/recipes/shipped_techniques.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;

namespace {

using Events = std::vector<record::Event>;

void add(Events& events, const char* type, const workflow::WorkflowStep& step, const std::string& fault = "",
         const std::string& way = "") {
  const auto number = static_cast<std::int64_t>(events.size()) + 1;
  record::Event event;
  event.eventId = "event-" + std::to_string(number);
  event.intentId = "intent-" + std::to_string(number);
  event.deviceSequence = number;
  event.hlc = {number, 0};
  // A fault is one of the piece in hand, whatever it was found at.
  const bool ofFault = std::string_view(type) == record::FaultReported::kType;
  event.stream = step.ofShop && !ofFault ? "bench/one" : "job/one";
  event.type = type;
  event.payload = base::Value::object();
  event.payload.set("step", base::Value::text(step.id));
  if (!fault.empty()) event.payload.set("fault", base::Value::text(fault));
  if (!way.empty()) event.payload.set("way", base::Value::text(way));
  events.push_back(event);
}

struct WayOut {
  std::string fault;
  std::string way;  // "" where the fault leaves no choice
  std::vector<std::string> ends;
};

std::vector<WayOut> waysOut(const workflow::WorkflowStep& step) {
  std::vector<WayOut> out;
  for (const auto& fault : step.faults) {
    if (fault.ways.empty()) out.push_back({fault.id, "", fault.ends});
    for (const auto& way : fault.ways) out.push_back({fault.id, way.id, way.ends});
  }
  return out;
}

// The steps that are not done once the fault has been reported in a job that was all done.
std::set<std::string> broughtBack(const std::shared_ptr<jobs::JobPlan>& plan, const workflow::WorkflowStep& step,
                                  const WayOut& out) {
  Events events;
  for (const auto& each : plan->workflow.steps) add(events, record::StepDone::kType, each);
  add(events, record::FaultReported::kType, step, out.fault, out.way);
  const auto state = jobs::fold(plan, events);
  std::set<std::string> ids;
  for (std::size_t i = 0; i < state.steps.size(); ++i) {
    if (state.steps[i].status != jobs::StepStatus::Done) ids.insert(plan->workflow.steps[i].id);
  }
  return ids;
}

// Steps of the workflow that make one of the facts, found by reading every step.
std::set<std::string> makersOf(const workflow::Workflow& workflow, const std::vector<std::string>& facts) {
  std::set<std::string> ids;
  for (const auto& step : workflow.steps) {
    for (const std::string& fact : facts) {
      const bool makes = std::count(step.makes.begin(), step.makes.end(), fact) > 0 ||
                         std::any_of(step.waits.begin(), step.waits.end(),
                                     [&](const workflow::WorkflowWait& wait) { return wait.makes == fact; });
      if (makes) ids.insert(step.id);
    }
  }
  return ids;
}

std::shared_ptr<jobs::JobPlan> planOf(const tests::MadeUp& job, const craft::Catalogue& catalogue) {
  auto plan = std::make_shared<jobs::JobPlan>();
  plan->id = "one";
  plan->design = tests::designOf(job);
  plan->workflow = tests::composed(plan->design, catalogue);
  return plan;
}

}  // namespace

TEST_CASE("a fault of any technique brings back exactly the steps that make what it ends") {
  const auto catalogue = tests::shippedCatalogue();
  std::size_t met = 0;
  for (const craft::Technique* technique : catalogue.all()) {
    const auto plan = planOf(tests::switchingOn(*technique), catalogue);
    for (const auto& step : plan->workflow.steps) {
      if (step.technique != technique->id) continue;
      for (const auto& out : waysOut(step)) {
        ++met;
        INFO(step.id << ' ' << out.fault << ' ' << out.way);
        CHECK(broughtBack(plan, step, out) == makersOf(plan->workflow, out.ends));
      }
    }
  }
  CHECK(met > 60);
}

TEST_CASE("no fault and no missed window ends a fact that nothing makes") {
  const auto catalogue = tests::shippedCatalogue();
  for (const std::string order : {"linesFirst", "washFirst"}) {
    const auto workflow = tests::composed(tests::designOf(tests::everything(order)), catalogue);
    for (const auto& step : workflow.steps) {
      for (const auto& out : waysOut(step)) {
        for (const std::string& fact : out.ends) {
          INFO(step.id << ' ' << out.fault << ' ' << out.way << ' ' << fact);
          CHECK_FALSE(workflow.making(fact).empty());
        }
      }
      for (const auto& wait : step.waits) {
        for (const std::string& fact : wait.missedEnds) {
          INFO(wait.id << ' ' << fact);
          CHECK_FALSE(workflow.making(fact).empty());
        }
      }
    }
  }
}

TEST_CASE("work that a fault brings back can be done again to the end") {
  const auto catalogue = tests::shippedCatalogue();
  for (const std::string order : {"linesFirst", "washFirst"}) {
    const auto plan = planOf(tests::everything(order), catalogue);
    for (const auto& step : plan->workflow.steps) {
      for (const auto& out : waysOut(step)) {
        Events events;
        for (const auto& each : plan->workflow.steps) {
          add(events, record::StepDone::kType, each);
          if (each.id == step.id) break;
        }
        add(events, record::FaultReported::kType, step, out.fault, out.way);
        const auto after = jobs::fold(plan, events);
        // Doing again, in order, whatever is not done: nothing it needs may have stayed ended.
        std::map<std::string, bool> facts = after.facts;
        for (std::size_t i = 0; i < after.steps.size(); ++i) {
          if (after.steps[i].status == jobs::StepStatus::Done) continue;
          const auto& again = plan->workflow.steps[i];
          for (const std::string& fact : again.needs) {
            const auto known = facts.find(fact);
            INFO(step.id << ' ' << out.fault << ' ' << out.way << ": " << again.id << " needs " << fact);
            CHECK_FALSE((known != facts.end() && !known->second));
          }
          for (const std::string& fact : again.ends) facts[fact] = false;
          for (const std::string& fact : again.makes) facts[fact] = true;
          for (const auto& wait : again.waits) facts.erase(wait.makes);
        }
      }
    }
  }
}

TEST_CASE("no shipped fault leaves a decision to the maker without a key for it") {
  const auto catalogue = tests::shippedCatalogue();
  for (const craft::Technique* technique : catalogue.all()) {
    for (const craft::Step& step : technique->steps) {
      for (const craft::Fault& fault : step.faults) {
        INFO(technique->id << '/' << step.id << ' ' << fault.id << ": " << fault.mend);
        const auto says = [&](const char* words) { return fault.mend.find(words) != std::string::npos; };
        CHECK_FALSE((says("ecide") || says(" or cut") || says(" or let ")));
      }
    }
  }
}
