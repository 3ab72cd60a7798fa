#include <QtGlobal>

#include "app/words/catalogue.h"

namespace app::words {

const std::vector<Entry>& materialEntries() {
  static const std::vector<Entry> kEntries = {
      {"materials.pieces", QT_TRANSLATE_NOOP("words", "To be cut")},
      {"materials.match", QT_TRANSLATE_NOOP("words", "Pattern at the corners")},
      {"materials.match-meets", QT_TRANSLATE_NOOP("words", "{band} band: all four corners meet")},
      {"materials.match-near",
       QT_TRANSLATE_NOOP("words", "{band} band: the corners miss by {by}, too little to be seen")},
      {"materials.match-open", QT_TRANSLATE_NOOP("words", "{band} band: the corners miss by {by}")},
      {"materials.match-directional", QT_TRANSLATE_NOOP("words", "{band} band: a directional paper")},
      {"materials.option-order",
       QT_TRANSLATE_NOOP("words",
                         "Ways to close them, best first: those that open no other band's corners and reach under "
                         "no lip, then those that do; among equals the least change in all.")},
      {"materials.option-cost", QT_TRANSLATE_NOOP("words", "changes by {by} in all")},
      {"materials.option", QT_TRANSLATE_NOOP("words", "{number}. {changes}. {why}")},
      {"materials.option-figures",
       QT_TRANSLATE_NOOP(
           "words", "strips then {level} at top and bottom, {upright} at the sides; outer edge {width} x {height}")},
      {"materials.option-edit", QT_TRANSLATE_NOOP("words", "in the job file {pointer}: {value}")},
      {"materials.option-on-steps",
       QT_TRANSLATE_NOOP("words", "or on the steps of a rule, which leaves {by} and does not show:")},
      {"materials.more-options", QT_TRANSLATE_NOOP("words", "{count} more with --json")},
      {"materials.strips-along",
       QT_TRANSLATE_NOOP("words", "Strips one after the other along {run} of paper, {lost} of it lost between them:")},
      {"materials.strip-top", QT_TRANSLATE_NOOP("words", "top")},
      {"materials.strip-right", QT_TRANSLATE_NOOP("words", "right")},
      {"materials.strip-bottom", QT_TRANSLATE_NOOP("words", "bottom")},
      {"materials.strip-left", QT_TRANSLATE_NOOP("words", "left")},
      {"materials.strip-place",
       QT_TRANSLATE_NOOP("words", "from {begin} to {end}; first motif {motif} from its first cut end")},
      {"materials.sheets", QT_TRANSLATE_NOOP("words", "Sheets")},
      {"materials.amounts", QT_TRANSLATE_NOOP("words", "Amounts")},
      {"materials.costs", QT_TRANSLATE_NOOP("words", "Cost")},

      {"materials.size", QT_TRANSLATE_NOOP("words", "{width} x {height}")},
      {"materials.grain-width", QT_TRANSLATE_NOOP("words", "grain along its width")},
      {"materials.grain-height", QT_TRANSLATE_NOOP("words", "grain along its height")},
      {"materials.grain-long", QT_TRANSLATE_NOOP("words", "grain along the strip")},
      {"materials.grain-short", QT_TRANSLATE_NOOP("words", "fibres across the strip")},
      {"materials.spacer",
       QT_TRANSLATE_NOOP("words", "spacer: {length} of strip in all, {width} wide and {thickness} thick")},
      {"materials.allowance",
       QT_TRANSLATE_NOOP("words",
                         "{name}: cut each {allowance} longer, one repeat, to set its first motif; all run the "
                         "same way along the pattern, none turned")},
      {"materials.without-stock", QT_TRANSLATE_NOOP("words", "no stock listed")},
      {"materials.by-material", QT_TRANSLATE_NOOP("words", "from {stock}, of that material")},
      {"materials.by-id", QT_TRANSLATE_NOOP("words", "from {stock}, of that name")},
      {"materials.by-only-paper", QT_TRANSLATE_NOOP("words", "from {stock}, the one paper listed")},
      {"materials.by-thickness", QT_TRANSLATE_NOOP("words", "from {stock}, of that thickness")},
      {"materials.by-no-thickness", QT_TRANSLATE_NOOP("words", "from {stock}, which states no thickness")},

      {"materials.only-paper",
       QT_TRANSLATE_NOOP("words",
                         "\"{paper}\" is taken from \"{stock}\" since the job has no other paper; a "
                         "\"material\" there would say so")},
      {"materials.several-materials",
       QT_TRANSLATE_NOOP("words",
                         "stock of more than one material has this thickness ({materials}); a \"material\" of "
                         "the board would choose")},
      {"materials.thickness-unsaid",
       QT_TRANSLATE_NOOP("words", "\"{stock}\" states no thickness and cannot be for boards of several")},
      {"materials.grain-unknown",
       QT_TRANSLATE_NOOP("words",
                         "\"{stock}\" does not say which way its fibres run: pieces lie as if along its "
                         "{side}")},
      {"materials.pattern-unknown",
       QT_TRANSLATE_NOOP("words",
                         "\"{stock}\" does not say which way its pattern runs: strips lie as if along its "
                         "{side}")},
      {"materials.grain-against-pattern",
       QT_TRANSLATE_NOOP("words",
                         "on \"{stock}\" strips follow the pattern, and their fibres then run the other way "
                         "than their band asks")},
      {"materials.too-large",
       QT_TRANSLATE_NOOP("words", "{name}: no sheet listed for it is large enough ({count} lack)")},
      {"materials.too-few",
       QT_TRANSLATE_NOOP("words", "{name}: the sheets listed for it do not suffice ({count} lack)")},

      {"materials.sheet", QT_TRANSLATE_NOOP("words", "{stock}, {width} x {height}, sheet {number}")},
      {"materials.offcut-sheet", QT_TRANSLATE_NOOP("words", "{stock}, {width} x {height}, offcut {number}")},
      {"materials.trim", QT_TRANSLATE_NOOP("words", "trim {margin} off every edge; places count from what is left")},
      {"materials.at", QT_TRANSLATE_NOOP("words", "{x} from the left, {y} from the top")},
      {"materials.cut-upright",
       QT_TRANSLATE_NOOP("words", "cut {number}: the part of {width} x {height}, {fence} from its left")},
      {"materials.cut-level",
       QT_TRANSLATE_NOOP("words", "cut {number}: the part of {width} x {height}, {fence} from its top")},
      {"materials.keep", QT_TRANSLATE_NOOP("words", "keep {width} x {height}")},
      {"materials.proven", QT_TRANSLATE_NOOP("words", "{stock}: no cutting needs less")},
      {"materials.within",
       QT_TRANSLATE_NOOP("words", "{stock}: by rules of thumb; at most {percent} % of the new sheets could be saved")},

      {"materials.leaf-of", QT_TRANSLATE_NOOP("words", "leaf for {id}")},
      {"materials.size-of", QT_TRANSLATE_NOOP("words", "size for {id}")},
      {"materials.paste", QT_TRANSLATE_NOOP("words", "paste")},
      {"materials.paint-of", QT_TRANSLATE_NOOP("words", "paint, {id}")},
      {"materials.leaves", QT_TRANSLATE_NOOP("words", "{count} leaves")},
      {"materials.spread",
       QT_TRANSLATE_NOOP("words", "{area} at {spread} ml/m2, and {percent} % left in pot and brush")},
      {"materials.for-area", QT_TRANSLATE_NOOP("words", "for {area}")},

      {"materials.cost-leaf", QT_TRANSLATE_NOOP("words", "leaf")},
      {"materials.cost-size", QT_TRANSLATE_NOOP("words", "size")},
      {"materials.cost-paint", QT_TRANSLATE_NOOP("words", "paint")},
      {"materials.cost-labour", QT_TRANSLATE_NOOP("words", "labour")},
      {"materials.cost-sheets", QT_TRANSLATE_NOOP("words", "sheets of {id}")},
      {"materials.sheets-at", QT_TRANSLATE_NOOP("words", "{count} at {price}; {percent} % of them used: {share}")},
      {"materials.leaves-at", QT_TRANSLATE_NOOP("words", "{count} at {price}")},
      {"materials.litres-at", QT_TRANSLATE_NOOP("words", "{count} ml at {price} a litre")},
      {"materials.hours-at", QT_TRANSLATE_NOOP("words", "{time} of hands at work, at {price} an hour")},
      {"materials.total", QT_TRANSLATE_NOOP("words", "in all")},
      {"materials.total-rests",
       QT_TRANSLATE_NOOP("words", "with whole new sheets; {share} with sheets by what is used of them")},
      {"materials.not-priced", QT_TRANSLATE_NOOP("words", "not priced: {names}")},
  };
  return kEntries;
}

}  // namespace app::words
