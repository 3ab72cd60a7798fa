// What the trade forbids, said aloud of the shipped techniques: whatever order the maker takes, the facts leave no
// way to do these.
#include <algorithm>
#include <set>

#include "core/base/text.h"
#include "tests/support/catch.h"
#include "tests/support/recipes.h"

using namespace core;
using namespace tests;

namespace {

// Everything that must be done before a step, near or far.
std::set<std::size_t> allBefore(const workflow::Workflow& workflow, std::size_t step) {
  std::set<std::size_t> before;
  std::vector<std::size_t> open(workflow.steps[step].before);
  while (!open.empty()) {
    const std::size_t next = open.back();
    open.pop_back();
    if (!before.insert(next).second) continue;
    open.insert(open.end(), workflow.steps[next].before.begin(), workflow.steps[next].before.end());
  }
  return before;
}

struct Bench {
  design::Design design;
  workflow::Workflow workflow;

  std::vector<std::size_t> making(const std::string& fact) const {
    const auto steps = workflow.making(fact);
    INFO(fact);
    REQUIRE_FALSE(steps.empty());
    return steps;
  }
  bool needs(std::size_t step, const std::string& fact) const {
    const auto& needs = workflow.steps[step].needs;
    return std::count(needs.begin(), needs.end(), fact) > 0;
  }
  // Whether a fact must have been true on the way to a step: the step needs it, or something before it does.
  bool mustHold(std::size_t step, const std::string& fact) const {
    if (needs(step, fact)) return true;
    const auto before = allBefore(workflow, step);
    return std::any_of(before.begin(), before.end(), [&](std::size_t i) { return needs(i, fact); });
  }
};

Bench bench(const std::string& job) {
  auto design = designOf(fileText(std::string(PROJECT_ROOT) + "/recipes/jobs/" + job + ".job.json"));
  auto workflow = composed(design, shippedTechniques());
  return {std::move(design), std::move(workflow)};
}

std::vector<std::string> colouredBoards(const design::Design& design) {
  std::vector<std::string> ids;
  for (const auto& board : design.job.boards) {
    if (board.bevelColour) ids.push_back(board.id);
  }
  return ids;
}

const char* const kJobs[] = {"pilots-chart", "heron"};
const char* const kSides[] = {"top", "right", "bottom", "left"};

}  // namespace

TEST_CASE("no tape is peeled before the paint is past its rubbery stage", "[forbidden]") {
  for (const char* job : kJobs) {
    const Bench b = bench(job);
    for (const std::string& board : colouredBoards(b.design)) {
      std::size_t peels = 0;
      for (std::size_t i = 0; i < b.workflow.steps.size(); ++i) {
        const auto& ends = b.workflow.steps[i].ends;
        if (!std::count(ends.begin(), ends.end(), board + ".face.masked")) continue;
        ++peels;
        CHECK((b.needs(i, board + ".bevel.peelable") || b.needs(i, board + ".bevel.dry")));
      }
      CHECK(peels > 0);
    }
  }
}

TEST_CASE("no weight and no wet joining on a bevel that is not cured", "[forbidden]") {
  for (const char* job : kJobs) {
    const Bench b = bench(job);
    for (const auto& band : b.design.job.bands) {
      // Neat adhesive is weighted along the strip alone; where wet strips are pressed, they are laid after the cure.
      std::vector<std::size_t> pressing = b.making(band.id + ".underWeight");
      for (const std::size_t nip : b.workflow.making(band.id + ".nipped")) {
        pressing.push_back(nip);
        for (const char* side : kSides) {
          for (const std::size_t lay : b.making(band.id + '.' + side + ".laid")) pressing.push_back(lay);
        }
      }
      REQUIRE_FALSE(pressing.empty());
      for (const std::size_t press : pressing) {
        for (const std::string& board : colouredBoards(b.design)) CHECK(b.mustHold(press, board + ".bevel.cured"));
      }
    }
    for (const auto& leaf : b.design.job.leaf) {
      for (const std::size_t burnish : b.making(leaf.id + ".burnished")) {
        for (const std::string& board : colouredBoards(b.design)) CHECK(b.mustHold(burnish, board + ".bevel.cured"));
      }
    }
  }
}

TEST_CASE("no mitre through paste-wet paper", "[forbidden]") {
  for (const char* job : kJobs) {
    const Bench b = bench(job);
    for (const auto& band : b.design.job.bands) {
      for (const std::string corner : {"tl", "tr", "br", "bl"}) {
        for (const std::size_t mitre : b.making(band.id + ".corner." + corner + ".mitred")) {
          for (const std::string side : kSides) {
            if (corner.find(side.front()) != std::string::npos) CHECK(b.needs(mitre, band.id + '.' + side + ".set"));
          }
        }
      }
    }
  }
}

TEST_CASE("no line on a band that is not set, and the inner line first", "[forbidden]") {
  for (const char* job : kJobs) {
    const Bench b = bench(job);
    for (const auto& line : b.design.job.lines) {
      if (line.along == design::Edge::Window) continue;
      for (const std::size_t rule : b.making(line.id + ".ruled")) CHECK(b.mustHold(rule, line.band + ".set"));
    }
    const auto lines = b.design.layout.linesFromWindow();
    for (std::size_t i = 1; i < lines.size(); ++i) {
      const auto before = allBefore(b.workflow, b.making(lines[i] + ".ruled").front());
      CHECK(before.contains(b.making(lines[i - 1] + ".ruled").front()));
    }
  }
}

TEST_CASE("no size over a wet line or an unset band, and no leaf without tack", "[forbidden]") {
  for (const char* job : kJobs) {
    const Bench b = bench(job);
    for (const auto& leaf : b.design.job.leaf) {
      const auto reach = b.design.layout.inReachOf(leaf.id);
      std::size_t sized = 0;
      for (std::size_t i = 0; i < b.workflow.steps.size(); ++i) {
        const auto& step = b.workflow.steps[i];
        if (!base::startsWith(step.thing, leaf.id)) continue;
        const bool sizes = std::any_of(step.makes.begin(), step.makes.end(),
                                       [](const std::string& fact) { return base::endsWith(fact, ".sized"); });
        if (sizes) {
          ++sized;
          for (const std::string& id : reach) {
            if (b.design.layout.line(id) != nullptr) CHECK(b.mustHold(i, id + ".dry"));
            if (b.design.layout.band(id) != nullptr) CHECK(b.mustHold(i, id + ".set"));
          }
        }
        const bool scatters = std::any_of(step.makes.begin(), step.makes.end(), [&](const std::string& fact) {
          return fact == step.thing + ".scattered" && step.thing.find('#') != std::string::npos;
        });
        if (scatters) CHECK(b.needs(i, step.thing + ".tack"));
      }
      CHECK(sized > 0);
    }
  }
}

TEST_CASE("no burnish on damp size, no glazing before the piece has rested", "[forbidden]") {
  for (const char* job : kJobs) {
    const Bench b = bench(job);
    for (const std::size_t close : b.making("package.closed")) CHECK(b.mustHold(close, "piece.rested"));
    for (const std::size_t rest : b.making("piece.rested")) {
      for (const auto& leaf : b.design.job.leaf) CHECK(b.mustHold(rest, leaf.id + ".burnished"));
      for (const std::string& board : colouredBoards(b.design)) CHECK(b.mustHold(rest, board + ".bevel.cured"));
    }
    for (const auto& leaf : b.design.job.leaf) {
      for (const std::size_t burnish : b.making(leaf.id + ".burnished")) {
        // Every part's size must have dried: a wait's fact, not merely the scattering.
        std::size_t dried = 0;
        for (const std::string& fact : b.workflow.steps[burnish].needs) {
          if (base::startsWith(fact, leaf.id + "#") && base::endsWith(fact, ".dry")) ++dried;
        }
        CHECK(dried > 0);
      }
    }
  }
}

TEST_CASE("the work is never on the bench while paint, paste or flake is open", "[forbidden]") {
  for (const char* job : kJobs) {
    const Bench b = bench(job);
    std::vector<std::size_t> returns;
    for (std::size_t i = 0; i < b.workflow.steps.size(); ++i) {
      const auto& ends = b.workflow.steps[i].ends;
      if (std::count(ends.begin(), ends.end(), "art.away")) returns.push_back(i);
    }
    REQUIRE(returns.size() == 1);
    const auto beforeReturn = allBefore(b.workflow, returns.front());
    std::size_t wet = 0;
    for (std::size_t i = 0; i < b.workflow.steps.size(); ++i) {
      const auto& step = b.workflow.steps[i];
      const bool onPiece = !step.ofShop && step.thing != "";
      const bool open =
          step.hands == craft::Hands::Paint || step.hands == craft::Hands::Paste || step.hands == craft::Hands::Leaf;
      if (!onPiece || !open) continue;
      ++wet;
      INFO(step.id);
      CHECK(beforeReturn.contains(i));
      CHECK(b.mustHold(i, "art.away"));
    }
    CHECK(wet > 5);
  }
}

TEST_CASE("every fault of the demo jobs brings back exactly the steps that make what it ends", "[forbidden]") {
  for (const char* job : kJobs) {
    const Bench b = bench(job);
    for (const auto& step : b.workflow.steps) {
      for (const auto& fault : step.faults) {
        std::vector<std::string> ended = fault.ends;
        for (const auto& way : fault.ways) ended.insert(ended.end(), way.ends.begin(), way.ends.end());
        for (const std::string& fact : ended) {
          INFO(step.id << ' ' << fault.id << ' ' << fact);
          CHECK_FALSE(b.workflow.making(fact).empty());
        }
      }
    }
  }
}
