#pragma once
// Words an event for a person: by the message its type's traits name, or in a function of its own where that needs more
// than the event's members. Only timeline.cpp calls this.
#include "core/jobs/timeline.h"

namespace core::jobs {

struct TimelineSaying {
  record::TimelineKind kind = record::TimelineKind::Unknown;
  base::Message what;
};

// `intentsThatUndid` holds the intents whose events take something back; taking one of those back is a redo.
TimelineSaying sayingOf(const record::Event& event, const record::Happening& happening, const JobState& state,
                        const shop::Shop& shop, const std::set<std::string>& intentsThatUndid,
                        const TimelineWords& words);

}  // namespace core::jobs
