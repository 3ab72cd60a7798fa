#include "core/record/photograph_payload.h"

#include "core/base/text.h"

namespace core::record {

using base::Message;

Message refusedFile(const PhotographFile& file) {
  const bool known = file.type == "jpeg" || file.type == "png" || file.type == "webp";
  if (!known || !base::isHash(file.hash) || file.bytes <= 0 || file.width <= 0 || file.height <= 0)
    return Message("photograph.malformed");
  if (file.bytes > kLargestPhotograph) {
    return Message("photograph.too-large").with("most", kLargestPhotograph / 1'000'000);
  }
  // Divided, since the two multiplied may be more than a number holds.
  if (file.width > kMostPixels / file.height) {
    return Message("photograph.too-many-pixels")
        .with("width", file.width)
        .with("height", file.height)
        .with("most", kMostPixels / 1'000'000);
  }
  return {};
}

}  // namespace core::record
