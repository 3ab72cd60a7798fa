#pragma once
// A length of time that is not known exactly: one in ten is done by `early`, half by `likely`, nine in ten by `late`.
// Times are always carried and shown as spans; the touch test decides.
#include "core/units/duration.h"

namespace core::units {

struct Span {
  Duration early;
  Duration likely;
  Duration late;

  friend bool operator==(const Span&, const Span&) = default;
};

// The time by which a share `p` (0.02 to 0.98) is done: straight lines between the three stated quantiles,
// continued beyond them at the outer slopes and never below zero.
Duration quantile(const Span& span, double p);
// Returns the share done by `at`, by the same lines: 0.02 to 0.98, the ends standing for everything beyond them.
double share(const Span& span, Duration at);

}  // namespace core::units
