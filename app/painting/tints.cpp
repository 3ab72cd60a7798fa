#include "app/painting/tints.h"

#include <QStringList>
#include <algorithm>
#include <array>

#include "app/convert/text.h"

namespace app::painting {

namespace {

struct Named {
  const char* name;
  const char* colour;
  bool metal = false;
};

constexpr std::array kOfTheBench = {
    Named{"copper", "#B4703C", true}, Named{"bronze", "#8F7040", true}, Named{"gold", "#C9A23A", true},
    Named{"silver", "#A9AEB2", true}, Named{"brass", "#B9994A", true},  Named{"pewter", "#8B9094", true},
    Named{"indigo", "#3E4B85"},       Named{"reed green", "#7C8C5B"},   Named{"sea green", "#5F8F86"},
    Named{"sand", "#D8C49A"},         Named{"umber", "#6B4F3A"},        Named{"slate", "#5C6B78"},
    Named{"ochre", "#C99A45"},        Named{"sienna", "#A45A32"},       Named{"vermilion", "#C0432C"},
    Named{"sepia", "#5E4634"},        Named{"cream", "#F2E6C6"},        Named{"madder", "#9E3B3B"},
    Named{"lamp black", "#26282B"},   Named{"terracotta", "#B5654A"},   Named{"verdigris", "#4F9384"},
    Named{"stone", "#B9B2A2"}};

// What a maker puts before a colour, and how much of white or black that mixes into it.
struct Shade {
  const char* word;
  const char* with;
  float share;
};
constexpr std::array kShades = {Shade{"pale ", "#FFFFFF", 0.45F}, Shade{"light ", "#FFFFFF", 0.3F},
                                Shade{"deep ", "#000000", 0.25F}, Shade{"dark ", "#000000", 0.3F}};

QString plain(const std::string& name) {
  return convert::toQt(name).toLower().replace(QLatin1Char('-'), ' ').simplified();
}

QColor named(const QString& name) {
  const auto* found = std::find_if(kOfTheBench.begin(), kOfTheBench.end(),
                                   [&](const Named& one) { return name == QLatin1String(one.name); });
  if (found != kOfTheBench.end()) return QColor(QLatin1String(found->colour));
  QString web = name;
  web.remove(QLatin1Char(' '));
  if (QColor::isValidColorName(web)) return QColor(web);
  for (const Shade& shade : kShades) {
    if (!name.startsWith(QLatin1String(shade.word))) continue;
    const QColor of = named(name.mid(QLatin1String(shade.word).size()));
    const QColor with(QLatin1String(shade.with));
    const auto mixed = [&](float a, float b) { return a + (b - a) * shade.share; };
    if (of.isValid())
      return QColor::fromRgbF(mixed(of.redF(), with.redF()), mixed(of.greenF(), with.greenF()),
                              mixed(of.blueF(), with.blueF()));
  }
  return {};
}

}  // namespace

QColor colourIn(const std::string& words) {
  const QStringList list = plain(words).split(QLatin1Char(' '), Qt::SkipEmptyParts);
  constexpr qsizetype kMostWords = 3;
  for (qsizetype first = 0; first < list.size(); ++first) {
    for (qsizetype count = std::min(kMostWords, list.size() - first); count > 0; --count) {
      const QColor colour = named(list.mid(first, count).join(QLatin1Char(' ')));
      if (colour.isValid()) return colour;
    }
  }
  return {};
}

bool isMetal(const std::string& name) {
  const QString text = plain(name);
  return std::any_of(kOfTheBench.begin(), kOfTheBench.end(), [&](const Named& one) {
    return one.metal && text.split(QLatin1Char(' ')).contains(QLatin1String(one.name));
  });
}

}  // namespace app::painting
