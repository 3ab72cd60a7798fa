// A job file of any bytes: it is read or every problem has a message and a place, and what is read has figures that
// are all finite and shown.
#include <cmath>
#include <cstdint>
#include <string_view>

#include "core/base/check.h"
#include "core/design/design.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto read = core::design::readDesign({reinterpret_cast<const char*>(data), size});
  for (const auto& problem : read.problems.sorted()) {
    ENSURE(!problem.message.id.empty());
    ENSURE(problem.line == 0 || problem.column > 0);
    ENSURE(problem.pointer.empty() || problem.pointer.front() == '/');
  }
  if (!read.design) {
    ENSURE(read.problems.hasErrors());
    return 0;
  }
  ENSURE(!read.problems.hasErrors());
  ENSURE(!read.design->figures.all().empty());
  for (const auto& figure : read.design->figures.all()) {
    ENSURE(std::isfinite(figure.value));
    ENSURE(!figure.display.empty());
    ENSURE(read.design->figures.find(figure.id)->value == figure.value);
  }
  return 0;
}
