#pragma once

namespace app::viewmodels {

// Registers the QML types of this library. A static library's own registration is dropped by the linker where nothing
// refers to it; call this before any QML is loaded.
void registerTypes();

}  // namespace app::viewmodels
