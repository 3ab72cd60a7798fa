#include <QtGlobal>

#include "app/words/catalogue.h"

namespace app::words {

const std::vector<Entry>& matchEntries() {
  static const std::vector<Entry> kEntries = {
      {"match.sides", QT_TRANSLATE_NOOP("words", "band {band}: ground at the sides {now} instead of {was}")},
      {"match.top-bottom", QT_TRANSLATE_NOOP("words", "band {band}: ground at top and bottom {now} instead of {was}")},
      {"match.width", QT_TRANSLATE_NOOP("words", "band {band}: {now} wide instead of {was}")},
      {"match.border-sides-wider", QT_TRANSLATE_NOOP("words", "left and right borders each {by} wider")},
      {"match.border-sides-narrower", QT_TRANSLATE_NOOP("words", "left and right borders each {by} narrower")},
      {"match.border-top-bottom-wider", QT_TRANSLATE_NOOP("words", "top and bottom borders each {by} wider")},
      {"match.border-top-bottom-narrower", QT_TRANSLATE_NOOP("words", "top and bottom borders each {by} narrower")},
      {"match.level-on-motif",
       QT_TRANSLATE_NOOP("words", "band {band}: centre the strips at top and bottom on a motif")},
      {"match.level-on-ground",
       QT_TRANSLATE_NOOP("words", "band {band}: centre the strips at top and bottom on ground")},
      {"match.upright-on-motif", QT_TRANSLATE_NOOP("words", "band {band}: centre the strips at the sides on a motif")},
      {"match.upright-on-ground", QT_TRANSLATE_NOOP("words", "band {band}: centre the strips at the sides on ground")},

      {"match.why-centring", QT_TRANSLATE_NOOP("words", "No measure changes.")},
      {"match.why-one-ground", QT_TRANSLATE_NOOP("words", "One ground changes; the other stays as entered.")},
      {"match.why-both-grounds", QT_TRANSLATE_NOOP("words", "Both grounds change, each by half.")},
      {"match.why-shared",
       QT_TRANSLATE_NOOP("words", "One ground changes as far as there is room; another takes the rest.")},
      {"match.why-room", QT_TRANSLATE_NOOP("words", "The ground needs more room than there is; this makes it.")},
      {"match.why-ground-kept",
       QT_TRANSLATE_NOOP("words", "The borders follow, so the ground outside the bands stays as it was.")},
      {"match.why-others-kept", QT_TRANSLATE_NOOP("words", "Bands whose corners meet still do.")},
      {"match.why-all-close", QT_TRANSLATE_NOOP("words", "The corners of every band meet.")},

      {"match.opens-band", QT_TRANSLATE_NOOP("words", "The corners of band {band} then miss by {by}.")},
      {"match.opens-further",
       QT_TRANSLATE_NOOP("words", "The corners of band {band} then miss by {by} instead of {was}.")},
      {"match.uneven-inside",
       QT_TRANSLATE_NOOP("words",
                         "Inside the band the ground at the sides and at top and bottom then differs by {by}.")},
      {"match.uneven-outside",
       QT_TRANSLATE_NOOP("words", "Outside the band the ground at the left and at the top then differs by {by}.")},
      {"match.moves-too", QT_TRANSLATE_NOOP("words", "These move or change too: {ids}.")},

      {"match.cover-corners",
       QT_TRANSLATE_NOOP("words", "Or cover each corner with a square motif of {side}; no measure changes.")},
      {"match.start-at-corners",
       QT_TRANSLATE_NOOP("words",
                         "Or start the pattern at the corners: the break falls in the middle of each side, {level} at "
                         "top and bottom, {upright} at the sides.")},
      {"match.cannot-mirror",
       QT_TRANSLATE_NOOP("words", "A directional paper cannot mirror. Run the strips on round the mount one way.")},
      {"match.round-closes-outer",
       QT_TRANSLATE_NOOP("words", "Matched along the outer edge the last corner closes to {rest}.")},
      {"match.round-closes-mean",
       QT_TRANSLATE_NOOP("words", "Matched along the middle of the band the last corner closes to {rest}.")},
      {"match.round-closes-inner",
       QT_TRANSLATE_NOOP("words", "Matched along the inner edge the last corner closes to {rest}.")},
      {"match.round-open-outer",
       QT_TRANSLATE_NOOP("words", "The last corner misses least, by {rest}, when matched along the outer edge.")},
      {"match.round-open-mean",
       QT_TRANSLATE_NOOP("words",
                         "The last corner misses least, by {rest}, when matched along the middle of the band.")},
      {"match.round-open-inner",
       QT_TRANSLATE_NOOP("words", "The last corner misses least, by {rest}, when matched along the inner edge.")},
      {"match.not-all-tried",
       QT_TRANSLATE_NOOP(
           "words", "There is so much on this piece that not every change was tried; others may close the corners.")},
      {"match.seam-at-bottom",
       QT_TRANSLATE_NOOP("words", "Begin and end at the lower right corner: the eye enters from the top.")},
  };
  return kEntries;
}

}  // namespace app::words
