#pragma once
// Ids that sort by the time they were made: UUID version 7 (RFC 9562, section 5.7).
#include <cstdint>
#include <string>

namespace app::convert {

// `utcMilliseconds` from 0 to 2^48 - 1; anything beyond is cut to that range. Of `randomA` the low 12 bits are
// used, of `randomB` the low 62. Lower-case, 36 characters.
std::string uuidVersion7(std::int64_t utcMilliseconds, std::uint64_t randomA, std::uint64_t randomB);

// The same with 74 bits from the system's secure generator.
std::string newUuid(std::int64_t utcMilliseconds);

}  // namespace app::convert
