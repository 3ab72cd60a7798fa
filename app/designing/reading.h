#pragma once
// A document as far as its measures hold.
#include "core/base/json.h"
#include "core/design/design.h"

namespace app::designing {

// Returns the core's reading of a document, with every problem unchanged. The design is present wherever everything
// that affects the measures is valid: a missing title, an invalid day or a paper without a name does not prevent it.
core::design::ReadDesign readForNow(const core::base::Value& document);

// Returns whether the measures of a piece do not depend on the value at that place.
bool standsAside(const std::string& pointer);

}  // namespace app::designing
