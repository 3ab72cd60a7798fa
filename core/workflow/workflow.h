#pragma once
// The composed workflow of one job: every step with the job's own ids, facts and figures filled in, in an order
// in which it can be worked. It depends on the job's text and the techniques' texts alone.
#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/craft/technique.h"

namespace core::workflow {

// A new member of a wait or a step wants its line in renewal.cpp, which will not compile without.
struct WorkflowWait {
  std::string id;  // "<step id>/<wait>"; stable for ever
  craft::WaitKind kind = craft::WaitKind::Dry;
  std::string title;
  std::string makes;
  std::string follows;  // "" for none
  units::Span opens;    // after the step is done
  std::optional<units::Span> closes;
  craft::DryingModel model = craft::DryingModel::None;
  units::Room reference;  // of the stated spans
  bool attended = false;
  std::string test;
  craft::Answers answers;  // complete: what the file leaves out is filled by the words of the kind
  std::string source;
  std::string missedSay;  // with closes
  std::vector<std::string> missedEnds;
};

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

  // Null where there is none.
  const WorkflowFaultWay* way(const std::string& wayId) const {
    for (const WorkflowFaultWay& one : ways) {
      if (one.id == wayId) return &one;
    }
    return nullptr;
  }

  friend bool operator==(const WorkflowFault&, const WorkflowFault&) = default;
};

struct WorkflowFigure {
  std::string id;
  int count = 1;
  std::string from;

  friend bool operator==(const WorkflowFigure&, const WorkflowFigure&) = default;
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

struct WorkflowStep {
  std::string id;  // "technique/step@thing", "#n" for parts; "technique/step" for the job or the shop
  std::string technique;
  std::string techniqueTitle;
  std::string thing;      // "" for the job
  std::string thingName;  // as said to a maker: "top strip of inner band"
  std::string title;
  std::vector<std::string> sentences;
  std::string good;
  std::string trap;
  std::vector<std::string> tools;
  std::vector<WorkflowMaterial> materials;
  std::vector<WorkflowFigure> figures;  // only those this design has
  std::vector<WorkflowCheck> checks;
  std::vector<craft::Caution> cautions;
  craft::Hands hands = craft::Hands::Clean;
  craft::WayUp up = craft::WayUp::None;
  std::optional<craft::Act> act;
  units::Span work;
  std::string workSource;
  bool uninterruptible = false;
  std::string resource;
  bool ofShop = false;
  std::optional<units::Duration> keeps;  // shelf life of what a shop step makes
  std::string keepsSource;
  std::optional<craft::Reversal> reversal;  // of its technique
  std::vector<std::string> needs;           // alternatives already chosen
  std::vector<std::string> makes;
  std::vector<std::string> ends;
  std::vector<WorkflowWait> waits;
  std::vector<std::string> asMade;
  std::vector<WorkflowFault> faults;
  // Steps (by index) that must be done before this one: the makers of what it needs, and whoever still needs
  // what it ends.
  std::vector<std::size_t> before;
};

struct Workflow {
  std::vector<WorkflowStep> steps;  // in list order

  const WorkflowStep* find(const std::string& id) const;
  std::optional<std::size_t> indexOf(const std::string& id) const;
  // The step and wait of a wait id; null where there is none.
  struct FoundWait {
    const WorkflowStep* step = nullptr;
    const WorkflowWait* wait = nullptr;
  };
  FoundWait findWait(const std::string& waitId) const;
  // Steps that need a fact, in list order.
  std::vector<std::size_t> needing(const std::string& fact) const;
  // Steps that make a fact, directly or by a wait.
  std::vector<std::size_t> making(const std::string& fact) const;

  // Call once after steps are complete.
  void index();

 private:
  std::map<std::string, std::size_t> m_byId;
  std::map<std::string, std::vector<std::size_t>> m_needing;
  std::map<std::string, std::vector<std::size_t>> m_making;
};

}  // namespace core::workflow
