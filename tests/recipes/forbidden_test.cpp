// What the trade forbids, told as what must have become true before a step may begin.
#include <algorithm>
#include <set>

#include "core/base/text.h"
#include "tests/recipes/made_up_jobs.h"
#include "tests/recipes/shipped_techniques.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using tests::composedJob;

namespace {

// The demo jobs, and those with everything a design can have.
const std::vector<std::pair<std::string, workflow::Workflow>>& demoWorkflows() {
  static const auto kJobs = [] {
    std::vector<std::pair<std::string, workflow::Workflow>> jobs;
    for (const std::string file : {"pilots-chart.job.json", "heron.job.json"})
      jobs.emplace_back(file, composedJob(file));
    const auto catalogue = tests::shippedCatalogue();
    for (const std::string order : {"linesFirst", "washFirst"}) {
      jobs.emplace_back(order, tests::composed(tests::designOf(tests::everything(order)), catalogue));
    }
    auto spandrel = tests::everything("washFirst");
    spandrel.spandrel = true;
    spandrel.lineAlongWindow = false;
    jobs.emplace_back("washFirst, spandrel", tests::composed(tests::designOf(spandrel), catalogue));
    return jobs;
  }();
  return kJobs;
}

// The step and everything that must be done before it.
std::set<std::size_t> upTo(const workflow::Workflow& workflow, std::size_t step) {
  std::set<std::size_t> steps = {step};
  std::vector<std::size_t> open = {step};
  while (!open.empty()) {
    const std::size_t at = open.back();
    open.pop_back();
    for (const std::size_t before : workflow.steps[at].before) {
      if (steps.insert(before).second) open.push_back(before);
    }
  }
  return steps;
}

// Whether `fact` has been true by the time the step may begin.
bool isGatedBy(const workflow::Workflow& workflow, std::size_t step, const std::string& fact) {
  const auto steps = upTo(workflow, step);
  return std::any_of(steps.begin(), steps.end(), [&](std::size_t at) {
    const auto& needs = workflow.steps[at].needs;
    return std::find(needs.begin(), needs.end(), fact) != needs.end();
  });
}

// Every step whose id begins so, in every demo job, is gated by every one of the facts that the job has.
void requireGates(const std::string& stepPrefix, const std::vector<std::string>& factEndings,
                  const std::string& onlyIn = "") {
  std::size_t gates = 0;
  for (const auto& [job, workflow] : demoWorkflows()) {
    if (!base::startsWith(job, onlyIn)) continue;
    std::set<std::string> facts;
    for (const auto& step : workflow.steps) {
      for (const auto& wait : step.waits) facts.insert(wait.makes);
      facts.insert(step.makes.begin(), step.makes.end());
    }
    for (std::size_t at = 0; at < workflow.steps.size(); ++at) {
      if (!base::startsWith(workflow.steps[at].id, stepPrefix)) continue;
      for (const std::string& fact : facts) {
        const bool asked = std::any_of(factEndings.begin(), factEndings.end(),
                                       [&](const std::string& ending) { return base::endsWith(fact, ending); });
        if (!asked) continue;
        ++gates;
        INFO(job << ": " << workflow.steps[at].id << " without " << fact);
        CHECK(isGatedBy(workflow, at, fact));
      }
    }
  }
  CHECK(gates > 0);
}

// A step needs a fact of its own thing.
void requireOwn(const std::string& stepPrefix, const std::string& fact) {
  std::size_t met = 0;
  for (const auto& [job, workflow] : demoWorkflows()) {
    for (const auto& step : workflow.steps) {
      if (!base::startsWith(step.id, stepPrefix)) continue;
      ++met;
      INFO(job << ": " << step.id);
      CHECK(std::find(step.needs.begin(), step.needs.end(), step.thing + '.' + fact) != step.needs.end());
    }
  }
  CHECK(met > 0);
}

}  // namespace

TEST_CASE("no tape touches paint that is not dry") { requireGates("join-dry/", {".bevel.dry"}); }

TEST_CASE("no mask is taken off in the rubbery stage") {
  requireOwn("colour-bevel/peel@", "bevel.peelable");
  requireOwn("colour-bevel-fluid/unmask@", "bevel.peelable");
}

TEST_CASE("no weight lies on a bevel that is not cured") {
  requireGates("join-wet/", {".bevel.cured"});
  // Neat adhesive lies before the cure: each strip is weighted along its own length, clear of the bevel.
  for (const std::string step : {"close-corner@", "press@", "lift@"}) {
    requireGates("strips-adhesive/" + step, {".bevel.cured"});
  }
  requireGates("strips-mixed/", {".bevel.cured"});
  requireGates("scattered-leaf/rub-down@", {".bevel.cured"});
  requireGates("scattered-leaf/burnish@", {".bevel.cured"});
  requireGates("spandrel-neat/", {".bevel.cured"});
  requireGates("wash-after-lines/flatten@", {".bevel.cured"});
  requireGates("wash-before-lines/flatten@", {".bevel.cured"});
}

TEST_CASE("no mitre is cut through paste-wet paper") {
  for (const auto& [job, workflow] : demoWorkflows()) {
    std::size_t met = 0;
    for (std::size_t at = 0; at < workflow.steps.size(); ++at) {
      const auto& step = workflow.steps[at];
      if (!base::startsWith(step.id, "paper-bands/mitre@")) continue;
      const std::string band = step.thing.substr(0, step.thing.find('.'));
      for (const std::string side : {"top", "right", "bottom", "left"}) {
        ++met;
        INFO(job << ": " << step.id << " before " << side << " is set");
        CHECK(isGatedBy(workflow, at, band + '.' + side + ".set"));
      }
    }
    CHECK(met > 0);
  }
}

TEST_CASE("no line is ruled on or beside a band that is not set") {
  for (const auto& [job, workflow] : demoWorkflows()) {
    std::size_t met = 0;
    for (std::size_t at = 0; at < workflow.steps.size(); ++at) {
      if (!base::startsWith(workflow.steps[at].id, "ruled-lines/rule@")) continue;
      for (const auto& step : workflow.steps) {
        if (!base::startsWith(step.id, "paper-bands/fit@")) continue;
        ++met;
        INFO(job << ": " << workflow.steps[at].id << " before " << step.thing << " is set");
        CHECK(isGatedBy(workflow, at, step.thing + ".set"));
      }
    }
    CHECK(met > 0);
  }
}

TEST_CASE("no size is laid over a wet line") {
  for (const auto& [job, workflow] : demoWorkflows()) {
    std::size_t met = 0;
    for (std::size_t at = 0; at < workflow.steps.size(); ++at) {
      if (!base::startsWith(workflow.steps[at].id, "scattered-leaf/size@")) continue;
      for (const auto& step : workflow.steps) {
        if (!base::startsWith(step.id, "ruled-lines/rule@")) continue;
        ++met;
        INFO(job << ": " << workflow.steps[at].id << " before " << step.thing << " is dry");
        CHECK(isGatedBy(workflow, at, step.thing + ".dry"));
      }
    }
    CHECK(met > 0);
  }
}

TEST_CASE("no wash is flooded over a wet or soluble line") {
  requireGates("wash-after-lines/wash@", {"hair.hard", "rim.hard"});
}

TEST_CASE("no line is ruled on a wash that is wet or under weight") {
  requireGates("curved-lines/rule@", {"tide.lifted", "tide.flat"}, "washFirst");
  requireGates("ruled-lines/rule@", {"tide.lifted", "tide.flat"}, "washFirst");
}

TEST_CASE("boards join, and paper is laid, only when the wash that comes first is flat") {
  for (const std::string step : {"join-dry/join", "spandrel-neat/brush@", "paper-bands/mark@"}) {
    requireGates(step, {"tide.flat"}, "washFirst");
  }
}

TEST_CASE("no band covers the edge of a spandrel that is not set") {
  requireGates("paper-bands/mark@", {"crown.set", "crown.lifted"});
}

TEST_CASE("no spandrel is laid outside its open time") { requireOwn("spandrel-neat/lay@", "open"); }

TEST_CASE("no leaf is laid before the tack window opens or after it closes") {
  requireOwn("lay-loose-leaf/lay@", "tack");
}

TEST_CASE("no size goes on bare board, and none on paint, paper or wash that is wet") {
  for (const std::string size : {"laid-leaf-water/size@", "laid-leaf-oil/size@"}) {
    requireOwn(size, "sealed");
    requireGates(size, {"hair.dry", "rim.dry", "near.set", "far.set", "crown.set", "tide.dry"});
  }
}

TEST_CASE("no leaf is pressed before the oily rags are dealt with") {
  requireOwn("laid-leaf-oil/press@", "ragsDealtWith");
}

TEST_CASE("no laid leaf is rubbed or sealed before its size has cured") {
  requireOwn("finish-laid-leaf/finish@", "sizeCured");
  requireOwn("seal-leaf-acrylic/coat@", "sizeCured");
}

TEST_CASE("no piece rests or closes before the seal on its leaf has cured") {
  for (const std::string step : {"rest-mount/set-to-rest", "close-package/stack"}) {
    requireGates(step, {"field-1.finished", "field-2.finished", "field-3.finished", "field-4.finished", "tide.lifted"});
  }
}

TEST_CASE("no artwork comes into the mount, and no piece closes, before paper has set through") {
  for (const std::string step : {"hinge-work/place-work", "close-package/stack"}) requireGates(step, {".through"});
}

TEST_CASE("no flake falls before the tack window opens or after it closes") {
  requireOwn("scattered-leaf/scatter@", "tack");
}

TEST_CASE("no strip is laid outside its open time") { requireOwn("strips-adhesive/lay@", "open"); }

TEST_CASE("no leaf is burnished on damp size") {
  for (const auto& [job, workflow] : demoWorkflows()) {
    std::size_t met = 0;
    for (std::size_t at = 0; at < workflow.steps.size(); ++at) {
      if (!base::startsWith(workflow.steps[at].id, "scattered-leaf/burnish@")) continue;
      for (const auto& step : workflow.steps) {
        if (!base::startsWith(step.id, "scattered-leaf/scatter@")) continue;
        ++met;
        CHECK(isGatedBy(workflow, at, step.thing + ".dry"));
      }
    }
    CHECK(met > 0);
  }
}

TEST_CASE("no glazing closes over paste, leaf or paint that has not rested") {
  requireGates("close-package/stack",
               {"piece.rested", "art.hinged", ".bevel.cured", ".hard", ".burnished", ".lifted", ".face.clean"});
}

TEST_CASE("the artwork is never on the bench while paint, paste or flake is open") {
  for (const auto& [job, workflow] : demoWorkflows()) {
    const auto place = workflow.indexOf("hinge-work/turn-work");
    REQUIRE(place);
    const auto earlier = upTo(workflow, *place);
    std::size_t met = 0;
    for (std::size_t at = 0; at < workflow.steps.size(); ++at) {
      const auto& step = workflow.steps[at];
      const bool ofPiece = !step.ofShop && !base::startsWith(step.technique, "hinge-");
      const bool open =
          step.hands == craft::Hands::Paint || step.hands == craft::Hands::Paste || step.hands == craft::Hands::Leaf;
      if (!ofPiece || !open) continue;
      ++met;
      INFO(job << ": " << step.id);
      CHECK(isGatedBy(workflow, at, "art.away"));
      CHECK(earlier.contains(at));
    }
    CHECK(met > 20);
  }
}
