#pragma once
// The colours of the piece as the design names them, for a drawing that is to look like it.
#include <QColor>
#include <map>
#include <string>
#include <utility>

#include "core/design/design.h"
#include "core/sheets/drawing.h"

namespace app::painting {

// The keys are the element and its role. A colour that the design names in unknown words gives none; papers, whose
// pattern is not known, have a tone of their own, so that they stand out from the board.
using Tints = std::map<std::pair<std::string, core::sheets::Role>, QColor>;
Tints tintsOf(const core::design::Design& design);

// "copper", "reed green", or a name or #rrggbb as the web writes it; invalid for none of them.
QColor colourNamed(const std::string& name);

}  // namespace app::painting
