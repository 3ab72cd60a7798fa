#include "core/base/check.h"

#include <cstdio>
#include <cstdlib>

namespace core::base {

void checkFailed(const char* expression, const char* file, int line) {
  std::fprintf(stderr, "mountwright: broken promise at %s:%d: %s\n", file, line, expression);
  std::abort();
}

}  // namespace core::base
