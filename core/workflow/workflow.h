#pragma once
// The composed workflow of one job: every step with the job's own ids, facts and figures filled in, in an order
// in which it can be worked. It depends on the job's text and the techniques' texts alone.
#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/base/find.h"
#include "core/craft/technique.h"

namespace core::workflow {

// A wait's patterns, filled in for the job. A new member also needs a line in renewal.cpp, which does not compile
// without it.
struct WaitOfJob {
  std::string id;  // "<step id>/<wait>"; stable for ever
  std::string makes;
  std::string follows;    // "" for none
  std::string missedSay;  // with closes
  std::vector<std::string> missedEnds;
};

// Its `answers` are complete: the words of the kind replace those missing in the technique's file.
struct WorkflowWait : WaitOfJob, craft::WaitDetail {};

struct WorkflowFaultWay {
  std::string id;
  std::string key;
  std::string mend;
  std::vector<std::string> ends;
  friend bool operator==(const WorkflowFaultWay&, const WorkflowFaultWay&) = default;
};

struct WorkflowFault {
  std::string id;
  std::string seen;
  std::string mend;
  std::vector<std::string> ends;
  std::vector<WorkflowFaultWay> ways;  // the maker chooses one; `mend` and `ends` are then empty

  // Returns null where there is no such way.
  const WorkflowFaultWay* way(const std::string& wayId) const { return base::withId(ways, wayId); }

  friend bool operator==(const WorkflowFault&, const WorkflowFault&) = default;
};

struct WorkflowFigure {
  std::string id;
  int count = 1;
  std::string from;
  std::optional<units::Marking> by;  // the way of marking a window that needs it; nothing: both

  friend bool operator==(const WorkflowFigure&, const WorkflowFigure&) = default;
};

// How a step sets a tool, for the steps that need what it makes.
struct WorkflowSetup {
  std::string tool;
  std::string to;                    // words and figures as they are shown, joined by commas
  std::vector<std::string> figures;  // ids
  bool afresh = false;               // made for each thing, though the tool stands so

  friend bool operator==(const WorkflowSetup&, const WorkflowSetup&) = default;
};

struct WorkflowCheck {
  std::string ask;
  std::string figure;  // "" for yes or no
  std::string within;

  friend bool operator==(const WorkflowCheck&, const WorkflowCheck&) = default;
};

struct WorkflowMaterial {
  std::string what;
  std::optional<double> amount;  // computed from the job's figures
  std::string unit;
  std::string source;

  friend bool operator==(const WorkflowMaterial&, const WorkflowMaterial&) = default;
};

// A step's patterns, filled in for the job. A new member also needs a line in renewal.cpp, which does not compile
// without it.
struct StepOfJob {
  std::string id;  // "technique/step@thing", "#n" for parts; "technique/step" for the job or the shop
  std::string technique;
  std::string techniqueTitle;
  std::string thing;      // "" for the job
  std::string thingName;  // as shown to a maker: "top strip of inner band"
  std::string ownerName;  // of what the thing belongs to, likewise: "inner band"; "" where it owns itself
  std::optional<WorkflowSetup> setup;
  std::vector<WorkflowMaterial> materials;
  std::vector<WorkflowFigure> figures;  // only those this design has; those of the set-up first
  std::vector<WorkflowCheck> checks;
  std::vector<std::string> needs;  // alternatives already chosen
  std::vector<std::string> makes;
  std::vector<std::string> ends;
  std::vector<WorkflowWait> waits;
  std::vector<std::string> asMade;
  std::vector<WorkflowFault> faults;
  // Steps (by index) that must be done before this one: those that make what it needs, and those that still need what
  // it ends.
  std::vector<std::size_t> before;
};

// A step of a technique for one thing of the job: the technique's step in the words of the thing.
struct WorkflowStep : StepOfJob, craft::StepDetail, craft::TechniqueDetail {};

// What the hand does in one go: one step, or several worked together.
struct Act {
  std::vector<std::size_t> steps;  // indices in list order, one after another without a gap; never empty
  std::string title;               // where several steps are worked; with one the step's own
  craft::Stage stage = craft::Stage::None;
  // Preparations, made for an earlier act, that are likely too old by now and made anew before this one.
  std::vector<std::size_t> anew;
};

// Returns the thing that a part is of: "field" for "field#2"; a thing itself otherwise.
std::string wholeThing(const std::string& thing);

struct Workflow {
  std::vector<WorkflowStep> steps;  // in list order
  // The acts of each way, in order: every step is in exactly one act of each.
  std::vector<Act> everyActs;
  std::vector<Act> shortActs;

  const std::vector<Act>& acts(craft::Way way) const { return way == craft::Way::Every ? everyActs : shortActs; }
  // Returns the index of the act that a step is in.
  std::size_t actOf(craft::Way way, std::size_t step) const {
    return (way == craft::Way::Every ? m_everyActOf : m_shortActOf)[step];
  }

  const WorkflowStep* find(const std::string& id) const;
  std::optional<std::size_t> indexOf(const std::string& id) const;
  // The step and wait of a wait id; both are null where there is none.
  struct FoundWait {
    const WorkflowStep* step = nullptr;
    const WorkflowWait* wait = nullptr;
  };
  FoundWait findWait(const std::string& waitId) const;
  // Returns the steps that need a fact, in list order.
  std::vector<std::size_t> needing(const std::string& fact) const;
  // Returns the steps that make a fact, directly or by a wait.
  std::vector<std::size_t> making(const std::string& fact) const;

  // Call once after steps and acts are complete. Steps without an act get one each.
  void index();

 private:
  std::map<std::string, std::size_t> m_byId;
  std::map<std::string, std::vector<std::size_t>> m_needing;
  std::map<std::string, std::vector<std::size_t>> m_making;
  std::vector<std::size_t> m_everyActOf;
  std::vector<std::size_t> m_shortActOf;
};

}  // namespace core::workflow
