#pragma once
// How a material of the shop looks on the glass, as its maker tells it: a colour of its own, and of a paper the picture
// of its sheet.
#include <cstdint>
#include <optional>
#include <string>

#include "core/units/length.h"

namespace core::intents {

// A photograph that is kept already (app/photographs), and how much of the sheet it shows, which is its scale.
struct SheetPicture {
  std::string hash;           // lower-case hex SHA-256 of its bytes
  std::int64_t bytes = 0;     // more than 0
  std::string type;           // "jpeg", "png" or "webp"
  int width = 0, height = 0;  // pixels, as stored
  units::Length across;       // of the sheet, from the picture's left edge to its right

  friend bool operator==(const SheetPicture&, const SheetPicture&) = default;
};

struct Appearance {
  std::string material;  // the name that jobs use
  std::string colour;    // sRGB, "#rrggbb"; "" where its name tells it
  std::optional<SheetPicture> picture;

  // Nothing of its own: the material looks as its name says.
  bool plain() const { return colour.empty() && !picture; }

  friend bool operator==(const Appearance&, const Appearance&) = default;
};

// Replaces whatever the material looked like; a plain one takes it away.
struct GiveAppearance {
  Appearance appearance;
};

}  // namespace core::intents
