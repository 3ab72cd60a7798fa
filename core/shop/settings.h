#pragma once
// The choices a maker made once for this tablet. Each choice is an event on the bench's own stream and the newest of
// each kind holds; one that cannot be read leaves the earlier choice in force.
#include <optional>
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/base/result.h"
#include "core/intents/intent.h"
#include "core/record/event.h"
#include "core/units/length.h"
#include "core/units/length_display.h"
#include "core/units/marking.h"
#include "core/units/way.h"

namespace core::shop {

// The distances at which a tablet can stand from the eyes and still be worked.
inline constexpr units::Length kNearest = units::Length::wholeMillimetres(300);
inline constexpr units::Length kFarthest = units::Length::wholeMillimetres(2000);

struct Settings {
  units::UnitSystem units = units::UnitSystem::Millimetres;  // for new designs
  units::Length distance = units::Length::wholeMillimetres(800);
  bool lamp = false;                               // shown for lamp light, or for daylight
  units::Way way = units::Way::Every;              // in which the maker is led
  units::Marking marking = units::Marking::Marks;  // of windows
  bool introduced = false;                         // the first questions were answered or passed over

  friend bool operator==(const Settings&, const Settings&) = default;
};

// Folds the bench stream `stream` alone: each tablet has its own settings. Any order; duplicates are ignored.
Settings foldSettings(std::vector<record::Event> events, const std::string& stream);

// Refusals: settings.no-such {what}, settings.cannot-be {what} {value}.
base::Result<std::vector<record::EventDraft>, base::Message> decideSetting(const intents::ChooseSetting& intent);

}  // namespace core::shop
