#include <QtGlobal>

#include "app/words/catalogue.h"

namespace app::words {

const std::vector<Entry>& designEntries() {
  static const std::vector<Entry> kEntries = {
      {"day.unreadable",
       QT_TRANSLATE_NOOP("words", "\"{written}\" does not read as a day. Write 11 December, 11.12. or 2026-12-11.")},
      {"day.none", QT_TRANSLATE_NOOP("words", "there is no day {written}")},
      {"day.weekday", QT_TRANSLATE_NOOP("words", "{day} is no {weekday}")},
      {"day.either", QT_TRANSLATE_NOOP("words", "that could be {one} or {other}: write the month as a word")},
      {"stock.name-missing", QT_TRANSLATE_NOOP("words", "It needs a name.")},
      {"batch.no-such-day", QT_TRANSLATE_NOOP("words", "\"{text}\" is no day: write year-month-day, as 2026-11-27.")},
      {"json.patch", QT_TRANSLATE_NOOP("words", "This change does not fit the design as it is now.")},
      {"sized.width", QT_TRANSLATE_NOOP("words", "width {now} instead of {was}")},
      {"sized.height", QT_TRANSLATE_NOOP("words", "height {now} instead of {was}")},
      {"sized.border-sides", QT_TRANSLATE_NOOP("words", "sides {now} instead of {was}")},
      {"sized.border-left", QT_TRANSLATE_NOOP("words", "left {now} instead of {was}")},
      {"sized.border-right", QT_TRANSLATE_NOOP("words", "right {now} instead of {was}")},
      {"sized.border-top", QT_TRANSLATE_NOOP("words", "top {now} instead of {was}")},
      {"sized.border-bottom", QT_TRANSLATE_NOOP("words", "bottom {now} instead of {was}")},
      {"sized.by-outer", QT_TRANSLATE_NOOP("words", "The borders then follow from the size.")},
      {"sized.within-play",
       QT_TRANSLATE_NOOP("words", "The opening is no larger than the play in it: nothing is left for the mount.")},
      {"design.no-such-design", QT_TRANSLATE_NOOP("words", "This design is not at this desk any more.")},
      {"design.spoilt", QT_TRANSLATE_NOOP("words",
                                          "Part of this design's record cannot be read. It can be looked at and begun "
                                          "again from, but not changed.")},
      {"design.nothing-to-undo", QT_TRANSLATE_NOOP("words", "There is no change to undo.")},
      {"design.nothing-to-redo", QT_TRANSLATE_NOOP("words", "No change was undone since the last one.")},
  };
  return kEntries;
}

}  // namespace app::words
