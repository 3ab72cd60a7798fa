#pragma once
// Why a wait is thought to take as long as it is shown: the room, this maker's own times, or the label alone.
#include <string>

#include "core/waits/course.h"
#include "core/waits/wait_state.h"

namespace core::waits {

// Fills `basis` and `why`. Ids: room.too-… of a room outside the model; why.room.{cold|cool|warm|hot|even}-{dry|damp|
// even} {factor}; why.learned.slow and .quick {count, percent}, why.learned.true {count}; why.others.slow and .quick
// {percent}; why.label.
void explain(WaitState& state, const WaitTerms& terms, const Learned& learnt, const Course& course,
             const std::optional<units::Room>& room);

}  // namespace core::waits
