#pragma once
// A figure of a design that must be there.
#include "core/design/design.h"
#include "core/design/figures.h"
#include "tests/support/catch.h"

namespace tests {

inline double figureOf(const core::design::Design& design, const std::string& id) {
  const auto* figure = design.figures.find(id);
  INFO(id);
  REQUIRE(figure != nullptr);
  return figure->value;
}

}  // namespace tests
