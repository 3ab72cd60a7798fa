#pragma once
// A job read, laid out and measured: the whole of what its file means.
#include <optional>
#include <string_view>

#include "core/base/json.h"
#include "core/base/problem.h"
#include "core/design/figures.h"
#include "core/design/job.h"
#include "core/design/layout.h"

namespace core::design {

struct Design {
  Job job;
  Layout layout;
  Figures figures;  // in the job's own units
  AsMade made;      // what was measured of it; nothing in a design just read
};

struct ReadDesign {
  std::optional<Design> design;  // present only where there are no errors
  base::Problems problems;       // errors and notices, every one, in document order once sorted
};

ReadDesign readDesign(std::string_view text, base::Source source = base::Source::File);

// Leads a problem's place back to the nearest value that the file holds: a key may be left to its default.
void settle(base::Problem& problem, const base::Value& root);

// Returns the design with the measures in place of the values `planned` had. The problems are those of the measures:
// where there are errors there is no design. Requires a `planned` that laid out.
ReadDesign remeasured(const Design& planned, AsMade made);

}  // namespace core::design
