#pragma once
// The "where" of a technique or of a quantified fact: which things are meant, by their properties.
#include <optional>

#include "core/base/strict_reader.h"
#include "core/craft/technique.h"

namespace core::craft {

// Without a kind (it is wrong, which is already reported) nothing is read. An unknown property, or a value it can never
// have, is reported at its place.
Where readWhere(const base::Node& node, std::optional<ThingKind> kind, base::Problems& problems);
// The same of things of a technique done for each `outer`: a part has the properties of its field.
Where readWhere(const base::Node& node, std::optional<ThingKind> kind, ThingKind outer, base::Problems& problems);

}  // namespace core::craft
