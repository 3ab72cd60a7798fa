#pragma once
// Explains the length a wait is shown with: the room, this maker's own times, or the label alone.
#include <string>

#include "core/waits/course.h"
#include "core/waits/wait_state.h"

namespace core::waits {

// Fills `basis` and `why`. Ids: those of dryingFactor for a room outside the model; why.room.* {factor}, by how the
// room differs from the reference; why.last.* and why.learned.* {count, percent} of this maker's own times of this
// kind; why.others.* {percent} where only other kinds have taught; why.label.
void explain(WaitState& state, const WaitTerms& terms, const Learned& learnt, const Course& course,
             const std::optional<units::Room>& room);

}  // namespace core::waits
