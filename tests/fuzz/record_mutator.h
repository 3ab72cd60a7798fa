#pragma once
// Changes a file of a job handed on so that it stays one nearly always: fields, order, streams, ids, counts, clocks and
// payloads of its events, and its texts with the hashes that name them.
#include <cstdint>
#include <string>

namespace tests {

// The file changed by one to four changes; the same seed gives the same. "" where the text is no JSON object of the
// kind.
std::string mutatedRecord(const std::string& text, std::uint32_t seed);

}  // namespace tests
