#pragma once
// Composition switches on what the design needs, uses the alternatives the job chose, fills every step in, satisfies
// every need and gives one deterministic order. The same design and techniques give the same workflow whatever the
// order the techniques were read in.
#include <string>
#include <vector>

#include "core/base/problem.h"
#include "core/base/result.h"
#include "core/craft/catalogue.h"
#include "core/design/design.h"
#include "core/workflow/things.h"
#include "core/workflow/workflow.h"

namespace core::workflow {

// This is far more than any mount needs, and few enough to be composed, rehearsed and shown at once.
inline constexpr std::size_t kMostSteps = 5000;
// Of all pieces of a job together.
inline constexpr std::size_t kMostStepsOfPieces = 20'000;

// A reason why the job cannot be worked with these techniques, at its place in the job file. The reasons are:
//   compose.no-such-role {role}, compose.no-such-technique {role} {technique}, compose.wrong-role {role} {technique}:
//     the job's choice for a role is not possible;
//   compose.stranger-in-role {technique} {role} {beside} {fact}: what fills the role, chosen or by its rank, makes
//   nothing
//     of what others of the role make for the rest of the work (craft::strangersOfRoles);
//   compose.no-way.KIND (leaf, wash ...): the thing with the chosen properties cannot be worked, {name}, {property}
//     (the one at the place), {instead} and every property of the thing by its name, "size", "method" ...;
//   compose.no-way-by {technique} {name} {instead}: a technique the job names leaves the thing, or the piece,
//     unfinished;
//   compose.nobody-makes {step} {technique} {name}: no technique at hand does what has to be done to the thing, or the
//     piece ({name} is ""), before that step;
//   compose.too-many-pieces {steps} {count} {most}: the steps of one piece, so many times, are more than can be worked;
//   compose.cycle {path}: titles of steps that wait for each other;
//   compose.settings-clash {tool} {one} {other} {step}: two steps set a tool otherwise, and the third uses a setting
//     that the other has to have ended by then;
//   compose.too-many-steps {most}: more than kMostSteps; compose.too-much: more to put in order than this program
//     attempts. Either is then the only reason.
// {name} is the thing's name in the caller's words; {instead} the words of `instead`, a line each.
struct ComposeProblem {
  base::Problem problem;
  // Values for the place that remove this reason, as the job file writes them, in the order in which they would be
  // chosen. Empty where none is known.
  std::vector<std::string> instead;
};
// Each thing, and each technique a role names, is reported once. No more than base::kMostProblems, and problems.more
// {count} for the rest.
using ComposeProblems = std::vector<ComposeProblem>;

base::Result<Workflow, ComposeProblems> compose(const design::Design& design, const craft::Catalogue& catalogue,
                                                const ThingWords& words = {});

}  // namespace core::workflow
