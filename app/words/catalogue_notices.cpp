#include <QtGlobal>

#include "app/words/catalogue.h"

namespace app::words {

const std::vector<Entry>& noticeEntries() {
  static const std::vector<Entry> kEntries = {
      {"design.face-touches-glazing",
       QT_TRANSLATE_NOOP("words", "the decorated face touches the glazing; a spacer holds it off")},
      {"design.spacer-within-decoration",
       QT_TRANSLATE_NOOP("words",
                         "the spacer is {spacer} thick and the decoration {decoration}: the decorated face touches the "
                         "glazing all the same; take a thicker spacer")},
      {"design.lip-hides-nothing",
       QT_TRANSLATE_NOOP("words",
                         "the play in the rebate is {play} and the lip hides {lip}: once the package has settled, its "
                         "edge shows at the top; allow less play, or choose a wider lip")},
      {"design.float-without-air",
       QT_TRANSLATE_NOOP("words",
                         "there is {air} of air round the float: paper grows and would touch the window; {least} or "
                         "more keeps it clear")},
      {"design.leaf-covers-nothing",
       QT_TRANSLATE_NOOP("words", "the leaf of \"{leaf}\" covers nothing; enter how much, or leave it out")},
      {"design.colour-under-leaf",
       QT_TRANSLATE_NOOP("words",
                         "the bevel of the {board} board is painted, and then covered with leaf; leave out its colour "
                         "or the leaf of \"{leaf}\"")},
      {"design.spacer-shows",
       QT_TRANSLATE_NOOP("words",
                         "the spacer is {spacer} wide and the lip hides {lip}: it shows in the sight; no wider than "
                         "{would}, it stays hidden")},
      {"design.spacer-shows-above",
       QT_TRANSLATE_NOOP("words",
                         "the spacer is {spacer} wide, and at the top the lip hides only {top} of its {lip}, since the "
                         "package settles below: it shows there; no wider than {would}, it stays hidden")},
      {"design.spacer-never-hidden",
       QT_TRANSLATE_NOOP("words",
                         "the lip hides {lip}, and {top} at the top: no spacer stays hidden there, since none narrower "
                         "than {least} can be fixed; choose a wider lip, or less play")},
      {"design.spacer-without-glazing",
       QT_TRANSLATE_NOOP("words", "there is no glazing for the spacer to hold off; enter the glazing, or no spacer")},
      {"design.spacer-unframed",
       QT_TRANSLATE_NOOP("words", "the piece is delivered without its frame: the spacer is neither cut nor fixed")},
      {"design.spacer-width-of-none",
       QT_TRANSLATE_NOOP("words", "there is no spacer to be so wide; enter its thickness in \"spacer\"")},
      {"design.support-of-covered",
       QT_TRANSLATE_NOOP("words",
                         "a support raises an artwork that floats, and this one lies under the mount; leave "
                         "it out, or let the artwork float")},
      {"design.support-too-large",
       QT_TRANSLATE_NOOP("words",
                         "a support is {by} smaller than the sheet, and of {sheet} nothing is left; let the "
                         "artwork float flat, with a support of nothing")},
      {"design.choice-idle", QT_TRANSLATE_NOOP("words", "\"{technique}\" is chosen, and plays no part in this piece")},
      {"design.wants-least.length",
       QT_TRANSLATE_NOOP("words",
                         "{says:measure} is {is}, and {wanted} or more is wanted for \"{techniques}\". {why}")},
      {"design.wants-least.temperature",
       QT_TRANSLATE_NOOP("words",
                         "{says:measure} is {is} °C, and {wanted} °C or more is wanted for \"{techniques}\". {why}")},
      {"design.wants-least.humidity",
       QT_TRANSLATE_NOOP("words",
                         "{says:measure} is {is} %, and {wanted} % or more is wanted for \"{techniques}\". {why}")},
      {"design.wants-most.length",
       QT_TRANSLATE_NOOP("words",
                         "{says:measure} is {is}, and at most {wanted} is wanted for \"{techniques}\". {why}")},
      {"design.wants-most.temperature",
       QT_TRANSLATE_NOOP("words",
                         "{says:measure} is {is} °C, and at most {wanted} °C is wanted for \"{techniques}\". {why}")},
      {"design.wants-most.humidity",
       QT_TRANSLATE_NOOP("words",
                         "{says:measure} is {is} %, and at most {wanted} % is wanted for \"{techniques}\". {why}")},
      {"design.wants-such",
       QT_TRANSLATE_NOOP("words", "\"{technique}\" is for {or:instead}, and {name} is {or:now}. {why}")},
      {"design.wants-named",
       QT_TRANSLATE_NOOP("words", "\"{technique}\" is for {or:instead}, and the job names none for {name}. {why}")},
      {"design.wants-without", QT_TRANSLATE_NOOP("words", "\"{technique}\" does not go with \"{other}\". {why}")},
      {"design.measure.lap", QT_TRANSLATE_NOOP("words", "the least that the mount covers of the sheet's edges")},
      {"design.measure.cornerLap",
       QT_TRANSLATE_NOOP("words", "what the mount covers at a corner of the sheet, both ways added up,")},
      {"design.measure.air", QT_TRANSLATE_NOOP("words", "the air between the artwork and the glazing")},
      {"design.measure.artwork", QT_TRANSLATE_NOOP("words", "the thickness of the artwork")},
      {"design.measure.support", QT_TRANSLATE_NOOP("words", "the support")},
      {"design.measure.glazing", QT_TRANSLATE_NOOP("words", "the glazing")},
      {"design.measure.backMount", QT_TRANSLATE_NOOP("words", "the back mount")},
      {"design.measure.backing", QT_TRANSLATE_NOOP("words", "the backing")},
      {"design.measure.play", QT_TRANSLATE_NOOP("words", "the play in the rebate, for each 600 mm,")},
      {"design.measure.temperature", QT_TRANSLATE_NOOP("words", "the room")},
      {"design.measure.humidity", QT_TRANSLATE_NOOP("words", "the room's humidity")},
  };
  return kEntries;
}

}  // namespace app::words
