#pragma once
// The tones by the names the rules of sounding use.
#include "app/sound/tones.h"

namespace app::alerts {

using sound::lengthNanoseconds;
using sound::lengthSeconds;
using sound::Tone;

}  // namespace app::alerts
