#include "core/craft/act_place.h"

namespace core::craft {

std::string_view name(ActPlace place) {
  switch (place) {
    case ActPlace::Tool: return "tool";
    case ActPlace::Work: return "work";
    case ActPlace::Way: return "way";
    case ActPlace::Piece: return "piece";
    case ActPlace::End: return "end";
    case ActPlace::Under: return "under";
    case ActPlace::Aside: return "aside";
  }
  return "";
}

std::optional<ActPlace> actPlace(std::string_view word) {
  for (const ActPlace place : kActPlaces) {
    if (name(place) == word) return place;
  }
  return std::nullopt;
}

}  // namespace core::craft
