#pragma once
// Finds out whether a message bus lives before the bus library is let near it: the library waits for a bus that is
// there and does not answer, and so does every thread and the program's end with it.
#include <QString>
#include <chrono>

namespace app::awake {

// The first of the addresses behind which somebody answers as a bus does; "" where that is none. Blocks for as long as
// `patience` for each address.
QString answeringAddress(const QString& addresses, std::chrono::milliseconds patience);

}  // namespace app::awake
