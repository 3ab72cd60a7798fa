#pragma once
// The alternatives among the techniques of a design: for each role that the composed workflow fills, which there are.
#include <vector>

#include "app/designing/fields.h"
#include "core/craft/catalogue.h"
#include "core/workflow/workflow.h"

namespace app::designing {

// `composed` may be null where the design cannot be composed as it is: then only what is chosen is offered. A role with
// a single technique is no choice and is left out.
Section techniqueSection(const core::base::Value& document, const core::craft::Catalogue& catalogue,
                         const core::workflow::Workflow* composed);

}  // namespace app::designing
