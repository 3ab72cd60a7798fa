#pragma once
// The action of the hand in a step, as one word. It chooses the small drawing shown beside the step's text; nothing of
// the order of work hangs on it. The drawing of each act is described with the format of technique files.
#include <optional>
#include <string_view>
#include <vector>

namespace core::craft {

enum class Act {
  // measuring and marking
  Measure,
  Square,
  MarkOut,
  MarkCorners,
  Note,
  // cutting
  CutSquare,
  CutBevel,
  CutCurve,
  CutStrips,
  // boards
  Refit,
  Register,
  JoinBoards,
  Press,
  // the bevel
  TapeEdge,
  FluidEdge,
  BrushBevel,
  Peel,
  RubOff,
  // paper
  BrushStrip,
  FitStrips,
  LayStrip,
  Mitre,
  CloseCorner,
  LaySpandrel,
  // lines and washes
  RuleLine,
  FloodWash,
  // leaf
  FrameField,
  SizeField,
  ScatterLeaf,
  LayLeaf,
  Burnish,
  SweepLeaf,
  RubOver,
  Rags,
  // preparations
  Weigh,
  Stir,
  Cook,
  Strain,
  // the bench, trials and looks
  SetOut,
  Clean,
  TryPatch,
  Look,
  // finish
  PutAway,
  GumCloth,
  PlaceWork,
  TearHinge,
  Hinge,
  Rest,
  Stack,
  SealEdge,
  FitFrame,
};

const std::vector<Act>& allActs();  // in the order above
std::string_view name(Act act);     // "cutBevel"
std::optional<Act> act(std::string_view word);

}  // namespace core::craft
