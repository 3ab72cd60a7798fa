// Whatever bytes come in as a technique file, reading ends, and what it lets through can be worked.
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "core/base/check.h"
#include "core/craft/catalogue.h"
#include "core/craft/technique_reader.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  auto read = core::craft::readTechnique(text);
  ENSURE(read.technique.has_value() != read.problems.hasErrors());
  if (!read.technique) return 0;
  ENSURE(!read.technique->steps.empty());
  for (const core::craft::Step& step : read.technique->steps) {
    ENSURE(!step.id.empty() && !step.sentences.empty());
    for (const core::craft::Need& need : step.needs) ENSURE(!need.alternatives.empty());
    for (const core::craft::Wait& wait : step.waits) ENSURE(wait.closes.has_value() == wait.ifMissed.has_value());
  }
  core::craft::Catalogue catalogue;
  catalogue.add(*std::move(read.technique));
  core::craft::checkCatalogue(catalogue);
  return 0;
}
