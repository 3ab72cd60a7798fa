#pragma once
// Words for the things steps are about. They are apart from the other words, so that composing does not need Qt.
#include "core/workflow/things.h"

namespace app::words {

// Returns the names of things in the texts of steps.
core::workflow::ThingWords thingWords();

}  // namespace app::words
