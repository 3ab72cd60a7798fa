#include "core/base/stated_format.h"

#include "core/base/json.h"

namespace core::base {

std::string statedFormat(std::string_view text, std::size_t most) {
  const ParsedJson json = parseJson(text, most);
  const Value* format = json.root.find("format");
  return format != nullptr && format->kind() == Value::Kind::Text ? format->asText() : "";
}

}  // namespace core::base
