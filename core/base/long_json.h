#pragma once
// JSON of documents that have more in them than a job file or a technique.
#include <cstddef>
#include <string_view>

#include "core/base/json.h"

namespace core::base {

// Does as parseJson for a text of at most `most` bytes.
ParsedJson parseJson(std::string_view text, std::size_t most);

}  // namespace core::base
