#include "app/designing/samples.h"

#include <map>

namespace app::designing {

using core::sheets::Drawing;
using core::sheets::Matter;
using core::sheets::Primitive;
using core::sheets::Role;
using core::sheets::Substance;

namespace {

// In mm, as a scrap of the material would be cut to show it.
constexpr double kScrap = 36;
constexpr double kStrip = 10;

// The same scrap again, so that lists that show it stay as they are.
Sample kept(const std::string& key, const Sample& made) {
  static std::map<std::string, Sample> all;
  constexpr std::size_t kMost = 1000;
  if (all.size() > kMost) all.clear();
  return all.try_emplace(key, made).first->second;
}

Sample scrap(Matter matter, Role role, double height) {
  const std::string key = std::to_string(static_cast<int>(matter.substance)) +
                          (matter.run && matter.run->repeat > 0 ? "r" : "-") + matter.name;
  auto drawing = std::make_shared<Drawing>();
  drawing->width = kScrap;
  drawing->height = height;
  drawing->primitives.push_back(
      {"sample", role, core::sheets::Frame{{0, 0}, {kScrap, height}, {}, {}}, std::move(matter)});
  return kept(key, drawing);
}

}  // namespace

Sample sampleOf(Substance substance, const std::string& name) {
  if (name.empty()) return nullptr;
  Matter matter;
  matter.substance = substance;
  matter.name = name;
  matter.width = kScrap;
  return scrap(std::move(matter), substance == Substance::Wash ? Role::Wash : Role::Line, kStrip);
}

Sample paperSample(const std::string& name, bool repeats) {
  if (name.empty()) return nullptr;
  Matter matter;
  matter.substance = Substance::Paper;
  matter.name = name;
  matter.width = kStrip;
  matter.run = core::sheets::Run{{kScrap / 2, kStrip}, {1, 0}, {0, -1}, repeats ? kStrip : 0, kStrip, false};
  return scrap(std::move(matter), Role::Band, kStrip);
}

Sample outlineSample(const core::geometry::Outline& placed) {
  // From its own corner.
  const auto at = placed.bounds();
  const auto outline = placed.shifted({-at.left, -at.top});
  const auto box = outline.bounds();
  auto drawing = std::make_shared<Drawing>();
  drawing->width = box.right;
  drawing->height = box.bottom;
  drawing->primitives.push_back({"sample", Role::Tool, core::sheets::Path{outline.segments(), true}});
  return drawing;
}

}  // namespace app::designing
