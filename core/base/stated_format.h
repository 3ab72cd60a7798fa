#pragma once
#include <cstddef>
#include <string>
#include <string_view>

namespace core::base {

// Returns a file's member "format", such as "mountwright-record/1"; "" where the file has none, is no JSON, or is
// longer than `most` bytes.
std::string statedFormat(std::string_view text, std::size_t most);

}  // namespace core::base
