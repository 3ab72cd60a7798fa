#pragma once
// Every measure a step may need, by stable id, in one order: boards outermost first, bands innermost first.
#include <string>
#include <string_view>
#include <vector>

#include "core/design/layout.h"
#include "core/units/length_display.h"

namespace core::design {

enum class FigureUnit { Millimetre, SquareMillimetre, Millilitre, Gram, Count, Degree };

struct Figure {
  std::string id;       // "board.top.mark.left"
  std::string element;  // "top"; "" where the id names none
  // The id without its element and number: "board.mark.left"; keys the label and datum words. A signed distance from a
  // line ends in the side it is on instead: "board.arc.centre.fromAxis.right".
  std::string kind;
  int number = 0;  // of an arc or a point of the setting-out, from 1; 0 for none
  double value = 0;
  FigureUnit unit = FigureUnit::Millimetre;
  std::string display;       // in the units asked for, rounded for display
  units::ShownLength shown;  // its parts; of anything but a length `whole` and `unit` alone
  bool entered = false;      // true: as the maker entered it; false: computed, or as made
  bool made = false;         // true: as the maker measured it
  bool check = false;        // true: measured to check what was cut; nothing is marked or cut to it
  bool setting = false;      // true: a tool is set to it; shown where that is done and part of no list
};

class Figures {
 public:
  Figures() = default;
  // `made` as the layout was given it.
  Figures(const Job& job, const Layout& layout, units::UnitSystem system, const AsMade& made = AsMade());
  const std::vector<Figure>& all() const { return m_figures; }
  const Figure* find(std::string_view id) const;

 private:
  std::vector<Figure> m_figures;
};

// Returns how a length of that kind is rounded for display: openings and what goes into a rebate down, what must be
// there at the least up, the rest to the nearest step.
units::Rounding roundingOf(std::string_view kind);

std::string_view name(FigureUnit unit);  // "mm", "mm2", "ml", "g", "count", "deg"

}  // namespace core::design
