#pragma once
// Small drawings of what can be chosen: a window's form, and every material as it lies on the piece.
#include <memory>
#include <string>

#include "core/geometry/outline.h"
#include "core/sheets/drawing.h"

namespace app::designing {

using Sample = std::shared_ptr<const core::sheets::Drawing>;

// A material by its name; null where that is empty.
Sample sampleOf(core::sheets::Substance substance, const std::string& name);
// A strip of a paper. One that repeats without a name has the motif it is drawn with on the piece.
Sample paperSample(const std::string& name, bool repeats);
// The outline of a window, in ink.
Sample outlineSample(const core::geometry::Outline& placed);

}  // namespace app::designing
