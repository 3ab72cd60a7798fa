#pragma once
// Texts of the care sheets that the core has no words for.
#include <QString>

#include "core/sheets/care_sheet.h"

namespace app::pages {

// Returns words for days and moments in the zone they were written in; in UTC, marked so, where this machine does not
// know that zone.
core::sheets::CareWords careWords();

// Returns the source of a line: "entered", "computed", "as the source says".
QString careKnown(const core::sheets::CareLine& line);

}  // namespace app::pages
