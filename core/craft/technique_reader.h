#pragma once
// The strict reader of technique files ("mountwright-technique/1").
#include <optional>
#include <string_view>

#include "core/base/problem.h"
#include "core/craft/technique.h"

namespace core::craft {

struct ReadTechnique {
  std::optional<Technique> technique;  // present only where there are no errors
  base::Problems problems;
};

// Reads one file's text and checks all that can be known from it alone: keys, words, spans that run
// early <= likely <= late, waits that close before they open, missing sources, patterns, figures that exist,
// lengths of titles, sentences and cautions, counts, ids given twice, a cycle within the file.
ReadTechnique readTechnique(std::string_view text, base::Source source = base::Source::File);

}  // namespace core::craft
