#include <QtGlobal>

#include "app/words/catalogue.h"

namespace app::words {

const std::vector<Entry>& madeEntries() {
  static const std::vector<Entry> kEntries = {
      {"made.no-size", QT_TRANSLATE_NOOP("words", "A measure must be more than nothing and at most 10 m.")},
      {"made.too-far",
       QT_TRANSLATE_NOOP("words",
                         "{value} is {by} away from the computed {computed}. Measure again; if it is so, report what "
                         "went wrong and make the piece anew.")},
      {"made.sight-against-face",
       QT_TRANSLATE_NOOP("words",
                         "Opening on the back {sight} and the two bevels {bevels} do not make the {face} measured on "
                         "the face: {by} apart. Which is right?")},
      {"made.borders-against-outer",
       QT_TRANSLATE_NOOP(
           "words",
           "The two borders and the opening of the {board} board come to {sum}, the board to {outer}: {by} "
           "apart. One of them was misread.")},
      {"made.diagonals-against-opening",
       QT_TRANSLATE_NOOP(
           "words",
           "Diagonals of {diagonal} do not belong to an opening whose own would be {opening}: {by} apart. "
           "One of them was misread.")},
      {"made.out-of-square",
       QT_TRANSLATE_NOOP("words", "The opening of the {board} board is out of square: its diagonals differ by {by}.")},
      {"made.no-such-outline",
       QT_TRANSLATE_NOOP("words", "A window of this form cannot have that size once moved out by {by}.")},
      {"made.work-not-covered",
       QT_TRANSLATE_NOOP(
           "words", "The opening is so large that the edge of the sheet would show by {by}. A new board is needed.")},
      {"made.shows-beyond",
       QT_TRANSLATE_NOOP("words", "The opening shows {by} of the sheet beyond what was to be shown.")},
      {"made.strip-too-short",
       QT_TRANSLATE_NOOP("words",
                         "A strip of {strip} does not reach the outer corners of band {band}, which are {outer} apart: "
                         "{by} short.")},
      {"record.not-measured-here", QT_TRANSLATE_NOOP("words", "\"{step}\" does not measure {figure}.")},
      {"record.not-yet-measured", QT_TRANSLATE_NOOP("words", "\"{step}\" has not come to its turn yet.")},
      {"record.not-measured", QT_TRANSLATE_NOOP("words", "{figure} was not measured.")},
      {"record.no-such-board", QT_TRANSLATE_NOOP("words", "There is no inner board called {board}.")},
      {"record.window-already-cut",
       QT_TRANSLATE_NOOP("words", "The window of the {board} board is already cut; it stays as it is.")},
      {"offer.keep-cover", QT_TRANSLATE_NOOP("words", "Keep the cover")},
      {"offer.keep-reveal", QT_TRANSLATE_NOOP("words", "Keep the reveal")},
      {"tolerance.rule", QT_TRANSLATE_NOOP("words", "rule: ± {within}")},
      {"tolerance.micrometer", QT_TRANSLATE_NOOP("words", "micrometer: ± 0.05 mm")},
      {"tolerance.shows", QT_TRANSLATE_NOOP("words", "seen from {within} on")},
      {"entry.half-a-fraction", QT_TRANSLATE_NOOP("words", "The fraction is not complete.")},
  };
  return kEntries;
}

}  // namespace app::words
