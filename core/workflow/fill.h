#pragma once
#include <map>
#include <string>

namespace core::workflow {

// Puts values in place of {names}. A name that has no value stays as it is.
std::string fill(const std::string& text, const std::map<std::string, std::string>& values);

// The template in which a word beside {id} that the id says itself stands once alone: with the id "line" "{id} line"
// becomes "line", "leaf field {id}" with "field" "leaf field", "{id} line" with "rim-line" "{id}".
std::string sayingOnce(const std::string& text, const std::string& id);

}  // namespace core::workflow
