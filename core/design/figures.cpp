#include "core/design/figures.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <utility>
#include <variant>

#include "core/base/text.h"
#include "core/design/package_parts.h"
#include "core/design/setting_out.h"
#include "core/units/length_entry.h"

namespace core::design {
namespace {

using units::Rounding;
using units::UnitSystem;

// How a length is rounded for display, by its kind; what is not here goes to the nearest step. An opening must not seem
// larger than it is, nor a mount that goes into a rebate; what must be there at the least must not seem less.
constexpr std::pair<std::string_view, Rounding> kRoundings[] = {
    {"visible.width", Rounding::Down},
    {"visible.height", Rounding::Down},
    {"outer.width", Rounding::Down},
    {"outer.height", Rounding::Down},
    {"board.sight.width", Rounding::Down},
    {"board.sight.height", Rounding::Down},
    {"band.dryEnd", Rounding::Up},
    {"band.glueFrom", Rounding::Up},
    {"rebate.depth", Rounding::Up},
    {"board.bevel.slope", Rounding::Up},
    {"package.spacer.width", Rounding::Down},
    {"package.spacer.horizontal", Rounding::Down},
    {"package.spacer.vertical", Rounding::Down},
    {"package.support.width", Rounding::Down},
    {"package.support.height", Rounding::Down},
};

// Collects figures in order, with their display.
class Collector {
 public:
  Collector(std::vector<Figure>& figures, UnitSystem system) : m_figures(figures), m_system(system) {}

  // The next figures belong to this element: ids "<group>.<element>.<name>".
  void element(std::string group, std::string id) {
    m_group = std::move(group);
    m_element = std::move(id);
    part("", 0);
  }

  Figure& length(const std::string& name, double value) {
    Figure& figure = add(name, value, FigureUnit::Millimetre);
    const Rounding rounding = roundingOf(figure.kind);
    figure.shown = units::showLength(value, m_system, rounding);
    figure.display = units::lengthText(value, m_system, rounding);
    return figure;
  }

  // A length that the maker entered, as far as the layout has left it as it was entered.
  Figure& entered(const std::string& name, double value, const std::optional<Length>& entry) {
    Figure& figure = length(name, value);
    if (!isStill(value, entry)) return figure;
    figure.entered = true;
    figure.shown = units::showEntered(*entry, m_system, roundingOf(figure.kind));
    figure.display = units::textOf(figure.shown);
    return figure;
  }
  Figure& entered(const std::string& name, double value) { return entered(name, value, units::nearestLength(value)); }
  void check(const std::string& name, double value) { length(name, value).check = true; }

  // A far mark as it is shown: the near mark as shown plus the opening as shown, so that what is pencilled agrees
  // with the opening that is read out. `entry`: of the near mark, where it was entered.
  void farMark(const std::string& name, double near, double opening, const std::optional<Length>& entry) {
    Figure& figure = length(name, near + opening);
    const double nearShown = isStill(near, entry) ? units::shownEntered(*entry, m_system, Rounding::Nearest)
                                                  : units::roundedLength(near, m_system, Rounding::Nearest);
    const double shown = nearShown + units::roundedLength(opening, m_system, roundingOf("board.sight.width"));
    figure.shown = units::showEntered(units::nearestLength(shown), m_system, Rounding::Nearest);
    figure.shown.approximate = m_system == UnitSystem::Inches && std::fabs(shown - figure.value) > 1e-6;
    figure.display = units::textOf(figure.shown);
  }

  // The next figures belong to a numbered part of the element: ids "<group>.<element>.<part>.<number>.<name>".
  void part(std::string part, int number) {
    m_part = std::move(part);
    m_number = number;
  }

  // A distance from the centre line or the springing line: signed in value, shown without its sign, which the words
  // of its kind tell instead.
  void fromLine(const std::string& name, double value, std::string_view more, std::string_view less) {
    Figure& figure = length(name, value);
    const bool on = std::fabs(value) < 1e-9;
    figure.kind += on ? ".on" : '.' + std::string(value > 0 ? more : less);
    figure.shown = units::showLength(std::fabs(value), m_system, Rounding::Nearest);
    figure.display = units::lengthText(std::fabs(value), m_system, Rounding::Nearest);
  }

  void area(const std::string& name, double value) {
    Figure& figure = add(name, value, FigureUnit::SquareMillimetre);
    if (m_system == UnitSystem::Millimetres) {
      show(figure, base::fixedNumber(value, 1), "mm\u00b2");
    } else {
      show(figure, base::fixedNumber(value / (25.4 * 25.4), 2), "in\u00b2");
    }
  }

  // The degree's sign stands at the number itself.
  Figure& angle(const std::string& name, double degrees, int decimals = 1) {
    Figure& figure = add(name, degrees, FigureUnit::Degree);
    show(figure, base::fixedNumber(degrees, decimals) + "\u00b0", "");
    return figure;
  }

  void other(const std::string& name, double value, FigureUnit unit, int decimals, const std::string& unitText) {
    show(add(name, value, unit), base::fixedNumber(value, decimals), unitText);
  }

 private:
  static bool isStill(double value, const std::optional<Length>& entry) {
    return entry && units::nearestLength(value) == *entry;
  }

  Figure& add(const std::string& name, double value, FigureUnit unit) {
    Figure figure;
    figure.element = m_element;
    figure.number = m_number;
    const std::string part = m_part.empty() ? "" : m_part + '.';
    const std::string number = m_number == 0 ? "" : std::to_string(m_number) + '.';
    figure.kind = m_group.empty() ? name : m_group + '.' + part + name;
    figure.id = m_group.empty() ? name : m_group + '.' + m_element + '.' + part + number + name;
    figure.value = value == 0 ? 0 : value;
    figure.unit = unit;
    m_figures.push_back(std::move(figure));
    return m_figures.back();
  }

  static void show(Figure& figure, std::string number, const std::string& unit) {
    figure.display = unit.empty() ? number : number + ' ' + unit;
    figure.shown.whole = std::move(number);
    figure.shown.unit = unit;
  }

  std::vector<Figure>& m_figures;
  UnitSystem m_system;
  std::string m_group;
  std::string m_element;
  std::string m_part;
  int m_number = 0;
};

// How far a bevel's cut runs past the crossing of the marks on the back: the face corner lies the bevel's plan width
// beyond it, and the blade reaches the face a little behind the hand. Common practice, no source: 1.5 to 2 mm for board
// of 1.4 mm at 45 degrees.
constexpr double kPastTheCrossing = 0.35;

// A point from the marked corner's two edges and from the centre and springing lines.
void collectPoint(Collector& out, const BoardLayout& board, const std::string& prefix, geometry::Point point) {
  out.length(prefix + "left", point.x);
  out.length(prefix + "top", point.y);
  out.fromLine(prefix + "fromAxis", fromAxis(board, point), "right", "left");
  out.fromLine(prefix + "fromSpringing", fromSpringing(board, point), "above", "below");
}

void collectSettingOut(Collector& out, const Layout& layout, std::size_t index) {
  const SettingOut setting = settingOut(layout, index);
  const BoardLayout& board = layout.boards[index];
  out.length("axis", board.axis);
  out.length("springing", board.springing);
  for (const SettingArc& arc : setting.arcs) {
    out.part("arc", arc.number);
    out.length("radius", arc.radius);
    out.angle("sweep", arc.sweep);
    collectPoint(out, board, "centre.", arc.centre);
  }
  for (const SettingPoint& point : setting.points) {
    out.part("point", point.number);
    collectPoint(out, board, "", point.at);
  }
  out.part("oval", 0);
  if (setting.oval) {
    out.length("semiMajor", setting.oval->semiMajor);
    out.length("semiMinor", setting.oval->semiMinor);
    out.length("focus", setting.oval->focus);
    out.length("string", setting.oval->string);
  }
  for (const SettingPoint& point : setting.ordinates) {
    out.part("oval", point.number);
    collectPoint(out, board, "", point.at);
  }
  out.part("", 0);
}

// The borders of the outermost board, as far as they were entered; its outer size otherwise.
struct Entered {
  std::optional<Length> top, bottom, left, right, width, height;
};

Entered enteredOf(const Borders& borders) {
  Entered entered;
  if (const auto* four = std::get_if<FourBorders>(&borders.entry)) {
    entered = {four->top, four->bottom, four->left, four->right, {}, {}};
  } else if (const auto* sides = std::get_if<SidesAndWeighting>(&borders.entry)) {
    // The border above is that of the sides, whatever the weighting.
    entered = {sides->sides, {}, sides->sides, sides->sides, {}, {}};
  } else if (const auto* outer = std::get_if<OuterAndWeighting>(&borders.entry)) {
    entered.width = outer->width;
    entered.height = outer->height;
  }
  return entered;
}

void collectBoard(Collector& out, const BoardLayout& board, bool outermost, const Entered& borders) {
  out.element("board", board.id);
  out.entered("thickness", board.thickness);
  out.length("sight.width", board.sight.width);
  out.length("sight.height", board.sight.height);
  out.length("face.width", board.face.width);
  out.length("face.height", board.face.height);
  out.length("sight.perimeter", board.sightPerimeter);
  out.area("sight.area", board.sightArea);
  out.length("face.perimeter", board.facePerimeter);
  out.length("bevel.plan", board.bevelPlan);
  out.length("bevel.slope", board.bevelSlope);
  out.area("bevel.area", board.bevelArea);
  out.angle("bevel.angle", board.bevelAngle, std::floor(board.bevelAngle) == board.bevelAngle ? 0 : 1).setting = true;
  out.length("bevel.overrun", board.bevelPlan + kPastTheCrossing).setting = true;
  if (!outermost) {
    if (board.evenReveal) {
      out.entered("reveal", board.reveal);
    } else {
      out.length("reveal", board.reveal);
    }
    out.length("reveal.flat", board.flatReveal);
    if (!board.evenReveal) {
      out.length("reveal.top", board.revealTop);
      out.length("reveal.bottom", board.revealBottom);
      out.length("reveal.left", board.revealLeft);
      out.length("reveal.right", board.revealRight);
    }
  }
  out.entered("border.top", board.borderTop, borders.top);
  out.entered("border.bottom", board.borderBottom, borders.bottom);
  out.entered("border.left", board.borderLeft, borders.left);
  out.entered("border.right", board.borderRight, borders.right);
  out.entered("back.left", board.borderRight, borders.right);
  out.entered("back.right", board.borderLeft, borders.left);
  out.entered("mark.left", board.borderLeft, borders.left);
  out.farMark("mark.right", board.borderLeft, board.sight.width, borders.left);
  out.entered("mark.top", board.borderTop, borders.top);
  out.farMark("mark.bottom", board.borderTop, board.sight.height, borders.top);
  if (board.diagonalMarked > 0) {
    out.check("diagonal.marked", board.diagonalMarked);
    out.check("diagonal.other", board.diagonalOther);
  }
}

// A value reduced to [0, period).
double modulo(double value, double period) {
  double rest = std::fmod(value, period);
  if (rest < 0) rest += period;
  // A hair under a whole period is a whole period that lost its last bit.
  return period - rest < 1e-9 ? 0 : rest;
}

void collectRepeat(Collector& out, const Band& band, const BandLayout& placed) {
  const double repeat = band.repeat->inMillimetres();
  out.other("repeats.horizontal", placed.stripHorizontal / repeat, FigureUnit::Count, 2, "");
  out.other("repeats.vertical", placed.stripVertical / repeat, FigureUnit::Count, 2, "");
  const auto firstMotif = [&](double strip, Centring centring) {
    return modulo(strip / 2 + (centring == Centring::Ground ? repeat / 2 : 0), repeat);
  };
  out.length("firstMotif.horizontal", firstMotif(placed.stripHorizontal, band.centreHorizontal));
  out.length("firstMotif.vertical", firstMotif(placed.stripVertical, band.centreVertical));
  if (band.motif != Motif::Mirror) return;
  const double shift = band.centreHorizontal == band.centreVertical ? 0 : repeat / 2;
  const double phase = modulo((placed.outer.width - placed.outer.height) / 2 + shift, repeat);
  out.length("corner.phase", phase > repeat / 2 + 1e-9 ? phase - repeat : phase);
}

void collectBand(Collector& out, const Band& band, const BandLayout& placed) {
  out.element("band", band.id);
  out.length("inner.width", placed.inner.width);
  out.length("inner.height", placed.inner.height);
  out.length("outer.width", placed.outer.width);
  out.length("outer.height", placed.outer.height);
  out.length("strip.horizontal", placed.stripHorizontal);
  out.length("strip.vertical", placed.stripVertical);
  out.entered("strip.width", placed.width);
  out.length("mitre", placed.mitre);
  out.entered("dryEnd", placed.dryEnd, band.dryEnd);
  out.length("glueFrom", placed.glueFrom);
  out.area("area", placed.area);
  if (band.repeat) collectRepeat(out, band, placed);
}

void collectLine(Collector& out, const LineLayout& line) {
  out.element("line", line.id);
  out.length("horizontal", line.path.width);
  out.length("vertical", line.path.height);
  out.length("total", line.total);
  out.length("offset", line.offset);
  out.entered("width", line.width).setting = true;
  if (line.corners) out.length("cornerMark", line.offset * std::numbers::sqrt2);
  const double sides = line.fromFaceSides;
  const double topBottom = line.fromFaceTopBottom;
  out.length("fromFace.sides", sides);
  out.length("fromFace.topBottom", topBottom);
  if (!line.corners) return;
  // A common distance is the diagonal of a square; hypot would lose the last bit of it.
  out.length("fromFaceCorner",
             sides == topBottom ? std::fabs(sides) * std::numbers::sqrt2 : std::hypot(sides, topBottom));
}

}  // namespace

Figures::Figures(const Job& job, const Layout& layout, UnitSystem system, const AsMade& made) {
  // Grown step by step, so many texts are moved more often than they are made.
  m_figures.reserve(512);
  Collector out(m_figures, system);
  // What the job was given as, to hold the work against; nothing is cut to it.
  const Sheet& sheet = job.artwork.sheet;
  out.entered("art.width", job.artwork.width.inMillimetres()).check = true;
  out.entered("art.height", job.artwork.height.inMillimetres()).check = true;
  out.entered("art.sheet.width", sheet.width.inMillimetres()).check = true;
  out.entered("art.sheet.height", sheet.height.inMillimetres()).check = true;
  const Entered borders = enteredOf(job.borders);
  out.length("visible.width", layout.visible.width);
  out.length("visible.height", layout.visible.height);
  out.entered("outer.width", layout.outerWidth, borders.width);
  out.entered("outer.height", layout.outerHeight, borders.height);
  for (std::size_t i = 0; i < layout.boards.size(); ++i) {
    collectBoard(out, layout.boards[i], i == 0, i == 0 ? borders : Entered());
    if (layout.shaped) collectSettingOut(out, layout, i);
  }
  out.element("", "");
  out.length("border.seen.top", layout.seenTop);
  out.length("border.seen.bottom", layout.seenBottom);
  out.length("border.seen.left", layout.seenLeft);
  out.length("border.seen.right", layout.seenRight);
  out.length("border.framed.top", layout.framedTop);
  out.length("border.framed.bottom", layout.framedBottom);
  out.length("border.framed.left", layout.framedLeft);
  out.length("border.framed.right", layout.framedRight);
  out.length("art.left", layout.artLeft);
  out.length("art.top", layout.artTop);
  for (std::size_t i = 0; i < layout.bands.size(); ++i) collectBand(out, job.bands[i], layout.bands[i]);
  for (const LineLayout& line : layout.lines) collectLine(out, line);
  for (const SpandrelLayout& spandrel : layout.spandrels) {
    out.element("spandrel", spandrel.id);
    out.length("width", spandrel.paper.right - spandrel.paper.left);
    out.length("height", spandrel.paper.bottom - spandrel.paper.top);
    out.area("area", spandrel.area);
  }
  for (const WashLayout& wash : layout.washes) {
    out.element("wash", wash.id);
    // Between two lines the width is what they leave.
    const auto entry = std::find_if(job.washes.begin(), job.washes.end(),
                                    [&](const Wash& one) { return one.id == wash.id && !one.between; });
    out.entered("width", wash.width, entry == job.washes.end() ? std::nullopt : std::optional(entry->width));
    out.length("fromFace.sides", wash.ring.from.sides.inMillimetres());
    out.length("fromFace.topBottom", wash.ring.from.topBottom.inMillimetres());
    out.area("area", wash.area);
  }
  for (const LeafLayout& leaf : layout.leaf) {
    out.element("leaf", leaf.id);
    out.area("area", leaf.area);
    out.other("sheets", leaf.sheets, FigureUnit::Count, 0, "");
    out.other("size", leaf.size, FigureUnit::Millilitre, 1, "ml");
  }
  out.element("", "");
  out.length("rebate.width", layout.rebateWidth);
  out.length("rebate.height", layout.rebateHeight);
  out.length("rebate.depth", layout.rebateDepth);
  out.length("package.depth", layout.packageDepth);
  if (const auto strips = spacerOf(job, layout)) {
    out.length("package.spacer.width", strips->width.inMillimetres()).entered = job.package.spacerWidth.has_value();
    out.length("package.spacer.horizontal", strips->horizontal);
    out.length("package.spacer.vertical", strips->vertical);
  }
  if (const auto support = supportOf(job)) {
    out.length("package.support.width", support->width.inMillimetres());
    out.length("package.support.height", support->height.inMillimetres());
  }
  if (made.pins.empty()) return;
  for (Figure& figure : m_figures) {
    if (!made.pins.contains(figure.id)) continue;
    figure.made = true;
    figure.entered = false;
    figure.shown = units::showEntered(made.pins.at(figure.id), system, roundingOf(figure.kind));
    figure.display = units::textOf(figure.shown);
  }
}

const Figure* Figures::find(std::string_view id) const {
  for (const Figure& figure : m_figures) {
    if (figure.id == id) return &figure;
  }
  return nullptr;
}

Rounding roundingOf(std::string_view kind) {
  for (const auto& [one, rounding] : kRoundings) {
    if (one == kind) return rounding;
  }
  return Rounding::Nearest;
}

std::string_view name(FigureUnit unit) {
  switch (unit) {
    case FigureUnit::Millimetre: return "mm";
    case FigureUnit::SquareMillimetre: return "mm2";
    case FigureUnit::Millilitre: return "ml";
    case FigureUnit::Gram: return "g";
    case FigureUnit::Count: return "count";
    case FigureUnit::Degree: return "deg";
  }
  return "";
}

}  // namespace core::design
