#pragma once
// Decisions about measures of finished work. Only decide.cpp and its neighbours call these.
#include <optional>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/intents/intent.h"
#include "core/jobs/job_state.h"

namespace core::decisions {

using MadeDecision = base::Result<std::vector<record::EventDraft>, base::Message>;

// Returns why a figure cannot have this measure, whichever step measures it: it is implausible, or the first conflict
// that layOut reports for it. Returns nothing where it can.
std::optional<base::Message> refusalOf(const jobs::JobState& state, const std::string& figure, units::Length value,
                                       const std::string& overrules = "");

// Refusals: record.no-such-step; record.not-measured-here; made.no-size, made.too-far; the first conflict that layOut
// reports for the measure.
MadeDecision decideMeasure(const jobs::JobAt& job, const intents::EnterAsMade& intent);
// record.not-measured.
MadeDecision decideForget(const jobs::JobAt& job, const intents::ForgetAsMade& intent);
// Refusals: record.no-such-board, record.window-already-cut, or the conflict the choice would cause.
MadeDecision decideFollow(const jobs::JobAt& job, const intents::ChooseFollow& intent);

// Returns whether a board's window is cut: it was measured, or a finished step used its marks.
bool isCut(const jobs::JobState& state, const std::string& board);

}  // namespace core::decisions
