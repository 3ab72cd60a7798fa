#include "core/shop/settings.h"

#include <map>

#include "core/record/happening.h"

namespace core::shop {

// This file uses the types of the record throughout.
using namespace record;
namespace {

using base::Message;
using units::UnitSystem;

using Take = bool (*)(Settings& settings, const std::string& value);

// Records of earlier versions have the words in their place.
bool isTruth(const std::string& value, bool& holds) {
  const bool isTrue = value == "true" || value == "yes";
  if (!isTrue && value != "false" && value != "no") return false;
  holds = isTrue;
  return true;
}

// The functions that apply a setting, by its name; each returns whether the value is valid.
const std::map<std::string, Take, std::less<>>& takers() {
  static const std::map<std::string, Take, std::less<>> kTakers = {
      {"units",
       [](Settings& settings, const std::string& value) {
         if (value != "mm" && value != "in") return false;
         settings.units = value == "in" ? UnitSystem::Inches : UnitSystem::Millimetres;
         return true;
       }},
      {"distance",
       [](Settings& settings, const std::string& value) {
         const auto read = units::parseLength(value);
         if (!read || read.value().length < kNearest || read.value().length > kFarthest) return false;
         settings.distance = read.value().length;
         return true;
       }},
      {"lamp", [](Settings& settings, const std::string& value) { return isTruth(value, settings.lamp); }},
      {"way",
       [](Settings& settings, const std::string& value) {
         const auto way = units::way(value);
         settings.way = way.value_or(settings.way);
         return way.has_value();
       }},
      {"marking",
       [](Settings& settings, const std::string& value) {
         const auto marking = units::marking(value);
         settings.marking = marking.value_or(settings.marking);
         return marking.has_value();
       }},
      {"introduced", [](Settings& settings, const std::string& value) { return isTruth(value, settings.introduced); }},
  };
  return kTakers;
}

}  // namespace

Settings foldSettings(std::vector<Event> events, const std::string& stream) {
  arrange(events);
  Settings settings;
  for (const Event& event : events) {
    const auto chosen = event.stream == stream ? as<SettingChosen>(event) : std::nullopt;
    const auto taker = chosen ? takers().find(chosen->what) : takers().end();
    if (taker != takers().end()) static_cast<void>(taker->second(settings, chosen->value));
  }
  return settings;
}

base::Result<std::vector<EventDraft>, Message> decideSetting(const intents::ChooseSetting& intent) {
  const auto taker = takers().find(intent.what);
  if (taker == takers().end()) return Message("settings.no-such").with("what", intent.what);
  Settings tried;
  if (!taker->second(tried, intent.value)) {
    return Message("settings.cannot-be").with("what", intent.what).with("value", intent.value);
  }
  return std::vector{draftOf(SettingChosen{intent.what, intent.value})};
}

}  // namespace core::shop
