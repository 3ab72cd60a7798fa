#pragma once
// Finds the stock a piece may be cut from. Nothing is guessed in silence: every match states its reason.
//
// Paper: stock whose `material` is the paper's name, or that names no material and has the name for its id ("wave-block
// print": `wave-block-print`); or else, where the job asks for one paper alone and has one stock of paper alone that
// names no material, that one, with a note. Board: stock of the same thickness, and of the same material where the
// piece names one; or else stock that states no thickness, as long as what it would serve is all of one thickness.
// Backing takes stock of stated thickness alone; glazing is never cut from stock. A thickness is the same to 0.05 mm:
// board is measured to the tenth, and what one maker calls 1/16 in another calls 1.6 mm (common practice, no source).
//
// Offcuts kept in the shop serve beside that, never in place of it: of the very material, and of the same thickness for
// board. A board that names no material takes only offcuts of the material of the stock that serves it, or any where
// none does.
#include <cstddef>
#include <string_view>
#include <vector>

#include "core/base/message.h"
#include "core/materials/cutting_list.h"

namespace core::materials {

inline constexpr units::Length kSameThickness = units::Length::nanometres(50'000);

enum class MatchedBy { Nothing, Material, Id, OnlyPaper, Thickness, NoThickness };

// The sheets there are to cut from. Indices count through the three, one after the other.
struct SheetsThere {
  // The stock of the job's file, less the part that is cut up. The pieces that listed stock serves are cut from it.
  std::vector<design::Stock> listed = {};
  std::vector<design::Stock> shop = {};  // the shop's own: for the pieces the file lists nothing for
  std::vector<design::Stock> kept = {};  // offcuts of earlier work, each there once

  std::size_t size() const { return listed.size() + shop.size() + kept.size(); }
  const design::Stock& at(std::size_t index) const;
  bool isListed(std::size_t index) const { return index < listed.size(); }
  bool isKept(std::size_t index) const { return index >= listed.size() + shop.size(); }
  // Compares without the places of the stock in a file.
  friend bool operator==(const SheetsThere& a, const SheetsThere& b);
};

struct StockMatch {
  MatchedBy by = MatchedBy::Nothing;
  std::vector<std::size_t> stock;    // indices into the stock, ascending
  std::vector<base::Message> notes;  // what the maker should look at
};

// Returns one match for each piece, in their order, with indices into the sheets there.
std::vector<StockMatch> matchSheets(const std::vector<CutPiece>& pieces, const SheetsThere& there);

// Does the same with stock of one origin.
std::vector<StockMatch> matchStock(const std::vector<CutPiece>& pieces, const std::vector<design::Stock>& stock);

std::string_view name(MatchedBy by);  // "nothing", "material", "id", "only-paper", "thickness", "no-thickness"

}  // namespace core::materials
