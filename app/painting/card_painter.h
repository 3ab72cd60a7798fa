#pragma once
// The cutter's card on the glass: one number's lines in ink, the others in pencil.
#include <optional>

#include "app/painting/drawing_painter.h"
#include "core/sheets/card.h"
#include "core/sheets/measure.h"

namespace app::painting {

// Paints the lines of a card laid out in pixels; `opening` is the colour seen through the window, `current` the place
// of the number that is inked. The numbers themselves are texts of the screen.
void paintCard(QPainter& painter, const core::sheets::Card& card, std::optional<std::size_t> current, const Inks& inks,
               const QColor& opening);

// Paints the lines of a measure (core::sheets::measureLines) laid out in pixels. Witness lines and the dimension have a
// halo where they run over materials.
void paintMeasure(QPainter& painter, const std::vector<core::sheets::Primitive>& lines, const Inks& inks);

}  // namespace app::painting
