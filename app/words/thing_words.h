#pragma once
// Words for the things steps are about. Apart from the rest of the words, so that whoever composes needs nothing of Qt.
#include "core/workflow/things.h"

namespace app::words {

// How things are called in the texts of steps.
core::workflow::ThingWords thingWords();

}  // namespace app::words
