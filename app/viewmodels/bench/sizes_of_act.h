#pragma once
// What an act cuts to a width and a height.
#include <vector>

#include "app/viewmodels/bench/figure_view_model.h"

namespace app::viewmodels {

// Returns a row for each thing that the steps of an act cut; none where any of them does something else that has a
// number.
std::vector<FigureViewModel::Size> sizesOfAct(const std::vector<const core::workflow::WorkflowStep*>& steps,
                                              core::units::Marking marking);

}  // namespace app::viewmodels
