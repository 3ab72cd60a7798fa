#include "core/record/appearance_payload.h"

#include <algorithm>
#include <limits>

#include "core/base/text.h"
#include "core/record/event.h"
#include "core/record/photograph_payload.h"
#include "core/record/texts.h"

namespace core::record {
namespace {

using base::Message;
using base::Value;
using intents::Appearance;
using intents::SheetPicture;

constexpr std::size_t kLengthOfColour = 7;  // "#rrggbb"

bool isColour(const std::string& text) {
  const auto isDigit = [](char c) {
    return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f') || (c >= 'A' && c <= 'F');
  };
  return text.size() == kLengthOfColour && text.front() == '#' && std::all_of(text.begin() + 1, text.end(), isDigit);
}

Message refusedPicture(const SheetPicture& picture) {
  if (Message refused = refusedFile({picture.hash, picture.type, picture.bytes, picture.width, picture.height});
      !refused.id.empty())
    return refused;
  if (picture.across <= units::Length() || picture.across > kLongestAcross)
    return Message("appearance.across-out-of-range");
  return {};
}

// Returns nothing where it is no whole number of pixels that a picture can have.
std::optional<int> pixelsOf(const Value& picture, const char* key) {
  const auto pixels = integerOf(picture, key);
  return pixels && *pixels > 0 && *pixels <= std::numeric_limits<int>::max() ? std::optional(static_cast<int>(*pixels))
                                                                             : std::nullopt;
}

std::optional<SheetPicture> readPicture(const Value& value) {
  if (value.kind() != Value::Kind::Object) return std::nullopt;
  const auto bytes = integerOf(value, "bytes");
  const auto across = integerOf(value, "across");
  const auto width = pixelsOf(value, "width");
  const auto height = pixelsOf(value, "height");
  if (!bytes || !across || !width || !height) return std::nullopt;
  return SheetPicture{
      textOf(value, "hash"), *bytes, textOf(value, "type"), *width, *height, units::Length::nanometres(*across)};
}

}  // namespace

Message refusedAppearance(const Appearance& appearance) {
  if (Message refused = refusedLine(appearance.material, true); !refused.id.empty()) return refused;
  if (!appearance.colour.empty() && !isColour(appearance.colour))
    return Message("appearance.no-colour").with("colour", base::shownText(appearance.colour, base::Lines::One));
  return appearance.picture ? refusedPicture(*appearance.picture) : Message();
}

void write(Value& payload, const Appearance& appearance) {
  payload.set("material", Value::text(appearance.material));
  if (!appearance.colour.empty()) payload.set("colour", Value::text(appearance.colour));
  if (!appearance.picture) return;
  Value picture = Value::object();
  picture.set("hash", Value::text(appearance.picture->hash));
  picture.set("bytes", Value::integer(appearance.picture->bytes));
  picture.set("type", Value::text(appearance.picture->type));
  picture.set("width", Value::integer(appearance.picture->width));
  picture.set("height", Value::integer(appearance.picture->height));
  picture.set("across", Value::integer(appearance.picture->across.inNanometres()));
  payload.set("picture", std::move(picture));
}

std::optional<Appearance> readAppearance(const Value& payload) {
  Appearance appearance;
  appearance.material = shownLineOf(payload, "material");
  appearance.colour = textOf(payload, "colour");
  if (const Value* picture = payload.find("picture"); picture != nullptr) {
    appearance.picture = readPicture(*picture);
    if (!appearance.picture) return std::nullopt;
  }
  return refusedAppearance(appearance).id.empty() ? std::optional(appearance) : std::nullopt;
}

}  // namespace core::record
