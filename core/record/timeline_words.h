#pragma once
// What an event says to a person: as its type's traits say, or, where that takes more than its own members, in a
// function of its own. Only timeline.cpp calls this.
#include "core/record/timeline.h"

namespace core::record {

struct TimelineSaying {
  TimelineKind kind = TimelineKind::Unknown;
  base::Message what;
};

// `intentsThatUndid`: intents whose events are takings back: taking one of those back is doing again.
TimelineSaying sayingOf(const Event& event, const Happening& happening, const JobState& state, const Shop& shop,
                        const std::set<std::string>& intentsThatUndid, const TimelineWords& words);

}  // namespace core::record
