#include "core/workflow/fill.h"

namespace core::workflow {

std::string fill(const std::string& text, const std::map<std::string, std::string>& values) {
  std::string filled;
  for (std::size_t at = 0; at < text.size();) {
    const auto open = text.find('{', at);
    const auto close = open == std::string::npos ? open : text.find('}', open);
    if (close == std::string::npos) return filled + text.substr(at);
    filled += text.substr(at, open - at);
    const auto value = values.find(text.substr(open + 1, close - open - 1));
    filled += value == values.end() ? text.substr(open, close - open + 1) : value->second;
    at = close + 1;
  }
  return filled;
}

}  // namespace core::workflow
