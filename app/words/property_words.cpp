// What a maker calls what a job file chooses among.
#include "app/words/catalogue.h"
#include "app/words/words.h"

namespace app::words {
namespace {

struct PropertyWord {
  const char* property;
  const char* value;
  const char* words;
};

const PropertyWord kPropertyWords[] = {
    {"size", "methylCellulose", QT_TRANSLATE_NOOP("words", "methyl cellulose")},
    {"size", "starch", QT_TRANSLATE_NOOP("words", "starch")},
    {"size", "water", QT_TRANSLATE_NOOP("words", "water size")},
    {"size", "oil", QT_TRANSLATE_NOOP("words", "oil size")},
    {"metal", "gold", QT_TRANSLATE_NOOP("words", "gold of 22 carats or more")},
    {"metal", "palladium", QT_TRANSLATE_NOOP("words", "palladium")},
    {"metal", "aluminium", QT_TRANSLATE_NOOP("words", "aluminium")},
    {"metal", "silver", QT_TRANSLATE_NOOP("words", "silver")},
    {"metal", "copper", QT_TRANSLATE_NOOP("words", "copper")},
    {"metal", "brass", QT_TRANSLATE_NOOP("words", "brass, imitation gold")},
    {"metal", "unknown", QT_TRANSLATE_NOOP("words", "not known yet")},
    {"method", "laid", QT_TRANSLATE_NOOP("words", "laid")},
    {"method", "scattered", QT_TRANSLATE_NOOP("words", "scattered")},
    {"does:method", "laid", QT_TRANSLATE_NOOP("words", "lays leaf")},
    {"does:method", "scattered", QT_TRANSLATE_NOOP("words", "scatters leaf")},
    {"order", "linesFirst", QT_TRANSLATE_NOOP("words", "lines first")},
    {"order", "washFirst", QT_TRANSLATE_NOOP("words", "wash first")},
    {"motif", "mirror", QT_TRANSLATE_NOOP("words", "mirrors")},
    {"motif", "directional", QT_TRANSLATE_NOOP("words", "has a direction")},
    {"motif", "plain", QT_TRANSLATE_NOOP("words", "plain")},
    {"from", "springing", QT_TRANSLATE_NOOP("words", "the springing line")},
    {"from", "sill", QT_TRANSLATE_NOOP("words", "the sill")},
};

}  // namespace

QString property(const QString& name, const QString& value) {
  for (const PropertyWord& entry : kPropertyWords) {
    if (name == QLatin1String(entry.property) && value == QLatin1String(entry.value)) {
      return translated(entry.words);
    }
  }
  return value;
}

}  // namespace app::words
