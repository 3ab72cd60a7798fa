#pragma once
// What the care sheets of the core have no words for.
#include <QString>

#include "core/sheets/care_sheet.h"

namespace app::pages {

// Days and moments in the zone they were written in; in UTC, and said so, where this machine does not know that one.
core::sheets::CareWords careWords();

// What a line rests on: "entered", "computed", "as the source says".
QString careKnown(const core::sheets::CareLine& line);

}  // namespace app::pages
