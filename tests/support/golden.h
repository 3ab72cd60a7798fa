#pragma once
// Text kept under tests/golden, compared byte for byte, or number for number where a margin is given. A mismatch writes
// the actual text beside it, ending in ".fail", and fails with the first lines that differ. The texts are renewed only
// when UPDATE_GOLDEN=1 is set, and are then reviewed: a missing file is a failure like any other.
#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <sstream>
#include <string>

#include "core/base/text.h"
#include "tests/support/catch.h"
#include "tests/support/files.h"

namespace tests {

inline std::string differingLines(const std::string& expected, const std::string& got) {
  const auto was = core::base::split(expected, '\n');
  const auto is = core::base::split(got, '\n');
  std::string text;
  int told = 0;
  for (std::size_t i = 0; i < std::max(was.size(), is.size()) && told < 10; ++i) {
    const std::string before = i < was.size() ? was[i] : "(no line)";
    const std::string after = i < is.size() ? is[i] : "(no line)";
    if (before == after) continue;
    text += "line " + std::to_string(i + 1) + "\n- " + before + "\n+ " + after + '\n';
    ++told;
  }
  return text;
}

// Returns whether two texts are the same word for word, where numbers may differ within a margin.
inline bool sameButFor(double margin, const std::string& expected, const std::string& got) {
  std::istringstream was(expected), is(got);
  std::string before, after;
  while (was >> before) {
    if (!(is >> after)) return false;
    if (before == after) continue;
    double a = 0, b = 0;
    const auto readA = std::from_chars(before.data(), before.data() + before.size(), a);
    const auto readB = std::from_chars(after.data(), after.data() + after.size(), b);
    const bool numbers = readA.ec == std::errc() && readA.ptr == before.data() + before.size() &&
                         readB.ec == std::errc() && readB.ptr == after.data() + after.size();
    if (!numbers || !(std::fabs(a - b) <= margin)) return false;
  }
  return !(is >> after);
}

// Requires PROJECT_ROOT. `name` is a path under tests/golden.
inline void checkGolden(const std::string& root, const std::string& name, const std::string& got, double margin = 0) {
  const std::string path = root + "/tests/golden/" + name;
  const char* update = std::getenv("UPDATE_GOLDEN");
  if (update != nullptr && std::string(update) == "1") {
    REQUIRE(writeWholeFile(path, got));
    return;
  }
  const auto expected = readWholeFile(path);
  if (expected && (*expected == got || (margin > 0 && sameButFor(margin, *expected, got)))) {
    std::remove((path + ".fail").c_str());
    SUCCEED();
    return;
  }
  writeWholeFile(path + ".fail", got);
  if (!expected) FAIL("no golden file " << name);
  FAIL(name << " differs:\n" << differingLines(*expected, got));
}

}  // namespace tests
