#include "core/sheets/chain.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <set>

#include "core/base/text.h"
#include "core/sheets/places.h"
#include "core/sheets/section_places.h"

namespace core::sheets {
namespace {

using detail::Rectangle;
using geometry::movedOut;

// Under this two edges are one.
constexpr double kOneEdge = 1e-6;

// The measures of a ring between two neighbouring rectangles, or of the innermost rectangle itself, that are in hand.
enum Part { Left = 1, Right = 2, Top = 4, Bottom = 8, Across = Left | Right, Down = Top | Bottom, Both = 15 };

// Rectangles from the outermost inwards, without the mount itself. Ring 0 lies between mount and the first; the number
// of rectangles names the innermost itself.
struct Nested {
  std::vector<Rectangle> rectangles;
  std::size_t ring = 0;
  int inHand = 0;
  double springing = 0;  // parts the innermost's height; 0: not
  bool rise = false;     // what is above it is in hand
  bool whole = false;    // the mount's own width and height are in hand instead
};

std::string shownOf(const design::Design& design, double length) {
  const std::string text = units::lengthText(length, design.job.units, units::Rounding::Nearest);
  const auto space = text.rfind(' ');
  return space == std::string::npos ? text : text.substr(0, space);
}

// A place in a job file as its steps: {"bands", "1", "width"}.
struct Place {
  std::vector<std::string> steps;

  explicit Place(const std::string& pointer) {
    for (const std::string& step : base::split(pointer, '/')) {
      if (!step.empty()) steps.push_back(step);
    }
  }
  std::string at(std::size_t index) const { return index < steps.size() ? steps[index] : std::string(); }
  std::string last() const { return steps.empty() ? std::string() : steps.back(); }
  // Returns which entry of a list of so many it is in; so many where it is in none.
  std::size_t entry(std::size_t index, std::size_t count) const {
    const std::string text = at(index);
    std::size_t number = count;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    return !text.empty() && error == std::errc() && end == text.data() + text.size() ? std::min(number, count) : count;
  }
};

Nested ofOpening(const design::Layout& layout) {
  Nested nested;
  nested.rectangles = {detail::sightOf(layout.boards.back())};
  if (layout.shaped) nested.springing = layout.boards.back().springing;
  return nested;
}

Nested ofBorders(const design::Layout& layout, const Place& place) {
  Nested nested;
  nested.rectangles = {detail::sightOf(layout.boards.front())};
  const std::string last = place.last();
  nested.whole = place.at(2) == "outer";
  nested.inHand = last == "left"        ? Left
                  : last == "right"     ? Right
                  : last == "top"       ? Top
                  : last == "bottom"    ? Bottom
                  : last == "weighting" ? Down
                  : last == "sides"     ? Across
                                        : 0;
  return nested;
}

Nested ofArtwork(const design::Design& design, const Place& place) {
  const Rectangle opening = detail::sightOf(design.layout.boards.back());
  const double aside = (design.job.artwork.width.inMillimetres() - (opening.right - opening.left)) / 2;
  const double above = (design.job.artwork.height.inMillimetres() - (opening.bottom - opening.top)) / 2;
  Nested nested;
  const std::string last = place.last();
  if (place.at(1) == "sheet") {
    nested.rectangles = {detail::sheetOf(design.layout)};
  } else {
    nested.rectangles = {{opening.left - aside, opening.top - above, opening.right + aside, opening.bottom + above}};
  }
  nested.ring = 1;
  nested.inHand = last == "width" ? Across : last == "height" ? Down : 0;
  return nested;
}

// What of the artwork's edge is covered, or the air round it.
Nested ofCover(const design::Design& design) {
  Nested nested = ofArtwork(design, Place(""));
  const Rectangle art = nested.rectangles.front();
  const Rectangle sight = detail::sightOf(design.layout.boards.back());
  nested.rectangles = design.job.window.floats ? std::vector{sight, art} : std::vector{art, sight};
  nested.ring = 1;
  nested.inHand = Both;
  return nested;
}

Nested ofBoard(const design::Layout& layout, const Place& place, std::size_t index) {
  Nested nested;
  const auto& board = layout.boards[index];
  const bool bevel = place.at(3) == "bevel" || index == 0;
  nested.rectangles = bevel ? std::vector{detail::faceOf(board), detail::sightOf(board)}
                            : std::vector{detail::sightOf(layout.boards[index - 1]), detail::sightOf(board)};
  nested.ring = 1;
  nested.inHand = place.at(3) == "reveal" || place.last() == "angle" ? Both : 0;
  return nested;
}

Nested ofBand(const design::Layout& layout, const Place& place, std::size_t index) {
  const Rectangle face = detail::topFace(layout);
  const auto& band = layout.bands[index];
  const Rectangle inner = detail::around(face, band.inner);
  Nested nested;
  nested.ring = 1;
  if (place.at(2) == "offset") {
    nested.rectangles = {inner, index == 0 ? face : detail::around(face, layout.bands[index - 1].outer)};
    nested.inHand = place.last() == "sides" ? Across : place.last() == "topBottom" ? Down : Both;
  } else {
    nested.rectangles = {detail::around(face, band.outer), inner};
    nested.inHand = place.last() == "width" ? Both : 0;
  }
  return nested;
}

// The strip between two outlines, and the ground between it and the edge it follows.
Nested ofRing(const Rectangle& outer, const Rectangle& inner, const Rectangle& followed, const Place& place) {
  Nested nested;
  nested.ring = 1;
  if (place.last() != "gap") {
    nested.rectangles = {outer, inner};
  } else if (outer.left < followed.left) {
    nested.rectangles = {inner, followed};
  } else {
    nested.rectangles = {followed, outer};
  }
  nested.inHand = place.last() == "width" || place.last() == "gap" ? Both : 0;
  return nested;
}

Nested nestedAt(const design::Design& design, const std::string& hand) {
  const design::Layout& layout = design.layout;
  const Place place(hand);
  const std::string part = place.at(0);
  if (part == "artwork") return ofArtwork(design, place);
  if (part == "mount" && place.at(1) == "borders") return ofBorders(layout, place);
  if (part == "mount" && place.at(1) == "boards") {
    if (const auto index = place.entry(2, layout.boards.size()); index < layout.boards.size())
      return ofBoard(layout, place, index);
  }
  if (part == "mount" && place.at(1) == "rebate" && place.last() == "cover") {
    Nested nested;
    nested.rectangles = {movedOut(detail::mount(layout), -design.job.rebate.cover.inMillimetres())};
    nested.inHand = Both;
    return nested;
  }
  if (part == "mount" && (place.last() == "overlap" || place.last() == "margin")) return ofCover(design);
  if (part == "bands") {
    if (const auto index = place.entry(1, layout.bands.size()); index < layout.bands.size())
      return ofBand(layout, place, index);
  }
  if (part == "lines") {
    if (const auto index = place.entry(1, layout.lines.size()); index < layout.lines.size()) {
      const auto& line = layout.lines[index];
      return ofRing(line.outer.bounds(), line.inner.bounds(), detail::followedBy(layout, design.job.lines[index]),
                    place);
    }
  }
  if (part == "washes") {
    if (const auto index = place.entry(1, layout.washes.size()); index < layout.washes.size()) {
      const auto& wash = layout.washes[index];
      // A wash follows an edge just as a line does.
      design::Line as;
      as.along = design.job.washes[index].along;
      as.band = design.job.washes[index].band;
      const bool between = design.job.washes[index].between;
      return ofRing(wash.outer.bounds(), wash.inner.bounds(),
                    between ? wash.inner.bounds() : detail::followedBy(layout, as), place);
    }
  }
  if (part == "spandrels") {
    if (const auto index = place.entry(1, layout.spandrels.size()); index < layout.spandrels.size()) {
      Nested nested;
      nested.rectangles = {layout.spandrels[index].frame, detail::topFace(layout)};
      nested.ring = 1;
      nested.inHand = place.last() == "offset" ? Both : 0;
      return nested;
    }
  }
  Nested nested = ofOpening(layout);
  nested.rise = place.last() == "rise";
  return nested;
}

struct Stop {
  double along = 0;
  double across = 0;
  bool handBefore = false;  // the measure that ends here is in hand
};

Chain chained(const design::Design& design, ChainEdge edge, std::vector<Stop> stops) {
  Chain chain;
  chain.edge = edge;
  for (const Stop& stop : stops) {
    if (!chain.stops.empty()) {
      const double length = stop.along - chain.stops.back().along;
      // What has no extent is no measure, and what would run backwards is not of this edge.
      if (length < kOneEdge) continue;
      chain.measures.push_back({shownOf(design, length), stop.handBefore});
    }
    chain.stops.push_back({stop.along, stop.across});
  }
  return chain;
}

// Along one of the two lower edges: from the mount's edge inwards, across the innermost, and out again.
Chain nestedChain(const design::Design& design, const Nested& nested, ChainEdge edge) {
  const bool flat = edge == ChainEdge::Bottom;
  const double whole = flat ? design.layout.outerWidth : design.layout.outerHeight;
  const double far = flat ? design.layout.outerHeight : design.layout.outerWidth;
  const auto near = [&](const Rectangle& r) { return flat ? r.left : r.top; };
  const auto away = [&](const Rectangle& r) { return flat ? r.right : r.bottom; };
  const auto reach = [&](const Rectangle& r) { return flat ? r.bottom : r.right; };
  const auto held = [&](std::size_t ring, int part) { return nested.ring == ring && (nested.inHand & part) != 0; };
  const int first = flat ? Left : Top;
  const int second = flat ? Right : Bottom;
  const std::size_t count = nested.rectangles.size();
  std::vector<Stop> stops = {{0, far, false}};
  for (std::size_t i = 0; i < count; ++i) {
    stops.push_back({near(nested.rectangles[i]), reach(nested.rectangles[i]), held(i, first)});
  }
  const Rectangle& innermost = nested.rectangles.back();
  if (!flat && nested.springing > innermost.top + kOneEdge && nested.springing < innermost.bottom - kOneEdge) {
    stops.push_back({nested.springing, innermost.right, nested.rise});
  }
  for (std::size_t i = count; i-- > 0;) {
    const Rectangle& one = nested.rectangles[i];
    stops.push_back({away(one), reach(one), i + 1 == count ? held(count, first | second) : held(i + 1, second)});
  }
  stops.push_back({whole, far, held(0, second)});
  return chained(design, edge, std::move(stops));
}

// The same from the other side, where left and right change places.
void turnAcross(Chain& chain, double width) {
  if (chain.edge == ChainEdge::Left || chain.edge == ChainEdge::Right) {
    // What lay at the right now lies at the left: reach it from the edge at which the chain stays.
    for (ChainStop& stop : chain.stops) stop.across = width - stop.across;
    return;
  }
  for (ChainStop& stop : chain.stops) stop.along = width - stop.along;
  std::reverse(chain.stops.begin(), chain.stops.end());
  std::reverse(chain.measures.begin(), chain.measures.end());
}

}  // namespace

std::vector<Chain> chainsOf(const design::Design& design, Side side, const std::string& hand) {
  const design::Layout& layout = design.layout;
  const Place place(hand);
  Nested nested = nestedAt(design, hand);
  if (side == Side::Back) {
    const std::size_t board = place.at(1) == "boards" ? place.entry(2, layout.boards.size()) : 0;
    nested = ofOpening(layout);
    const auto& seen = layout.boards[board < layout.boards.size() ? board : 0];
    nested.rectangles = {detail::sightOf(seen)};
    if (layout.shaped) nested.springing = seen.springing;
    if (place.at(1) == "borders") nested.inHand = ofBorders(layout, place).inHand;
  }
  const bool wide = nested.whole && place.last() == "width";
  const bool high = nested.whole && place.last() == "height";
  std::vector<Chain> chains = {
      chained(design, ChainEdge::Top, {{0, 0, false}, {layout.outerWidth, 0, wide}}),
      chained(design, ChainEdge::Left, {{0, 0, false}, {layout.outerHeight, 0, high}}),
      nestedChain(design, nested, ChainEdge::Bottom),
      nestedChain(design, nested, ChainEdge::Right),
  };
  if (side == Side::Back) {
    turnAcross(chains[2], layout.outerWidth);
    turnAcross(chains[3], layout.outerWidth);
  }
  return chains;
}

std::vector<Chain> sectionChainsOf(const design::Design& design, const std::string& hand) {
  const Place place(hand);
  const auto& boards = design.layout.boards;
  const auto held = place.at(1) == "boards" ? place.entry(2, boards.size()) : boards.size();
  const auto isHeld = [&](std::size_t board, const char* key) { return held == board && place.last() == key; };
  const detail::SectionPlaces places = detail::sectionPlaces(design);
  std::vector<Stop> edges;
  std::vector<Stop> sights;
  std::vector<Stop> levels = {{places.levels.front(), 0, false}};
  for (std::size_t i = 0; i < boards.size(); ++i) {
    const double face = boards[i].faceAt.left - places.from;
    const double sight = boards[i].sightAt.left - places.from;
    edges.push_back({face, places.levels[i], false});
    edges.push_back({sight, places.levels[i + 1], isHeld(i, "angle")});
    sights.push_back({sight, places.levels[i + 1], isHeld(i, "reveal")});
    levels.push_back({places.levels[i + 1], 0, isHeld(i, "thickness")});
  }
  std::vector<Chain> chains = {chained(design, ChainEdge::Top, std::move(edges)),
                               chained(design, ChainEdge::Left, std::move(levels))};
  if (boards.size() > 1) chains.push_back(chained(design, ChainEdge::Bottom, std::move(sights)));
  return chains;
}

}  // namespace core::sheets
