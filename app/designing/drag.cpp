#include "app/designing/drag.h"

#include <cmath>

#include "app/designing/tr.h"
#include "core/base/text.h"
#include "core/units/length_entry.h"

namespace app::designing {

using core::base::Value;

namespace {

struct Rect {
  double left = 0, top = 0, right = 0, bottom = 0;
};

class Handles {
 public:
  Handles(const Value& document, const core::design::Design& design) : m_document(document), m_design(design) {
    const auto& layout = design.layout;
    const std::string board = layout.boards.front().id;
    const Rect mount{0, 0, layout.outerWidth, layout.outerHeight};
    border(mount, board);
    for (std::size_t i = 0; i < layout.bands.size(); ++i) band(i);
  }

  std::vector<DragHandle> take() { return std::move(m_handles); }

 private:
  bool has(const std::string& pointer) const { return core::base::at(m_document, pointer) != nullptr; }

  void edge(bool upright, double at, double from, double to, const std::string& pointer, const QString& label,
            const std::string& element, double perMm) {
    const Value* value = core::base::at(m_document, pointer);
    if (value == nullptr || value->kind() != Value::Kind::Text) return;
    const auto length = core::units::parseLength(value->asText());
    if (!length) return;
    m_handles.push_back({pointer, label, element, upright, at, from, to, perMm, length.value().length.inMillimetres()});
  }

  // Returns how many mm the bottom border grows for each mm of the top.
  double bottomRatio() const {
    const auto& entry = m_design.job.borders.entry;
    const auto* sides = std::get_if<core::design::SidesAndWeighting>(&entry);
    const auto* outer = std::get_if<core::design::OuterAndWeighting>(&entry);
    const core::design::Weighting weighting = sides   ? sides->weighting
                                              : outer ? outer->weighting
                                                      : core::design::Weighting();
    return weighting.byAddition ? 1 : weighting.ratio;
  }

  // The window stays where it is: an edge drawn outwards widens its border.
  void border(const Rect& mount, const std::string& element) {
    const std::string borders = "/mount/borders";
    const bool outer = has(borders + "/outer");
    const bool even = has(borders + "/sides");
    const auto across = [&](const char* own, double at, double outwards) {
      edge(true, at, mount.top, mount.bottom,
           borders + (outer  ? "/outer/width"
                      : even ? "/sides"
                             : own),
           outer ? tr("mount width") : tr("border at the side"), element, outer ? 2 * outwards : outwards);
    };
    across("/left", mount.left, -1);
    across("/right", mount.right, 1);
    const double ratio = bottomRatio();
    const auto down = [&](const char* own, double at, double outwards) {
      edge(false, at, mount.left, mount.right, borders + (outer ? "/outer/height" : own),
           outer          ? tr("mount height")
           : outwards < 0 ? tr("border above")
                          : tr("border below"),
           element, outer ? 2 * outwards : outwards);
    };
    down("/top", mount.top, -1);
    down("/bottom", mount.bottom, 1);
    // Sides with a weighting have no measure above and below: the sides are what is entered.
    if (!outer && even && !has(borders + "/top")) {
      edge(false, mount.top, mount.left, mount.right, borders + "/sides", tr("border at the side"), element, -1);
      edge(false, mount.bottom, mount.left, mount.right, borders + "/sides", tr("border at the side"), element,
           1 / ratio);
    }
  }

  Rect around(const core::geometry::Box& box) const {
    const auto& top = m_design.layout.boards.front();
    const double x = top.faceAt.left + top.face.width / 2;
    const double y = top.faceAt.top + top.face.height / 2;
    return {x - box.width / 2, y - box.height / 2, x + box.width / 2, y + box.height / 2};
  }

  void band(std::size_t index) {
    const auto& layout = m_design.layout.bands[index];
    const std::string pointer = core::base::pointerTo("/bands", index);
    const QString name = QString::fromStdString(layout.id);
    const bool parted = has(pointer + "/offset/sides");
    const auto ring = [&](const Rect& rect, const std::string& sides, const std::string& topBottom,
                          const QString& label) {
      edge(true, rect.left, rect.top, rect.bottom, sides, label, layout.id, -1);
      edge(true, rect.right, rect.top, rect.bottom, sides, label, layout.id, 1);
      edge(false, rect.top, rect.left, rect.right, topBottom, label, layout.id, -1);
      edge(false, rect.bottom, rect.left, rect.right, topBottom, label, layout.id, 1);
    };
    ring(around(layout.inner), pointer + (parted ? "/offset/sides" : "/offset"),
         pointer + (parted ? "/offset/topBottom" : "/offset"), tr("ground up to the %1 band").arg(name));
    ring(around(layout.outer), pointer + "/width", pointer + "/width", tr("width of the %1 band").arg(name));
  }

  const Value& m_document;
  const core::design::Design& m_design;
  std::vector<DragHandle> m_handles;
};

}  // namespace

std::vector<DragHandle> dragHandles(const Value& document, const core::design::Design& design) {
  return Handles(document, design).take();
}

const DragHandle* handleAt(const std::vector<DragHandle>& handles, const QPointF& point, double reach) {
  const DragHandle* nearest = nullptr;
  double least = reach;
  for (const DragHandle& handle : handles) {
    const double along = handle.upright ? point.y() : point.x();
    if (along < handle.from - reach || along > handle.to + reach) continue;
    const double away = std::abs((handle.upright ? point.x() : point.y()) - handle.at);
    if (away <= least) {
      least = away;
      nearest = &handle;
    }
  }
  return nearest;
}

std::string draggedMeasure(const DragHandle& handle, const QPointF& from, const QPointF& to,
                           core::units::UnitSystem units) {
  const double moved = handle.upright ? to.x() - from.x() : to.y() - from.y();
  const double value = std::max(0.0, handle.value + handle.perMm * moved);
  if (units == core::units::UnitSystem::Inches) {
    return core::units::entryText(core::units::onStep(value, units, core::units::Rounding::Nearest), units);
  }
  return core::base::shortestNumber(std::round(value * 2) / 2) + " mm";
}

}  // namespace app::designing
