#pragma once
// A drawing of the core with its presentation: the parts that are inked or highlighted.
#include <QRectF>
#include <memory>
#include <string>
#include <vector>

#include "app/painting/appearance.h"
#include "core/sheets/act.h"
#include "core/sheets/drawing.h"

namespace app::painting {

struct Painted {
  std::shared_ptr<const core::sheets::Drawing> piece;                     // or act; null: nothing to paint
  std::shared_ptr<const std::vector<core::sheets::Primitive>> dimension;  // laid over it
  std::string worked;                           // the thing whose elements are inked; "" for none
  std::vector<std::string> wrong;               // things with a problem: inked, their lines broken
  std::vector<core::sheets::Numeral> numerals;  // of an act; the screen writes them over it
  // How materials look that have a look of their own; null: all look as their names say.
  std::shared_ptr<const Appearances> appearances = nullptr;
  QRectF seen;  // what of the piece is brought into view, in mm; null: the whole

  friend bool operator==(const Painted&, const Painted&) = default;
};

}  // namespace app::painting
