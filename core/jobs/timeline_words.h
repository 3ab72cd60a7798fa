#pragma once
// What an event says to a person: as its type's traits say, or, where that takes more than its own members, in a
// function of its own. Only timeline.cpp calls this.
#include "core/jobs/timeline.h"

namespace core::jobs {

struct TimelineSaying {
  record::TimelineKind kind = record::TimelineKind::Unknown;
  base::Message what;
};

// `intentsThatUndid`: intents whose events are takings back: taking one of those back is doing again.
TimelineSaying sayingOf(const record::Event& event, const record::Happening& happening, const JobState& state,
                        const shop::Shop& shop, const std::set<std::string>& intentsThatUndid,
                        const TimelineWords& words);

}  // namespace core::jobs
