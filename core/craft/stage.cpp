#include "core/craft/stage.h"

namespace core::craft {

std::vector<Stage> allStages() {
  return {Stage::Prepare, Stage::Cut,  Stage::Colour, Stage::Wash, Stage::Join,    Stage::Paper,  Stage::Glue,
          Stage::Mitre,   Stage::Rule, Stage::Size,   Stage::Lay,  Stage::Burnish, Stage::Attach, Stage::Close};
}

std::string_view name(Stage stage) {
  switch (stage) {
    case Stage::None: return "";
    case Stage::Prepare: return "prepare";
    case Stage::Cut: return "cut";
    case Stage::Colour: return "colour";
    case Stage::Wash: return "wash";
    case Stage::Join: return "join";
    case Stage::Paper: return "paper";
    case Stage::Glue: return "glue";
    case Stage::Mitre: return "mitre";
    case Stage::Rule: return "rule";
    case Stage::Size: return "size";
    case Stage::Lay: return "lay";
    case Stage::Burnish: return "burnish";
    case Stage::Attach: return "attach";
    case Stage::Close: return "close";
  }
  return "";
}

}  // namespace core::craft
