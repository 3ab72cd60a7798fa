#pragma once
// What the shapes of a piece are made of.
#include "core/design/design.h"
#include "core/sheets/matter.h"

namespace core::sheets::detail {

Matter matterOf(const design::Board& board);
Matter coreOf(const design::Board& board);
Matter bevelOf(const design::Board& board);
Matter matterOf(const design::Line& line);
Matter matterOf(const design::Wash& wash, const design::WashLayout& placed);
Matter matterOf(const design::Spandrel& spandrel);
// Of the field with that index.
Matter leafOf(const design::Design& design, std::size_t index);

// Strips are counted as they lie, clockwise from the top. Requires the corners of the band's inner edge in that order.
Matter stripOf(const design::Band& band, const design::BandLayout& placed, const std::array<Point, 4>& inside,
               std::size_t strip);

}  // namespace core::sheets::detail
