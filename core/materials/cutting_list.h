#pragma once
// Everything a job has cut to size: what it is, how many, how large, which way its fibres run, and the figures its
// sizes are computed from. Sizes are the figures' own, rounded up to the whole nanometre; nothing here is rounded for
// display.
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/design/job.h"
#include "core/design/layout.h"

namespace core::materials {

using units::Length;

enum class PieceUse {
  Board,
  BackMount,
  Support,  // of a float
  Backing,
  Glazing,
  SpacerHorizontal,
  SpacerVertical,
  StripHorizontal,
  StripVertical,
  Spandrel,
};

// Bought as they are, and cut from none of the sheets: glazing and the strips of a spacer.
bool isBought(PieceUse use);

// The way the fibres of a piece are to run: along its width, along its height, or either way.
enum class PieceGrain { Width, Height, Any };

struct CutPiece {
  std::string id;  // "board.top", "back-mount", "support", "backing", "glazing", "spacer.horizontal",
                   // "band.inner.horizontal", "spandrel.crown"
  PieceUse use = PieceUse::Board;
  std::string element;  // the board, band or spandrel; "" for a part of the package
  int count = 1;
  Length width, height;  // as placed on the mount; for a strip, its length and its width
  // How much longer than its length a strip is cut, so that a motif can be set where it belongs: one repeat, which is
  // sure to hold the motif. Zero without a repeat.
  Length allowance;
  bool patterned = false;           // runs the way of the sheet's pattern, and is never turned
  std::optional<Length> thickness;  // of board and glass
  PieceGrain grain = PieceGrain::Any;
  std::string material;              // in the job's words; "" where the job names none
  std::vector<std::string> figures;  // its width and height are computed from

  Length neededWidth() const { return width + allowance; }
  bool ofPaper() const {
    return use == PieceUse::StripHorizontal || use == PieceUse::StripVertical || use == PieceUse::Spandrel;
  }
};

// Boards from the face inwards, back mount, a float's support, backing, glazing, spacer, strips from the innermost band
// outwards, spandrels. A part of the package of no thickness is left out. The fibres of boards and of everything behind
// them run along the long side.
std::vector<CutPiece> cuttingList(const design::Job& job, const design::Layout& layout);

// Returns the part of a list that is left once so many of each piece are cut.
std::vector<CutPiece> stillToCut(std::vector<CutPiece> pieces, const std::map<std::string, int>& cut);

// The whole nanometre at or above; a hair of a double's last bit above one counts as on it.
Length wholeNanometre(double millimetres);

}  // namespace core::materials
