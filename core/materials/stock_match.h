#pragma once
// Which stock a piece may be cut from. Nothing is guessed in silence: every match says how it came about.
//
// Paper: stock whose `material` is the paper's name, or that names no material and has the name for its id ("wave-block
// print": `wave-block-print`); or else, where the job asks for one paper alone and has one stock of paper alone that
// names no material, that one, with a note. Board: stock of the same thickness, and of the same material where the
// piece names one; or else stock that states no thickness, as long as what it would serve is all of one thickness.
// Backing takes stock of its very thickness alone; glazing is never cut from stock.
#include <cstddef>
#include <string_view>
#include <vector>

#include "core/base/message.h"
#include "core/materials/cutting_list.h"

namespace core::materials {

enum class MatchedBy { Nothing, Material, Id, OnlyPaper, Thickness, NoThickness };

struct StockMatch {
  MatchedBy by = MatchedBy::Nothing;
  std::vector<std::size_t> stock;    // indices into the job's stock, ascending
  std::vector<base::Message> notes;  // what the maker should look at
};

// One match a piece, in their order.
std::vector<StockMatch> matchStock(const std::vector<CutPiece>& pieces, const std::vector<design::Stock>& stock);

// Adds to each match the offcuts kept in the shop that serve its piece, by index after the job's stock: of the very
// material, and of the very thickness for board. A board that names no material takes only what is of the material of
// its stock on the job's list, or any where the list has none. Offcuts never take the job's own stock away from a
// piece. Requires one match a piece.
void matchKept(std::vector<StockMatch>& matches, const std::vector<CutPiece>& pieces,
               const std::vector<design::Stock>& stock, const std::vector<design::Stock>& kept);

std::string_view name(MatchedBy by);  // "nothing", "material", "id", "only-paper", "thickness", "no-thickness"

}  // namespace core::materials
