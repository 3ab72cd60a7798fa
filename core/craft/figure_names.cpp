#include "core/craft/figure_names.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/base/text.h"
#include "core/craft/pattern.h"

namespace core::craft {

namespace {

// Figures of the piece as a whole.
constexpr std::array<std::string_view, 27> kPieceFigures = {"art.width",
                                                            "art.height",
                                                            "art.sheet.width",
                                                            "art.sheet.height",
                                                            "visible.width",
                                                            "visible.height",
                                                            "outer.width",
                                                            "outer.height",
                                                            "border.seen.top",
                                                            "border.seen.bottom",
                                                            "border.seen.left",
                                                            "border.seen.right",
                                                            "border.framed.top",
                                                            "border.framed.bottom",
                                                            "border.framed.left",
                                                            "border.framed.right",
                                                            "art.left",
                                                            "art.top",
                                                            "rebate.width",
                                                            "rebate.height",
                                                            "rebate.depth",
                                                            "package.depth",
                                                            "package.spacer.width",
                                                            "package.spacer.horizontal",
                                                            "package.spacer.vertical",
                                                            "package.support.width",
                                                            "package.support.height"};

// A number in an id is written N.
constexpr std::array<std::string_view, 51> kBoardFigures = {
    "thickness", "sight.width", "sight.height", "face.width", "face.height", "sight.perimeter", "sight.area",
    "face.perimeter", "bevel.plan", "bevel.slope", "bevel.area", "bevel.angle", "bevel.overrun", "reveal",
    "reveal.flat", "border.top", "border.bottom", "border.left", "border.right", "back.left", "back.right", "mark.left",
    "mark.right", "mark.top", "mark.bottom",
    // Unequal only where openings were measured.
    "reveal.top", "reveal.bottom", "reveal.left", "reveal.right", "diagonal.marked", "diagonal.other",
    // The setting-out of a shaped window, on the back.
    "axis", "springing", "arc.N.radius", "arc.N.sweep", "arc.N.centre.left", "arc.N.centre.top",
    "arc.N.centre.fromAxis", "arc.N.centre.fromSpringing", "point.N.left", "point.N.top", "point.N.fromAxis",
    "point.N.fromSpringing", "oval.semiMajor", "oval.semiMinor", "oval.focus", "oval.string", "oval.N.left",
    "oval.N.top", "oval.N.fromAxis", "oval.N.fromSpringing"};

constexpr std::array<std::string_view, 16> kBandFigures = {"inner.width",
                                                           "inner.height",
                                                           "outer.width",
                                                           "outer.height",
                                                           "strip.horizontal",
                                                           "strip.vertical",
                                                           "strip.width",
                                                           "mitre",
                                                           "dryEnd",
                                                           "glueFrom",
                                                           "area",
                                                           "repeats.horizontal",
                                                           "repeats.vertical",
                                                           "firstMotif.horizontal",
                                                           "firstMotif.vertical",
                                                           "corner.phase"};

constexpr std::array<std::string_view, 9> kLineFigures = {
    "horizontal",     "vertical",           "total",         "offset", "width", "cornerMark",
    "fromFace.sides", "fromFace.topBottom", "fromFaceCorner"};

constexpr std::array<std::string_view, 3> kSpandrelFigures = {"width", "height", "area"};
constexpr std::array<std::string_view, 4> kWashFigures = {"width", "fromFace.sides", "fromFace.topBottom", "area"};
constexpr std::array<std::string_view, 3> kLeafFigures = {"area", "sheets", "size"};

// Returns whether the name is one of them, or with "*" as its last word the beginning of one.
template <std::size_t kCount>
bool isOneOf(const std::array<std::string_view, kCount>& names, std::string_view name) {
  if (!isFamily(name)) return std::find(names.begin(), names.end(), name) != names.end();
  const std::string_view beginning = name.substr(0, name.size() - 1);
  return std::any_of(names.begin(), names.end(), [&](std::string_view each) {
    return each.size() > beginning.size() && base::startsWith(each, beginning);
  });
}

// "arc.3.radius" as "arc.N.radius".
std::string withoutNumbers(std::string_view name) {
  std::vector<std::string> words = base::split(name, '.');
  for (std::string& word : words) {
    const bool number =
        !word.empty() && std::all_of(word.begin(), word.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (number) word = "N";
  }
  return base::join(words, ".");
}

bool isFigureOf(std::string_view family, std::string_view name) {
  if (family == "board") return isOneOf(kBoardFigures, withoutNumbers(name));
  if (family == "band") return isOneOf(kBandFigures, name);
  if (family == "line") return isOneOf(kLineFigures, name);
  if (family == "leaf") return isOneOf(kLeafFigures, name);
  if (family == "spandrel") return isOneOf(kSpandrelFigures, name);
  if (family == "wash") return isOneOf(kWashFigures, name);
  return false;
}

struct Parts {
  std::string_view family;
  std::string_view thing;
  std::string_view name;
};

std::optional<Parts> partsOf(std::string_view id) {
  const std::size_t first = id.find('.');
  if (first == std::string_view::npos) return std::nullopt;
  const std::size_t second = id.find('.', first + 1);
  if (second == std::string_view::npos) return std::nullopt;
  return Parts{id.substr(0, first), id.substr(first + 1, second - first - 1), id.substr(second + 1)};
}

// The kind whose figures the word speaks of, in a step of `kind`.
std::optional<ThingKind> spokenOf(std::string_view word, ThingKind kind, ThingKind outer) {
  if (kind == ThingKind::Once) return std::nullopt;
  if (word == "this" || word == "previous") return kind;
  const bool owned = ownerKind(kind, outer) != kind;
  if (word == "owner" && owned) return ownerKind(kind, outer);
  return std::nullopt;
}

}  // namespace

bool isFamily(std::string_view pattern) { return pattern == "*" || base::endsWith(pattern, ".*"); }

bool isFigurePattern(std::string_view pattern, ThingKind kind, ThingKind outer) {
  if (isOneOf(kPieceFigures, pattern)) return true;
  const auto parts = partsOf(pattern);
  if (!parts) return false;
  const auto spoken = spokenOf(parts->thing, kind, outer);
  if (!spoken) return false;
  if (name(*spoken == ThingKind::Bevel ? ThingKind::Board : *spoken) != parts->family) return false;
  std::string figure(parts->name);
  // A strip knows which way it lies; nothing else does.
  if (kind == ThingKind::Strip && base::endsWith(figure, ".axis"))
    figure = base::replaceAll(figure, ".axis", ".vertical");
  return isFigureOf(parts->family, figure);
}

bool isFigureId(std::string_view id) {
  if (isOneOf(kPieceFigures, id)) return true;
  const auto parts = partsOf(id);
  return parts && !parts->thing.empty() && isFigureOf(parts->family, parts->name);
}

}  // namespace core::craft
