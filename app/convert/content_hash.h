#pragma once
#include <string>
#include <string_view>

namespace app::convert {

// SHA-256 (FIPS 180-4) of the bytes, as 64 lower-case hexadecimal digits.
std::string contentHash(std::string_view bytes);

}  // namespace app::convert
