#include "core/sheets/grown.h"

#include <algorithm>
#include <array>

#include "core/sheets/piece.h"

namespace core::sheets {
namespace {

using craft::Act;
using Acts = std::vector<Act>;

// The acts that make a shape of that role.
Acts makersOf(Role role) {
  switch (role) {
    case Role::BoardEdge:
    case Role::BoardFace: return {Act::CutSquare};
    case Role::BoardSight:
    case Role::Bevel: return {Act::CutBevel, Act::CutCurve};
    case Role::Band: return {Act::LayStrip};
    case Role::Mitre: return {Act::Mitre};
    case Role::Line: return {Act::RuleLine};
    case Role::Spandrel: return {Act::LaySpandrel};
    case Role::Wash: return {Act::FloodWash};
    case Role::Leaf: return {Act::ScatterLeaf, Act::LayLeaf};
    case Role::Artwork: return {Act::PlaceWork, Act::Hinge};
    case Role::Mark: return {Act::Square};
    case Role::Setting:
    case Role::Dimension:
    case Role::DimensionText:
    case Role::Section:
    case Role::Sheet:
    case Role::Tool:
    case Role::Blade:
    case Role::Film:
    case Role::Waste:
    case Role::Motion:
    case Role::Guide: break;
  }
  return {};
}

// Whether an act works shapes of a role: it makes them, or brushes the colour on a bevel.
bool works(Act act, Role role) {
  const Acts makers = makersOf(role);
  return std::count(makers.begin(), makers.end(), act) > 0 || (act == Act::BrushBevel && role == Role::Bevel);
}

bool worksAnyShape(Act act) {
  constexpr std::array kRoles = {Role::BoardEdge, Role::BoardFace, Role::BoardSight, Role::Bevel, Role::Band,
                                 Role::Line,      Role::Spandrel,  Role::Wash,       Role::Leaf,  Role::Artwork};
  return std::any_of(kRoles.begin(), kRoles.end(), [&](Role role) { return works(act, role); });
}

// The artwork and the marked corner are worked for the whole piece.
bool isOfPiece(Role role) { return role == Role::Artwork || role == Role::Mark; }

}  // namespace

Grown::Grown(const jobs::JobState& state) {
  const auto& steps = state.plan->workflow.steps;
  const auto count = [](Progress& progress, bool done) {
    ++progress.steps;
    progress.done += done ? 1 : 0;
  };
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const bool done = state.steps[i].status == jobs::StepStatus::Done;
    const std::string thing = workflow::wholeThing(steps[i].thing);
    count(m_things[thing], done);
    if (!steps[i].act) continue;
    count(m_acts[{thing, *steps[i].act}], done);
    count(m_ofPiece[*steps[i].act], done);
  }
}

bool Grown::isDone(const std::string& thing, const Acts& makers, bool ofPiece) const {
  Progress made;
  const auto add = [&](const auto& map, const auto& key) {
    const auto found = map.find(key);
    if (found == map.end()) return;
    made.steps += found->second.steps;
    made.done += found->second.done;
  };
  for (const Act act : makers) {
    if (ofPiece) {
      add(m_ofPiece, act);
    } else {
      add(m_acts, std::make_pair(thing, act));
    }
  }
  if (made.steps == 0) add(m_things, thing);
  return made.done == made.steps;
}

bool Grown::isMade(const std::string& element, Role role) const {
  const Acts makers = makersOf(role);
  return makers.empty() || isDone(element, makers, isOfPiece(role));
}

bool Grown::isColoured(const std::string& board) const { return isDone(board, {Act::BrushBevel}, false); }

bool isWorkedBy(const Primitive& primitive, const workflow::WorkflowStep& step) {
  if (!belongsTo(primitive.element, step.thing) || makersOf(primitive.role).empty()) return false;
  return !step.act || !worksAnyShape(*step.act) || works(*step.act, primitive.role);
}

void stand(Drawing& piece, const Grown& grown) {
  for (Primitive& primitive : piece.primitives) {
    const bool made = grown.isMade(primitive.element, primitive.role);
    primitive.standing = made ? Standing::Made : Standing::ToCome;
    if (made && primitive.matter && primitive.matter->substance == Substance::Paint &&
        !grown.isColoured(primitive.element))
      primitive.matter->substance = Substance::Core;
  }
}

}  // namespace core::sheets
