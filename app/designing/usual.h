#pragma once
// What the desk enters of its own accord: round measures, in the maker's units. All of them stand in one table.
#include <optional>
#include <string>
#include <vector>

#include "core/base/json.h"
#include "core/units/length_display.h"

namespace app::designing {

using core::units::UnitSystem;

enum class Usual {
  Nothing,  // where a distance has to be written
  Overlap,
  Air,  // round a float
  Board,
  Reveal,
  Border,
  BottomMore,  // of the bottom border than of the top, with "the same step for every size"
  MountSide,   // where no size is known
  Play,        // in the rebate, both sides together
  Lip,
  Glazing,
  BackMount,
  Backing,
  Fixing,
  BandGround,
  BandWidth,
  BandTrim,
  BandDryEnd,
  LineWidth,
  LineGround,  // of a line about the window
  WashGround,
  WashWidth,
  SpandrelFrame,
  StepOfBands,  // from one place tried to the next
  StepOfLines,
  StepOfShapes,  // a shape's own measures are whole in it
};

// Returns the measure as a job file has it. Those of inches are no conversions: they are as round as the others.
std::string usual(Usual what, UnitSystem units);

// Returns distances to try one after the other until a new element is clear of the present ones.
std::vector<std::string> ladder(Usual from, Usual step, UnitSystem units);

// Returns the length nearest to so many mm that is whole in the steps of shapes, at least one of them.
std::string wholeInSteps(double millimetres, UnitSystem units);

// Returns the units of a design, which are those its work's width is written in; nothing where there is none yet.
std::optional<UnitSystem> unitsOf(const core::base::Value& document);

// Returns a design with the measures a fresh one has.
core::base::Value withUsual(core::base::Value document, UnitSystem units);

// Returns a patch with what follows from it for a fresh design: where it enters the width of the work in other units
// than the measures the desk entered, and nobody changed any of those, they are entered anew in these units.
core::base::Value inTheUnitsOf(const core::base::Value& document, core::base::Value patch);

}  // namespace app::designing
