#pragma once
// Colours by the names makers give them.
#include <QColor>
#include <string>

namespace app::painting {

// Returns the first colour that the words of a name tell: "copper", "pale sea green", "ochre laid paper", or a name or
// #rrggbb as the web writes it; invalid where none does.
QColor colourIn(const std::string& words);

// Returns whether the name is that of a metal, which glints.
bool isMetal(const std::string& name);

}  // namespace app::painting
