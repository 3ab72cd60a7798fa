#pragma once
// A picture of a printed sheet, as a maker would photograph it, drawn for the purpose: three repeats of 24 mm.
#include <QString>

namespace tests {

inline constexpr double kPrintAcross = 72;  // mm

// Returns whether it was written there.
bool writeSheetPrint(const QString& path);

}  // namespace tests
