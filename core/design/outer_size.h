#pragma once
// Another outer size of the mount, reached by its borders alone: a whole one, or one for a frame that is at hand. The
// artwork, its window, the boards and what is laid on the mount stay as they are.
//
// Borders given by the sides and a weighting, or by the outer size, are then given by the outer size with the weighting
// as entered. Four borders stay four, because their differences are the maker's own: left and right change alike, top
// and bottom keep their ratio.
#include <optional>
#include <vector>

#include "core/base/message.h"
#include "core/design/job_edit.h"
#include "core/design/layout.h"

namespace core::design {

// What is not set stays as it is; to the steps of the display (0.1 mm, 1/32 in) where it has to be written down anew.
struct OuterSize {
  std::optional<Length> width, height;
};

struct SizeChange {
  std::vector<base::Message> sizes;    // sized.width, sized.height {was, now}: what changes of the size
  std::vector<base::Message> borders;  // sized.border-* {was, now} of each border whose change is seen
  std::vector<base::Message> besides;  // what else is then otherwise: sized.by-outer
  std::vector<JobEdit> edits;          // none where the mount has that size already
  Borders to;
  Length cost;              // by how much the size changes, width and height together
  base::Problems problems;  // of the job with it: where there are errors it does not fit
};

// Returns the change that makes the mount of that size. Requires `layout` to be the job's, without errors, and sizes of
// more than nothing. Pure.
SizeChange sizedTo(const Job& job, const Layout& layout, const OuterSize& size);

// Returns what an outer size is whole in: a millimetre, or an eighth of an inch where the job is in inches.
Length wholeStep(units::UnitSystem system);
// Returns whether an outer size of so many mm is whole. What is off by less than a nanometre is nobody's.
bool isWhole(double millimetres, units::UnitSystem system);

// Returns the changes to the whole sizes next below and above, those of the least change first; only such as fit. None
// where width and height are whole already. Requires `layout` to be the job's, without errors. Pure.
std::vector<SizeChange> wholeSizes(const Job& job, const Layout& layout);

}  // namespace core::design
