#pragma once
// The piece itself as a drawing: boards, bands, lines and leaf at scale, and the dimension of one figure.
#include <optional>
#include <string>

#include "core/design/design.h"
#include "core/sheets/drawing.h"

namespace core::sheets {

// Draws the whole piece seen from one side. From the back only what the back shows: edges, sight lines, the marks.
Drawing drawPiece(const design::Design& design, Side side);

// The dimension line that shows a figure on the piece ("board.top.mark.left", "band.inner.strip.horizontal"):
// primitives to lay over drawPiece of the side the figure is measured on. Empty where a figure has no place on
// the drawing (an amount, a depth).
struct FigureDimension {
  Side side = Side::Face;
  std::vector<Primitive> primitives;
};
std::optional<FigureDimension> drawFigure(const design::Design& design, const std::string& figureId);
// Turns a dimension that is drawn on the face over to the back; one drawn there stays.
void turnToBack(FigureDimension& dimension, const design::Design& design);

// Returns whether a primitive's element belongs to a thing being worked ("inner" and "inner.top" belong to "inner").
bool belongsTo(const std::string& element, const std::string& thing);

}  // namespace core::sheets
