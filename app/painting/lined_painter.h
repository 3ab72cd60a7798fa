#pragma once
// Ink and pencil for what has no material: acts, sections, sheets to be cut, dimensions.
#include <QPainter>

#include "app/painting/inks.h"
#include "core/sheets/drawing.h"

namespace app::painting {

enum class Emphasis { None, Worked, Wrong };

// Paints a shape in ink or pencil, at `scale` pixels to the mm. Texts of the drawing are too small for the bench and
// are left out; the figure stands beside it instead.
void paintLined(QPainter& painter, const core::sheets::Primitive& primitive, Emphasis emphasis, double scale,
                const Inks& inks);

// Outlines a board or a paper of an act that was painted in its material.
void paintActOutline(QPainter& painter, const QPainterPath& path, const Inks& inks);

// Clears the way for a dimension across materials.
void paintHalo(QPainter& painter, const core::sheets::Primitive& primitive, double scale, const Inks& inks);

}  // namespace app::painting
