#pragma once
// The layers of a piece from the glazing to the backing. Only care_*.cpp include this.
#include "core/sheets/care_writer.h"

namespace core::sheets {

CareSection layerSection(const CareWriter& write);

}  // namespace core::sheets
