#pragma once
// The properties things have, by kind: what `where` may ask about and what {placeholders} may stand for.
#include <string>
#include <string_view>
#include <vector>

#include "core/craft/technique.h"

namespace core::craft {

// Returns the names of the properties of a thing of `kind` in a technique done for each `outer`. The job as a whole has
// none.
std::vector<std::string> propertiesOf(ThingKind kind, ThingKind outer);

// Returns the values a property can have where they are words of the format; empty where a job may write anything.
std::vector<std::string> valuesOf(std::string_view property);

}  // namespace core::craft
