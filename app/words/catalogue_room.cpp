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
  };
  return kEntries;
}

}  // namespace app::words
