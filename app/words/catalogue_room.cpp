#include <QtGlobal>

#include "app/words/catalogue.h"

namespace app::words {

const std::vector<Entry>& roomEntries() {
  static const std::vector<Entry> kEntries = {
      {"sensor.unreadable", QT_TRANSLATE_NOOP("words", "The climate sensor cannot be read: {path}")},
      {"sensor.not-a-number", QT_TRANSLATE_NOOP("words", "The climate sensor gives no number but \"{text}\": {path}")},
      {"sensor.out-of-range",
       QT_TRANSLATE_NOOP("words", "The climate sensor shows {value}, which no workshop has: {path}")},
      {"sensor.silent", QT_TRANSLATE_NOOP("words", "The climate sensor does not answer: {path}")},
      {"awake.may-sleep",
       QT_TRANSLATE_NOOP("words", "This tablet may fall asleep: an alert could be late. Look at it now and then.")},
      {"awake.may-sleep-alarm", QT_TRANSLATE_NOOP("words",
                                                  "This tablet may fall asleep. It is set to wake half a minute before "
                                                  "an alert; not every machine does.")},
      {"awake.battery-low",
       QT_TRANSLATE_NOOP("words",
                         "The battery is at {percent} %: put this tablet on its charger, or it misses alerts.")},
  };
  return kEntries;
}

}  // namespace app::words
