#pragma once
// What the numbers of the cutter's card are called on it: short, and as the board lies with its back up.
#include <QString>

#include "core/sheets/card.h"

namespace app::viewmodels {

// From where a measure is taken: "from the right edge".
QString datumOnCard(core::sheets::Datum datum);

// Returns what a measure gives: "left jamb".
QString nameOnCard(const core::design::Design& design, const core::sheets::CardMeasure& measure);

// Returns whether a figure is what the cutter is set to, and what that is called where there is room for a word.
bool isOfCutter(const core::design::Figure& figure);
QString nameOnCutter(const core::design::Figure& figure);

// Returns the number alone, in one line; an angle keeps its sign and a radius has one.
QString numberOnCard(const core::design::Figure& figure);

}  // namespace app::viewmodels
