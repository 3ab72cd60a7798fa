#pragma once
// The readers that the rows of several kinds of fields have in common.
#include <string>
#include <vector>

#include "core/craft/fields.h"
#include "core/craft/pattern_reader.h"

namespace core::craft {

inline constexpr bool kRequired = true;
inline constexpr bool kOptional = false;

// A row's reader that puts what Read returns into a member of the whole.
template <auto Member, auto Read, typename Whole>
void into(const base::Node& node, const Scope& scope, Whole& whole, base::Problems& problems) {
  whole.*Member = Read(node, scope, problems);
}

template <std::size_t Most>
std::string phrase(const base::Node& node, const Scope& scope, base::Problems& problems) {
  return readPhrase(node, scope, Most, problems);
}
template <std::size_t Most>
std::vector<std::string> phrases(const base::Node& node, const Scope& scope, base::Problems& problems) {
  return readPhrases(node, scope, Most, problems);
}
// A text without placeholders; empty where it is missing or no text.
template <std::size_t Most>
std::string text(const base::Node& node, const Scope&, base::Problems& problems) {
  return base::readText(node, problems, Most).value_or("");
}
template <Allowed Which>
std::vector<FactPattern> facts(const base::Node& node, const Scope& scope, base::Problems& problems) {
  return readPatterns(node, scope, Which, problems);
}
// False where it is missing.
inline bool truth(const base::Node& node, const Scope&, base::Problems& problems) {
  return base::readBoolean(node, problems).value_or(false);
}

// Reads every row that has a reader, in the order of the rows.
template <typename Fields, typename Whole>
void readFields(const Fields& fields, base::ObjectReader& object, const Scope& scope, Whole& whole,
                base::Problems& problems) {
  for (const auto& field : fields) {
    if (field.read == nullptr) continue;
    field.read(field.required ? object.required(field.key) : object.optional(field.key), scope, whole, problems);
  }
}

}  // namespace core::craft
