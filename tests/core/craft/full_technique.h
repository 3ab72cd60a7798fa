#pragma once
// One technique that says everything the format can say, and ways to break it in one place.
#include <string>
#include <string_view>
#include <vector>

namespace craft_tests {

// Well formed, without a problem.
std::string fullTechnique();

// fullTechnique() with `from`, which must stand in it once, replaced.
std::string changed(std::string_view from, std::string_view to);

// The problems of reading `text`, each as "pointer id", in document order.
std::vector<std::string> problemsOf(const std::string& text);

// One way to break the full technique, and the one problem that must come of it.
struct Broken {
  const char* claim;
  const char* from;
  const char* to;
  const char* problem;
};

// Requires each to fail with its problem and no other.
void requireEach(const std::vector<Broken>& cases);

}  // namespace craft_tests
