#pragma once
// Fills patterns in: a technique's "this" becomes the job's own facts, figures and texts.
#include <string>
#include <vector>

#include "core/craft/technique.h"
#include "core/workflow/things.h"
#include "core/workflow/workflow.h"

namespace core::workflow {

// The thing a step is done for; it is the job itself where `thing` is null.
struct Subject {
  const Thing* thing = nullptr;
  craft::ThingKind kind = craft::ThingKind::Once;  // of the step: Bevel where the thing is a board
};

// Returns the facts of a pattern; none where the thing it refers to does not exist. "this.*" stays as "<id>.*".
std::vector<std::string> expandFacts(const craft::FactPattern& pattern, const Subject& subject, const Things& things);
std::vector<std::string> expandFacts(const std::vector<craft::FactPattern>& patterns, const Subject& subject,
                                     const Things& things);

// Returns the figure id of a pattern, or "" where it refers to a previous thing that does not exist.
std::string expandFigure(const std::string& pattern, const Subject& subject, const Things& things);

// A step and the choices its needs still leave open.
struct DraftStep {
  WorkflowStep step;
  // For each need, its alternatives as facts that must all hold.
  std::vector<std::vector<std::vector<std::string>>> needs;
  int rank = 0;
  int thingOrder = 0;
  int stepOrder = 0;
  std::string nameInPiece;  // of its thing, without the number of the piece, where there are several
  int piece = 0;            // of several identical ones, from 1; 0 where it is done once for all, or there is one alone
  // By way: equal for the steps of one entry of "together" that may be worked in one act, "" for none; and the title of
  // that entry.
  std::string group[2];
  std::string togetherTitle[2];
  bool ofOnePiece[2] = {};  // of several identical pieces one is worked at a time
};

inline constexpr std::size_t kHandle = 64;  // bytes a text or a fact takes beside its letters
// Returns roughly how many bytes the texts and facts of a step take.
std::size_t weightOf(const DraftStep& draft);

DraftStep expandStep(const craft::Technique& technique, std::size_t stepIndex, const Subject& subject,
                     const Things& things, const design::Design& design);

}  // namespace core::workflow
