#pragma once
// What lies against the glazing of a framed piece.
#include "core/design/job.h"

namespace core::design {

// Returns whether what is painted, ruled or gilded on the mount's face will lie against the glazing: the piece is
// framed, and no spacer holds it off. A bevel lies deeper and papers are no paint: neither counts. Common practice, no
// source.
bool faceTouchesGlazing(const Job& job);

}  // namespace core::design
