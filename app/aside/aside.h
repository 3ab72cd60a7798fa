#pragma once
// Work that may take long, such as asking a slow device, done beside the thread that wants it.
#include <QObject>
#include <functional>

namespace app::aside {

// Runs in the receiver's thread when the work is done.
using Told = std::function<void()>;

// Calls `work` in a thread of its own and then the function it returns in the receiver's thread, which must have an
// event loop and must be the one that calls this. Where the receiver is gone by then, nothing is called. Nobody ever
// waits for the work: a device that never answers holds up neither the receiver's end nor the program's. So `work` must
// own all it touches.
void aside(QObject* receiver, std::function<Told()> work);

}  // namespace app::aside
