#pragma once
// A document as far as its measures hold.
#include "core/base/json.h"
#include "core/design/design.h"

namespace app::designing {

// What the core makes of a document, every problem told as it is. The design is there wherever what bears on the
// measures holds: a title still to be given, a day that is none, a paper without a name stand aside for it.
core::design::ReadDesign readForNow(const core::base::Value& document);

// Whether the measures of a piece are the same whatever stands at that place.
bool standsAside(const std::string& pointer);

}  // namespace app::designing
