#pragma once
// The shapes of a piece in their materials.
#include <QPainter>
#include <string>

#include "app/painting/appearance.h"
#include "app/painting/inks.h"
#include "core/sheets/drawing.h"

namespace app::painting {

// What a shape is shown as beside what it is: worked, it is outlined in ink.
struct PieceView {
  const Inks& inks;
  const Appearances& appearances;
  double scale = 1;       // pixels to the mm
  std::string rear = {};  // seen from the back: the board that lies nearest; what lies behind it is hidden

  const Appearance& own(const core::sheets::Matter& matter) const { return appearances.of(matter.name); }
};

// Paints one shape as far as it has got: its material, or that sunk into the cloth with a dotted outline.
void paintShape(QPainter& painter, const core::sheets::Primitive& primitive, const PieceView& view);

// Outlines what is worked in ink, with its material on top.
void paintWorked(QPainter& painter, const core::sheets::Primitive& primitive, const PieceView& view);

}  // namespace app::painting
