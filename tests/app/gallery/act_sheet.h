#pragma once
#include <QDir>

namespace tests {

// Every act with its word, as the tablet paints it: "acts-day.png" and "acts-lamp.png". Returns whether both were kept.
bool paintActs(const QDir& folder);

}  // namespace tests
