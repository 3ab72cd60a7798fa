#pragma once
// What holds for the file of every photograph, whatever names it.
#include <cstdint>
#include <string>

#include "core/base/message.h"

namespace core::record {

// A photograph can be stored where its file has at most 100 MB and it has at most 250 million pixels.
inline constexpr std::int64_t kLargestPhotograph = 100'000'000;
inline constexpr std::int64_t kMostPixels = 250'000'000;

struct PhotographFile {
  const std::string& hash;
  const std::string& type;
  std::int64_t bytes = 0;
  std::int64_t width = 0, height = 0;  // pixels
};

// Returns why a file cannot be one of a photograph: photograph.malformed, photograph.too-large,
// photograph.too-many-pixels. The message is empty where it can.
base::Message refusedFile(const PhotographFile& file);

}  // namespace core::record
