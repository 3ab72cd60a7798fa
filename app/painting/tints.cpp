#include "app/painting/tints.h"

#include <algorithm>

#include "app/convert/text.h"

namespace app::painting {

using core::sheets::Role;

namespace {

constexpr const char* kBoard = "#F6F1E4";
constexpr const char* kBareBevel = "#FFFFFF";
constexpr const char* kWork = "#C9CDBF";
constexpr const char* kPaper = "#B9A184";
constexpr const char* kOtherPaper = "#A8AFA0";
constexpr const char* kLeaf = "#D8B24A";
constexpr double kThinWash = 0.45;

QColor thinned(const QColor& colour, double share) {
  const QColor board(QString::fromLatin1(kBoard));
  const auto channel = [share](float a, float b) { return static_cast<float>(a + (b - a) * share); };
  return QColor::fromRgbF(channel(board.redF(), colour.redF()), channel(board.greenF(), colour.greenF()),
                          channel(board.blueF(), colour.blueF()));
}

}  // namespace

QColor colourNamed(const std::string& name) {
  static const std::map<std::string, const char*> kOfTheBench = {
      {"copper", "#B4703C"},    {"bronze", "#8F7040"}, {"gold", "#C9A23A"},
      {"silver", "#A9AEB2"},    {"indigo", "#3E4B85"}, {"reed green", "#7C8C5B"},
      {"sea green", "#5F8F86"}, {"sand", "#D8C49A"},   {"umber", "#6B4F3A"}};
  const auto found = kOfTheBench.find(name);
  if (found != kOfTheBench.end()) return QColor(QString::fromLatin1(found->second));
  QString plain = convert::toQt(name);
  plain.remove(QLatin1Char(' '));
  return QColor::isValidColorName(plain) ? QColor(plain) : QColor();
}

Tints tintsOf(const core::design::Design& design) {
  const auto& job = design.job;
  Tints tints;
  const auto put = [&](const std::string& element, Role role, const QColor& colour) {
    if (colour.isValid()) tints[{element, role}] = colour;
  };
  put("art", Role::Artwork, QColor(QString::fromLatin1(kWork)));
  for (const auto& board : job.boards) {
    put(board.id, Role::BoardFace, QColor(QString::fromLatin1(kBoard)));
    const QColor bevel = board.bevelColour ? colourNamed(*board.bevelColour) : QColor();
    put(board.id, Role::Bevel, bevel.isValid() ? bevel : QColor(QString::fromLatin1(kBareBevel)));
  }
  for (const auto& band : job.bands) {
    for (const char* side : {".top", ".right", ".bottom", ".left"})
      put(band.id + side, Role::Band, QColor(QString::fromLatin1(kPaper)));
  }
  for (const auto& spandrel : job.spandrels) put(spandrel.id, Role::Spandrel, QColor(QString::fromLatin1(kOtherPaper)));
  for (const auto& line : job.lines) put(line.id, Role::Line, colourNamed(line.colour));
  for (const auto& wash : job.washes) {
    const QColor colour = colourNamed(wash.colour);
    if (colour.isValid()) put(wash.id, Role::Wash, thinned(colour, kThinWash));
  }
  for (const auto& leaf : job.leaf) {
    const double share = leaf.coverage;
    put(leaf.id, Role::Leaf, thinned(QColor(QString::fromLatin1(kLeaf)), std::clamp(share, 0.1, 1.0)));
  }
  return tints;
}

}  // namespace app::painting
