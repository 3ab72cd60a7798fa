// An outline of any bytes: refused with a message, or read; what is read prints and reads back to the same bits, can be
// measured, mirrored and moved whatever it looks like, and what comes of moving it closes.
#include <algorithm>
#include <cstdint>
#include <string_view>

#include "core/base/check.h"
#include "core/geometry/move.h"
#include "core/geometry/region.h"

using namespace core::geometry;

namespace {

void checkSame(const Outline& outline) {
  const std::string text = outlineText(outline);
  const auto again = parseOutline(text);
  ENSURE(again);
  ENSURE(again.value() == outline);
  ENSURE(outlineText(again.value()) == text);
}

void checkClosed(const Outline& outline) {
  const auto& segments = outline.segments();
  for (std::size_t i = 0; i < segments.size(); ++i) {
    const Segment& next = segments[(i + 1) % segments.size()];
    if (std::holds_alternative<OvalArc>(segments[i]) || std::holds_alternative<OvalArc>(next)) continue;
    ENSURE(endOf(segments[i]) == startOf(next));
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto parsed = parseOutline({reinterpret_cast<const char*>(data), std::min<std::size_t>(size, 4096)});
  if (!parsed) {
    ENSURE(!parsed.error().id.empty());
    return 0;
  }
  const Outline& outline = parsed.value();
  checkSame(outline);
  checkClosed(outline);
  (void)outline.perimeter();
  (void)outline.contains({1, 2});
  (void)outline.distanceTo({3, -4});
  const Rectangle box = outline.bounds();
  checkClosed(outline.mirrored((box.left + box.right) / 2));
  (void)area({{outlineOf(box), outline}}, {{outline.shifted({1, 0.5}), {}}});
  for (const double d : {6.0, -2.0, 0.003, -40.0}) {
    const auto other = moved(outline, d);
    if (!other) {
      ENSURE(!name(other.error().kind).empty());
      continue;
    }
    checkClosed(other.value());
    (void)other.value().area();
  }
  return 0;
}
