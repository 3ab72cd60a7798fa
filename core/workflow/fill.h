#pragma once
#include <map>
#include <string>

namespace core::workflow {

// Puts values in place of {names}. A name that has no value stays as it is.
std::string fill(const std::string& text, const std::map<std::string, std::string>& values);

}  // namespace core::workflow
