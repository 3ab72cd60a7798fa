#pragma once
// A drawing of the core with what is shown of it: what is inked, what stands out, in which colours.
#include <QRectF>
#include <memory>
#include <string>
#include <vector>

#include "app/painting/tints.h"
#include "core/sheets/drawing.h"

namespace app::painting {

struct Painted {
  std::shared_ptr<const core::sheets::Drawing> piece;                     // or act; null: nothing to paint
  std::shared_ptr<const std::vector<core::sheets::Primitive>> dimension;  // laid over it
  std::string worked;              // the thing whose elements are inked; "" for none
  std::vector<std::string> wrong;  // things that stand against the design: inked, their lines broken
  // Colours of what is drawn, for a drawing that is to look like the piece; empty: ink and pencil alone.
  Tints tints;
  QRectF seen;  // what of the piece is brought into view, in mm; null: the whole

  friend bool operator==(const Painted&, const Painted&) = default;
};

}  // namespace app::painting
