#pragma once
// The shipped techniques and demo jobs, and small ones made for a test.
#include <string>
#include <vector>

#include "core/craft/catalogue.h"
#include "core/design/design.h"
#include "core/workflow/workflow.h"
#include "tests/support/design_of.h"

namespace tests {

std::string fileText(const std::string& path);
// Returns every technique of the recipes folder, but for those left out by id.
core::craft::Catalogue shippedTechniques(const std::vector<std::string>& leftOut = {});
// Adds a technique from its text; fails the test where it cannot be read.
void addTechnique(core::craft::Catalogue& catalogue, const std::string& text);
std::string demoJobText();
// Returns the demo job with every `from` in its text replaced by `to`; fails the test where there is none.
std::string demoJobWith(const std::string& from, const std::string& to);
// Returns every problem and notice of a job, in order, a line each.
std::vector<std::string> problemLines(const std::string& jobText);
// Returns the composed workflow, or fails the test with the reasons.
core::workflow::Workflow composed(const core::design::Design& design, const core::craft::Catalogue& catalogue);
// Returns one line for each reason why the job cannot be composed.
std::vector<std::string> composeProblems(const core::design::Design& design, const core::craft::Catalogue& catalogue);

// A minimal technique file of one step, for the job as a whole: extra members are spliced into file and step.
std::string oneStepTechnique(const std::string& id, const std::string& makes, const std::string& fileMembers,
                             const std::string& stepMembers);

}  // namespace tests
