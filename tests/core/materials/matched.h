#pragma once
// Matches of jobs given as text, and options put back into that text.
#include <algorithm>

#include "core/materials/repeat_match.h"
#include "tests/support/worked_example.h"

namespace tests {

inline core::units::Length tenths(int count) { return core::units::Length::nanometres(count * std::int64_t{100'000}); }

inline core::materials::RepeatMatch matchIn(const std::string& text, std::size_t band = 0) {
  const auto design = designOf(text);
  return core::materials::matchOf(design.job, design.layout, band);
}

// The first option that changes exactly these measures.
inline const core::materials::MatchOption* optionWith(const core::materials::RepeatMatch& match,
                                                      const std::vector<core::materials::Measure>& measures,
                                                      std::size_t centrings = 0) {
  for (const auto& option : match.options) {
    const bool same = std::equal(option.changes.begin(), option.changes.end(), measures.begin(), measures.end(),
                                 [](const auto& change, auto measure) { return change.measure == measure; });
    if (same && option.centrings.size() == centrings) return &option;
  }
  return nullptr;
}

inline std::string editAt(const core::materials::MatchOption& option, const std::string& pointer) {
  for (const auto& edit : option.edits) {
    if (edit.pointer == pointer) return edit.value;
  }
  return "none";
}

inline bool says(const std::vector<core::base::Message>& messages, const std::string& id) {
  return std::any_of(messages.begin(), messages.end(), [&](const auto& message) { return message.id == id; });
}

}  // namespace tests
