#pragma once
// The sections of a design beyond boards and borders. Only this folder uses it.
#include "app/designing/builder.h"

namespace app::designing {

// Adds a field for the bottom border in proportion to the top.
void theWeighting(Builder& build);
// Adds a field for the outer size where it is not whole, with the ways to make it so.
void theWholeSizes(Builder& build);
// Adds fields for the opening of a frame's rebate, which the mount and its borders then follow.
void theFrameAtHand(Builder& build);
void theWindow(Builder& build);
// Adds the fields for how far the mount covers the artwork, or leaves air round it.
void theCover(Builder& build);
void theBands(Builder& build);
// Adds a field for the corners of one band, where its pattern has to meet, with the ways to make it meet.
void theCorners(Builder& build, std::size_t band);
void theLines(Builder& build);
void theWash(Builder& build);
void theSpandrel(Builder& build);
void theLeaf(Builder& build);
void theBevelColours(Builder& build);

}  // namespace app::designing
