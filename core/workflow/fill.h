#pragma once
#include <map>
#include <string>

namespace core::workflow {

// Puts values in place of {names}. A name that has no value stays as it is.
std::string fill(const std::string& text, const std::map<std::string, std::string>& values);

// Returns the template changed so that a word of the id that is also beside {id} appears only once: with the id "line",
// "{id} line" becomes "line"; with "field", "leaf field {id}" becomes "leaf field"; with "rim-line", "{id} line"
// becomes "{id}".
std::string sayingOnce(const std::string& text, const std::string& id);

}  // namespace core::workflow
