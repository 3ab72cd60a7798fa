#pragma once
// The cutter's card on the glass: the board in its material, what is made on it in ink, what is to come in dots, and
// the number in hand with its datum and its dimension.
#include <optional>

#include "app/painting/drawing_painter.h"
#include "core/sheets/card.h"

namespace app::painting {

// How far the hand is in a card's numbers.
struct CardTurn {
  std::optional<std::size_t> current;  // in hand; nothing: none with a place on the board
  std::size_t made = 0;                // so many from the first are made, but for the one in hand
  friend bool operator==(const CardTurn&, const CardTurn&) = default;
};

// What marks and words on the board are made in.
struct CardColours {
  QColor board;  // its surface in this light
  QColor ink;
  QColor worked;
};
CardColours coloursOf(const core::sheets::Card& card, const Inks& inks);

// Paints the lines of a card laid out in pixels. Numbers and words are texts of the screen.
void paintCard(QPainter& painter, const core::sheets::Card& card, const CardTurn& turn, const Inks& inks);

}  // namespace app::painting
