#pragma once
// The words drawings are dumped and classed with; and one primitive's line of a dump.
#include <string>
#include <string_view>

#include "core/sheets/drawing.h"

namespace core::sheets {

std::string_view name(Role role);              // "boardEdge", "band", "dimensionText"
std::string_view name(Substance substance);    // "laidLeaf"
std::string dump(const Primitive& primitive);  // without a line end

}  // namespace core::sheets
