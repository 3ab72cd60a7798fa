#pragma once
#include <cstddef>
#include <string>
#include <string_view>

namespace core::base {

// What a file says of itself in its member "format", "mountwright-record/1"; "" where it says nothing, is no JSON, or
// is longer than `most` bytes.
std::string statedFormat(std::string_view text, std::size_t most);

}  // namespace core::base
