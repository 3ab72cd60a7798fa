#include "core/base/near.h"

#include <algorithm>

namespace core::base {
namespace {

constexpr std::size_t kMost = 3;
// Longer words are nobody's key; they would only cost time.
constexpr std::size_t kLongest = 100;

// Optimal string alignment distance, by rows.
std::size_t apart(std::string_view a, std::string_view b) {
  std::vector<std::size_t> before(b.size() + 1), last(b.size() + 1), now(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) last[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    now[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t changed = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
      now[j] = std::min({last[j] + 1, now[j - 1] + 1, changed});
      const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
      if (swapped) now[j] = std::min(now[j], before[j - 2] + 1);
    }
    std::swap(before, last);
    std::swap(last, now);
  }
  return last[b.size()];
}

}  // namespace

std::string nearest(std::string_view word, const std::vector<std::string>& known) {
  if (word.empty() || word.size() > kLongest) return "";
  std::size_t least = std::min(kMost, word.size() / 3) + 1;
  std::string found;
  for (const std::string& one : known) {
    if (one.size() > kLongest) continue;
    const std::size_t distance = apart(word, one);
    if (distance < least) {
      least = distance;
      found = one;
    }
  }
  return found;
}

}  // namespace core::base
