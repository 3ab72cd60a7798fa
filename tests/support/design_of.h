#pragma once
// A job read from a text that has to be valid.
#include <string>

#include "core/design/design.h"
#include "tests/support/catch.h"

namespace tests {

// Requires a text without errors.
inline core::design::Design designOf(const std::string& text) {
  core::design::ReadDesign read = core::design::readDesign(text);
  for (const auto& problem : read.problems.sorted()) UNSCOPED_INFO(core::base::dump(problem));
  REQUIRE(read.design.has_value());
  return *std::move(read.design);
}

}  // namespace tests
