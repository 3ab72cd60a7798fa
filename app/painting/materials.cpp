#include "app/painting/materials.h"

#include <QLinearGradient>
#include <QString>

#include "app/convert/text.h"
#include "app/painting/tints.h"

namespace app::painting {

using core::sheets::Matter;
using core::sheets::Substance;

namespace {

QColor colour(const char* hex) { return QColor(QLatin1String(hex)); }
QColor either(const QColor& one, const char* other) { return one.isValid() ? one : colour(other); }

constexpr const char* kBoard = "#F2E9D0";
constexpr const char* kCore = "#F8F5EC";
constexpr const char* kSheet = "#DADCD0";
constexpr const char* kPaper = "#B9A184";
constexpr const char* kUnknown = "#6E6A62";
constexpr double kThinWash = 0.5;

// The first word that is found in a paper's name decides.
struct Worded {
  const char* word;
  Pattern pattern;
  const char* ground;
};
constexpr std::array kPatterns = {
    Worded{"wave", Pattern::Wave, "#2B4C5E"},     Worded{"scroll", Pattern::Wave, "#2B4C5E"},
    Worded{"ripple", Pattern::Ripple, "#BCD5DA"}, Worded{"water", Pattern::Ripple, "#BCD5DA"},
    Worded{"scale", Pattern::Scale, "#E6DBB6"},   Worded{"scallop", Pattern::Scale, "#E6DBB6"},
    Worded{"reed", Pattern::Reed, "#5A7F55"},     Worded{"grass", Pattern::Reed, "#5A7F55"},
    Worded{"rope", Pattern::Rope, "#8E3B34"},     Worded{"twist", Pattern::Rope, "#8E3B34"},
    Worded{"key", Pattern::Key, "#3B3A44"},       Worded{"fret", Pattern::Key, "#3B3A44"},
    Worded{"comb", Pattern::Comb, "#7D8A74"},     Worded{"paste", Pattern::Comb, "#7D8A74"},
    Worded{"laid", Pattern::Laid, "#D9CDB0"},     Worded{"lozenge", Pattern::Lozenge, "#B9A184"}};

// What the maker gave it, or what its name tells.
QColor toldColour(const std::string& name, const QColor& own) { return own.isValid() ? own : colourIn(name); }

// A figure stands out from its ground whichever of the two is the darker.
QColor figureOn(const QColor& ground) {
  return ground.lightnessF() < 0.5F ? mixed(colour("#F1E7CF"), ground, 0.08) : mixed(ground, colour("#1F2B26"), 0.62);
}

}  // namespace

Paper paperNamed(const std::string& name, bool repeats, const QColor& own) {
  Paper paper{repeats ? Pattern::Lozenge : Pattern::Plain, colour(kPaper), {}};
  const QString words = convert::toQt(name).toLower();
  for (const Worded& each : kPatterns) {
    if (!words.contains(QLatin1String(each.word))) continue;
    paper.pattern = each.pattern;
    paper.ground = colour(each.ground);
    break;
  }
  if (const QColor told = toldColour(name, own); told.isValid()) paper.ground = told;
  paper.figure = figureOn(paper.ground);
  return paper;
}

QColor colourOf(const Matter& matter, const QColor& own) {
  switch (matter.substance) {
    case Substance::Board: return either(toldColour(matter.name, own), kBoard);
    case Substance::Core: return colour(kCore);
    case Substance::Paint:
    case Substance::Pigment: return either(toldColour(matter.name, own), kUnknown);
    case Substance::Paper: return paperNamed(matter.name, matter.run && matter.run->repeat > 0, own).ground;
    case Substance::Wash: {
      QColor wash = either(toldColour(matter.name, own), kUnknown);
      wash.setAlphaF(kThinWash);
      return wash;
    }
    case Substance::Flake:
    case Substance::LaidLeaf: return leafTones()[0];
    case Substance::Sheet: return colour(kSheet);
  }
  return {};
}

std::array<QColor, 3> leafTones() { return {colour("#D3AA45"), colour("#E6C76E"), colour("#B58A2E")}; }

QBrush pigment(const std::string& name, const QRectF& bounds, const Light& light, const QColor& own) {
  const QColor base = either(toldColour(name, own), kUnknown);
  if (!isMetal(name)) return light.on(base, Breadth::Fine);
  // Dark, plain and bright in turn, as the light slides along a metal edge.
  const QColor dark = mixed(base, Qt::black, 0.28);
  const QColor bright = mixed(base, Qt::white, 0.5);
  const std::array<QColor, 7> stops = {dark, base, bright, base, dark, bright, base};
  QLinearGradient gradient(bounds.topLeft(), bounds.bottomRight());
  for (std::size_t i = 0; i < stops.size(); ++i)
    gradient.setColorAt(static_cast<double>(i) / (stops.size() - 1), light.on(stops[i], Breadth::Fine));
  return gradient;
}

}  // namespace app::painting
