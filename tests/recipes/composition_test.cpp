// Every technique in a job that asks for it: alone, with each alternative beside it, and with all the others.
#include <algorithm>
#include <set>

#include "core/workflow/rehearse.h"
#include "tests/recipes/made_up_jobs.h"
#include "tests/recipes/shipped_techniques.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using tests::composed;
using tests::designOf;
using tests::everything;
using tests::MadeUp;
using tests::shippedCatalogue;

namespace {

std::set<std::string> techniquesIn(const workflow::Workflow& workflow) {
  std::set<std::string> ids;
  for (const auto& step : workflow.steps) ids.insert(step.technique);
  return ids;
}

std::map<std::string, std::vector<std::string>> alternatives(const craft::Catalogue& catalogue) {
  std::map<std::string, std::vector<std::string>> byRole;
  for (const craft::Technique* technique : catalogue.all()) {
    if (!technique->role.empty()) byRole[technique->role].push_back(technique->id);
  }
  return byRole;
}

// The job with everything, once with each technique that is an alternative chosen.
std::vector<MadeUp> everyChoice(const craft::Catalogue& catalogue) {
  std::vector<MadeUp> jobs;
  for (const std::string order : {"linesFirst", "washFirst"}) {
    for (const auto& [role, ids] : alternatives(catalogue)) {
      for (const std::string& id : ids) {
        jobs.push_back(everything(order));
        jobs.back().techniques[role] = id;
        tests::suit(jobs.back(), *catalogue.find(id));
      }
    }
  }
  return jobs;
}

bool isMissed(const workflow::Workflow& workflow) { return workflow::rehearse(workflow).missed; }

}  // namespace

TEST_CASE("a technique composes alone on a job that switches it on") {
  const auto catalogue = shippedCatalogue();
  std::size_t met = 0;
  for (const craft::Technique* technique : catalogue.all()) {
    if (technique->when.mode == craft::When::Mode::Needed) continue;
    ++met;
    INFO(technique->id);
    const auto workflow = composed(designOf(tests::switchingOn(*technique)), catalogue);
    CHECK(techniquesIn(workflow).contains(technique->id));
    CHECK_FALSE(isMissed(workflow));
  }
  CHECK(met > 40);
}

TEST_CASE("every alternative of every role composes in the job that has everything") {
  const auto catalogue = shippedCatalogue();
  std::set<std::string> met;
  for (const MadeUp& job : everyChoice(catalogue)) {
    const auto& [role, id] = *job.techniques.begin();
    INFO(role << ": " << id << ", " << job.washOrder);
    const auto techniques = techniquesIn(composed(designOf(job), catalogue));
    met.insert(techniques.begin(), techniques.end());
  }
  // Some are for bare boards alone.
  MadeUp plain;
  plain.boards = 3;
  met.merge(techniquesIn(composed(designOf(plain), catalogue)));
  for (const craft::Technique* technique : catalogue.all()) {
    const auto window = technique->when.where.find("window");
    if (window != technique->when.where.end() && window->second.front() == "straight") continue;
    INFO(technique->id << " is in no such job");
    CHECK(met.contains(technique->id));
  }
}

TEST_CASE("what masks, sizes, hinges and leafs has an alternative") {
  const auto byRole = alternatives(shippedCatalogue());
  for (const std::string role :
       {"bevel-mask", "leaf-mask", "board-sealer", "oil-size", "leaf-laying", "leaf-seal", "flake-seal", "hinge-paste",
        "joining", "strip-adhesive", "spandrel-adhesive", "line-paint", "curved-line-paint", "window-shape",
        "attachment", "float-support", "glazing", "back-finish"}) {
    INFO(role);
    REQUIRE(byRole.contains(role));
    CHECK(byRole.at(role).size() >= 2);
  }
}

TEST_CASE("one pair of hands can work the job that has everything and miss no window") {
  const auto catalogue = shippedCatalogue();
  for (const std::string order : {"linesFirst", "washFirst"}) {
    const auto rehearsal = workflow::rehearse(composed(designOf(everything(order)), catalogue));
    for (const auto& event : rehearsal.events) {
      INFO(event.step << ' ' << event.other << ' ' << event.wait);
      CHECK(event.kind != workflow::RehearsalKind::Missed);
    }
  }
}
