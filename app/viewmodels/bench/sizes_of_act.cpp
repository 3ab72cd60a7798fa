#include "app/viewmodels/bench/sizes_of_act.h"

#include <algorithm>
#include <array>

#include "app/convert/text.h"
#include "core/base/text.h"

namespace app::viewmodels {
namespace {

// What a step of the whole piece cuts: a part of the package that has no thing of its own.
QString partMade(const core::workflow::WorkflowStep& step) {
  const std::array<std::pair<std::string_view, QString>, 3> parts = {
      {{"package.backMount.", FigureViewModel::tr("back mount")},
       {"package.backing.", FigureViewModel::tr("backing")},
       {"package.support.", FigureViewModel::tr("support")}}};
  for (const std::string& fact : step.makes) {
    for (const auto& [begins, word] : parts) {
      if (core::base::startsWith(fact, begins)) return word;
    }
  }
  return convert::toQt(step.title);
}

}  // namespace

std::vector<FigureViewModel::Size> sizesOfAct(const std::vector<const core::workflow::WorkflowStep*>& steps,
                                              core::units::Marking marking) {
  std::vector<FigureViewModel::Size> sizes;
  for (const auto* step : steps) {
    const auto ending = [&](std::string_view end) -> const core::workflow::WorkflowFigure* {
      for (const auto& figure : step->figures) {
        if (core::base::endsWith(figure.id, end)) return &figure;
      }
      return nullptr;
    };
    const bool numbered = std::any_of(step->figures.begin(), step->figures.end(),
                                      [&](const auto& figure) { return !figure.by || *figure.by == marking; });
    if (!numbered) continue;
    const auto* across = ending(".width");
    const auto* down = ending(".height");
    // Both numbers at once are of use only where one cut needs both.
    if (step->act != core::craft::Act::CutSquare || across == nullptr || down == nullptr) return {};
    const QString name = step->thingName.empty() ? partMade(*step) : convert::toQt(step->thingName);
    const auto known = std::find_if(sizes.begin(), sizes.end(), [&](const FigureViewModel::Size& size) {
      return size.name == name && size.across == across->id && size.down == down->id;
    });
    if (known == sizes.end()) {
      sizes.push_back({name, across->count, across->id, down->id, step->id.substr(step->id.find('@') + 1)});
    } else {
      known->count += across->count;
    }
  }
  return sizes;
}

}  // namespace app::viewmodels
