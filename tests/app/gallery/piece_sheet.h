#pragma once
#include <QDir>

namespace tests {

// The demo pieces and the richest one, made and still to come, as the tablet paints them: "materials-day.png" and
// "materials-lamp.png". Returns whether both were kept.
bool paintPieces(const QDir& folder);

}  // namespace tests
