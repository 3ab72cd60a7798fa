#pragma once
// The sections of a design beyond boards and borders. Only this room uses it.
#include "app/designing/builder.h"

namespace app::designing {

// The bottom border against the top.
void theWeighting(Builder& build);
void theWindow(Builder& build);
void theBands(Builder& build);
// A field for the corners of one band, where its pattern has to meet; how they can be made to.
void theCorners(Builder& build, std::size_t band);
void theLines(Builder& build);
void theWash(Builder& build);
void theSpandrel(Builder& build);
void theLeaf(Builder& build);
void theBevelColours(Builder& build);

}  // namespace app::designing
