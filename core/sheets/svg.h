#pragma once
// A drawing as SVG text in true millimetres (SVG 1.1). Deterministic.
#include <string>

#include "core/sheets/drawing.h"

namespace core::sheets {

std::string svg(const Drawing& drawing);

}  // namespace core::sheets
