#pragma once
// Ids that sort by the time they were made: UUID version 7 (RFC 9562, section 5.7).
#include <cstdint>
#include <string>

namespace app::convert {

// `utcMilliseconds` from 0 to 2^48 - 1; anything beyond is cut to that range. The low 12 bits of `randomA` and the low
// 62 of `randomB` are used. Lower-case, 36 characters.
std::string uuidVersion7(std::int64_t utcMilliseconds, std::uint64_t randomA, std::uint64_t randomB);

// Does the same with 74 bits from the system's secure generator.
std::string newUuid(std::int64_t utcMilliseconds);

}  // namespace app::convert
