#pragma once
// Compares what a job needs with the stock there is, while the job is being designed. The needs are the cutting list's
// and the amounts' own, the sheets are those of the plan the job is cut by; nothing is computed a second way.
#include <optional>
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/design/design.h"
#include "core/materials/amounts.h"
#include "core/materials/sheet_plan.h"

namespace core::materials {

// The source of a number.
enum class Known { Entered, Computed };

// Stock of the shop that is not counted in sheets, as the maker entered it.
struct OtherStock {
  std::string id;
  AmountKind kind = AmountKind::Paste;
  // The colour, or methylCellulose, starch, water, oil; for leaf and paste the maker's own name.
  std::string name;
  // Whole leaves or millilitres; nothing where it is measured in grams: no density is ever supposed.
  std::optional<double> amount;
};

enum class ShortFrom {
  Listed,    // the job's file lists stock for it
  Shop,      // the shop's stock
  Nothing,   // there is stock on record, and none of it serves
  Unlisted,  // no stock of the kind is listed, so a shortage cannot be known
};

struct ShortLine {
  std::string id;      // of the piece or the amount: "band.inner.horizontal", "leaf.field", "paint.copper"
  bool piece = false;  // or an amount
  AmountKind kind = AmountKind::Paste;  // of an amount
  std::string of;                       // the material in the job's words, "" where it names none
  double need = 0;                      // pieces, leaves, millilitres
  Known needKnown = Known::Computed;
  std::optional<double> have;  // in the same measure; nothing: not known. Of pieces: how many the sheets there give
  Known haveKnown = Known::Entered;  // of pieces computed, from sheets that were entered
  std::optional<double> lack;        // more than nothing where it does not suffice; nothing: not known
  ShortFrom from = ShortFrom::Nothing;
  std::vector<std::string> stock;    // ids of what serves: of the job's file or of the shop
  std::vector<base::Message> notes;  // what the maker should look at
};

struct SheetsTaken {
  std::string stock;
  ShortFrom from = ShortFrom::Listed;  // or Shop
  int sheets = 0;
};

struct Shortage {
  std::vector<ShortLine> lines;    // pieces in the order of the cutting list, then amounts in theirs
  std::vector<SheetsTaken> taken;  // new sheets the pieces would need, without offcuts
  bool isShort() const;            // something is known to lack
};

// `pieces`: what is still to be cut, see stillToCut; `plan` is theirs, from the sheets there. Glazing is bought cut to
// size and left out.
Shortage shortageOf(const std::vector<CutPiece>& pieces, const SheetsThere& there, const SheetPlan& plan,
                    const std::vector<Amount>& amounts, const design::Job& job, const std::vector<OtherStock>& others);

}  // namespace core::materials
