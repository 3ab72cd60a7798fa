#include "core/craft/act.h"

#include <algorithm>

namespace core::craft {

std::string_view name(Act act) {
  switch (act) {
    case Act::Measure: return "measure";
    case Act::Square: return "square";
    case Act::MarkOut: return "markOut";
    case Act::MarkCorners: return "markCorners";
    case Act::Note: return "note";
    case Act::CutSquare: return "cutSquare";
    case Act::CutBevel: return "cutBevel";
    case Act::CutCurve: return "cutCurve";
    case Act::CutStrips: return "cutStrips";
    case Act::Refit: return "refit";
    case Act::Register: return "register";
    case Act::JoinBoards: return "joinBoards";
    case Act::Press: return "press";
    case Act::TapeEdge: return "tapeEdge";
    case Act::FluidEdge: return "fluidEdge";
    case Act::BrushBevel: return "brushBevel";
    case Act::Peel: return "peel";
    case Act::RubOff: return "rubOff";
    case Act::BrushStrip: return "brushStrip";
    case Act::FitStrips: return "fitStrips";
    case Act::LayStrip: return "layStrip";
    case Act::Mitre: return "mitre";
    case Act::CloseCorner: return "closeCorner";
    case Act::LaySpandrel: return "laySpandrel";
    case Act::RuleLine: return "ruleLine";
    case Act::FloodWash: return "floodWash";
    case Act::FrameField: return "frameField";
    case Act::SizeField: return "sizeField";
    case Act::ScatterLeaf: return "scatterLeaf";
    case Act::LayLeaf: return "layLeaf";
    case Act::Burnish: return "burnish";
    case Act::SweepLeaf: return "sweepLeaf";
    case Act::RubOver: return "rubOver";
    case Act::Rags: return "rags";
    case Act::Weigh: return "weigh";
    case Act::Stir: return "stir";
    case Act::Cook: return "cook";
    case Act::Strain: return "strain";
    case Act::SetOut: return "setOut";
    case Act::Clean: return "clean";
    case Act::TryPatch: return "tryPatch";
    case Act::Look: return "look";
    case Act::PutAway: return "putAway";
    case Act::GumCloth: return "gumCloth";
    case Act::PlaceWork: return "placeWork";
    case Act::TearHinge: return "tearHinge";
    case Act::Hinge: return "hinge";
    case Act::Rest: return "rest";
    case Act::Stack: return "stack";
    case Act::SealEdge: return "sealEdge";
    case Act::FitFrame: return "fitFrame";
  }
  return "";
}

const std::vector<Act>& allActs() {
  static const std::vector<Act> kActs = {
      Act::Measure,    Act::Square,    Act::MarkOut,    Act::MarkCorners, Act::Note,        Act::CutSquare,
      Act::CutBevel,   Act::CutCurve,  Act::CutStrips,  Act::Refit,       Act::Register,    Act::JoinBoards,
      Act::Press,      Act::TapeEdge,  Act::FluidEdge,  Act::BrushBevel,  Act::Peel,        Act::RubOff,
      Act::BrushStrip, Act::FitStrips, Act::LayStrip,   Act::Mitre,       Act::CloseCorner, Act::LaySpandrel,
      Act::RuleLine,   Act::FloodWash, Act::FrameField, Act::SizeField,   Act::ScatterLeaf, Act::LayLeaf,
      Act::Burnish,    Act::SweepLeaf, Act::RubOver,    Act::Rags,        Act::Weigh,       Act::Stir,
      Act::Cook,       Act::Strain,    Act::SetOut,     Act::Clean,       Act::TryPatch,    Act::Look,
      Act::PutAway,    Act::GumCloth,  Act::PlaceWork,  Act::TearHinge,   Act::Hinge,       Act::Rest,
      Act::Stack,      Act::SealEdge,  Act::FitFrame};
  return kActs;
}

std::optional<Act> act(std::string_view word) {
  const std::vector<Act>& acts = allActs();
  const auto found = std::find_if(acts.begin(), acts.end(), [word](Act candidate) { return name(candidate) == word; });
  return found == acts.end() ? std::nullopt : std::optional<Act>(*found);
}

}  // namespace core::craft
