#include <QtGlobal>

#include "app/words/catalogue.h"

namespace app::words {

const std::vector<Entry>& waitEntries() {
  static const std::vector<Entry> kEntries = {
      {"why.label", QT_TRANSLATE_NOOP("words", "as the technique states")},
      {"why.room.even", QT_TRANSLATE_NOOP("words", "adjusted for this room ×{factor}")},
      {"why.room.damp", QT_TRANSLATE_NOOP("words", "damp ×{factor}")},
      {"why.room.dry", QT_TRANSLATE_NOOP("words", "dry ×{factor}")},
      {"why.room.cold", QT_TRANSLATE_NOOP("words", "cold ×{factor}")},
      {"why.room.cold-damp", QT_TRANSLATE_NOOP("words", "cold and damp ×{factor}")},
      {"why.room.cold-dry", QT_TRANSLATE_NOOP("words", "cold and dry ×{factor}")},
      {"why.room.cool", QT_TRANSLATE_NOOP("words", "cool ×{factor}")},
      {"why.room.cool-damp", QT_TRANSLATE_NOOP("words", "cool and damp ×{factor}")},
      {"why.room.cool-dry", QT_TRANSLATE_NOOP("words", "cool and dry ×{factor}")},
      {"why.room.warm", QT_TRANSLATE_NOOP("words", "warm ×{factor}")},
      {"why.room.warm-damp", QT_TRANSLATE_NOOP("words", "warm and damp ×{factor}")},
      {"why.room.warm-dry", QT_TRANSLATE_NOOP("words", "warm and dry ×{factor}")},
      {"why.room.hot", QT_TRANSLATE_NOOP("words", "hot ×{factor}")},
      {"why.room.hot-damp", QT_TRANSLATE_NOOP("words", "hot and damp ×{factor}")},
      {"why.room.hot-dry", QT_TRANSLATE_NOOP("words", "hot and dry ×{factor}")},
      {"why.last.slow", QT_TRANSLATE_NOOP("words", "your last one ran {percent} % slow")},
      {"why.last.quick", QT_TRANSLATE_NOOP("words", "your last one ran {percent} % quick")},
      {"why.last.true", QT_TRANSLATE_NOOP("words", "your last one ran true")},
      {"why.learned.slow", QT_TRANSLATE_NOOP("words", "your last {count} ran {percent} % slow")},
      {"why.learned.quick", QT_TRANSLATE_NOOP("words", "your last {count} ran {percent} % quick")},
      {"why.learned.true", QT_TRANSLATE_NOOP("words", "your last {count} ran true")},
      {"why.others.slow", QT_TRANSLATE_NOOP("words", "your other films dry {percent} % slow")},
      {"why.others.quick", QT_TRANSLATE_NOOP("words", "your other films dry {percent} % quick")},
      {"room.too-cold", QT_TRANSLATE_NOOP("words", "{celsius} °C is too cold to predict: by touch")},
      {"room.too-warm", QT_TRANSLATE_NOOP("words", "{celsius} °C is too warm to predict: by touch")},
      {"room.too-dry", QT_TRANSLATE_NOOP("words", "air of {percent} % is too dry to predict: by touch")},
      {"room.too-damp", QT_TRANSLATE_NOOP("words", "air of {percent} % is too damp to predict: by touch")},

      // Spoken: the piece and its place first, the act last, each short.
      {"say.soon", QT_TRANSLATE_NOOP("words", "{piece}. {wait}, in ten minutes. Wash. Lay out {tools}.")},
      {"say.look", QT_TRANSLATE_NOOP("words", "{piece}. {wait}. May be ready. Test.")},
      {"say.open", QT_TRANSLATE_NOOP("words", "{piece}. {wait}. Test: {answer}?")},
      {"say.over", QT_TRANSLATE_NOOP("words", "{piece}. {wait}. Test: {answer}?")},
      {"say.closing", QT_TRANSLATE_NOOP("words", "{piece}. {wait}, closing. {act}, now.")},
      {"say.missed", QT_TRANSLATE_NOOP("words", "{piece}. {wait}. Likely closed.")},
      {"say.may-be-due", QT_TRANSLATE_NOOP("words", "{piece}. {wait}. May be due. Test now.")},
      {"say.half-left", QT_TRANSLATE_NOOP("words", "{wait}. Half the time is left.")},
      {"say.two-minutes-left", QT_TRANSLATE_NOOP("words", "{wait}. Two minutes left.")},
      {"say.one-minute-left", QT_TRANSLATE_NOOP("words", "{wait}. One minute left.")},
      {"say.waiting", QT_TRANSLATE_NOOP("words", "Waiting.")},

      {"offer.snooze", QT_TRANSLATE_NOOP("words", "In {minutes} min")},
      {"record.nothing-to-put-off", QT_TRANSLATE_NOOP("words", "Nothing is due of this: \"{wait}\".")},
      {"record.not-put-off",
       QT_TRANSLATE_NOOP("words", "\"{wait}\" cannot be put off so long: the act has to begin before that.")},
      {"shop.no-such-boot", QT_TRANSLATE_NOOP("words", "This bench knows of no such time off.")},
      {"shop.no-such-offcut", QT_TRANSLATE_NOOP("words", "That offcut is no longer there.")},
      {"shop.nothing-cut",
       QT_TRANSLATE_NOOP("words", "A sheet is cut from one piece of stock into at least one piece.")},
      {"shop.offcut-out-of-range",
       QT_TRANSLATE_NOOP("words", "An offcut is longer than nothing and at most 10 m long, wide and thick.")},
      {"shop.no-such-cut", QT_TRANSLATE_NOOP("words", "There is no such cutting to undo.")},
      {"shop.offcut-used", QT_TRANSLATE_NOOP("words", "What was kept of that sheet has been used since.")},
      {"shop.off-time-out-of-range", QT_TRANSLATE_NOOP("words", "A time off is between nothing and 30 days.")},
  };
  return kEntries;
}

}  // namespace app::words
