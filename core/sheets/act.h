#pragma once
// The act of a step as a small drawing: where the blade goes, which side is up, what the hand lays and which way it
// moves. The piece in it is an invented sample of 120 x 80 mm, drawn thicker than any board is.
#include <optional>
#include <string>
#include <vector>

#include "core/craft/technique.h"
#include "core/design/job.h"
#include "core/sheets/drawing.h"

namespace core::sheets {

// What the sample is made of where it shows a board or a patterned paper, by the names of the job; "" for a plain one.
struct ActPapers {
  std::string board;
  std::string paper;
  double repeat = 0;  // of the paper's pattern, in widths of the strip; 0: none, or not known
};

// Returns those of the piece: the board and the band that the step is done to, or the first of each.
ActPapers papersOf(const design::Job& job, const std::string& thing);

// Deterministic. `up` turns the bevel's slope and puts the marked corner where it is then seen; a step that does not
// state it gets the side the act is usually done on. No text: shapes alone speak. Everything is within the drawing's
// frame. Beside it stand the places of the parts that sentences speak of.
Drawing drawAct(craft::Act act, craft::WayUp up, const ActPapers& papers = {});

// The number of a sentence at the part of the drawing it speaks of.
struct Numeral {
  int number = 0;
  Point at;
  friend bool operator==(const Numeral&, const Numeral&) = default;
};

// Returns the numbers of the first sentences that speak of a part the drawing has, in their order.
std::vector<Numeral> numerals(const Drawing& act, const std::vector<std::optional<craft::ActPlace>>& places);

}  // namespace core::sheets
