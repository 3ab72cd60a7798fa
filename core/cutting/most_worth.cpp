#include "core/cutting/most_worth.h"

#include <algorithm>
#include <set>

namespace core::cutting {
namespace {

// Zero and every sum of `sizes` up to `whole`, ascending; nothing where there are too many.
std::optional<std::vector<std::int64_t>> sumsUpTo(std::int64_t whole, const std::set<std::int64_t>& sizes,
                                                  std::size_t most) {
  std::set<std::int64_t> sums{0};
  for (auto sum = sums.begin(); sum != sums.end(); ++sum) {
    for (const std::int64_t size : sizes) {
      if (*sum + size > whole) break;
      sums.insert(*sum + size);
    }
    if (sums.size() > most) return std::nullopt;
  }
  return std::vector<std::int64_t>(sums.begin(), sums.end());
}

std::size_t lastUpTo(const std::vector<std::int64_t>& sums, std::int64_t length) {
  return static_cast<std::size_t>(std::upper_bound(sums.begin(), sums.end(), length) - sums.begin()) - 1;
}

// For each position the cuts up to its middle: where the cut lies and the position the other part comes down to.
std::vector<std::vector<std::pair<std::size_t, std::size_t>>> cutsOf(const std::vector<std::int64_t>& sums) {
  std::vector<std::vector<std::pair<std::size_t, std::size_t>>> cuts(sums.size());
  for (std::size_t i = 1; i < sums.size(); ++i) {
    for (std::size_t at = 1; at < i && 2 * sums[at] <= sums[i]; ++at) {
      cuts[i].emplace_back(at, lastUpTo(sums, sums[i] - sums[at]));
    }
  }
  return cuts;
}

}  // namespace

std::optional<std::int64_t> mostWorth(std::int64_t width, std::int64_t height, std::int64_t kerf,
                                      const std::vector<ValuedPiece>& pieces, std::size_t mostPositions) {
  width += kerf;
  height += kerf;
  std::vector<ValuedPiece> fitting;
  std::set<std::int64_t> widths, heights;
  const auto add = [&](std::int64_t w, std::int64_t h, std::int64_t value) {
    if (w > width || h > height) return;
    widths.insert(w);
    heights.insert(h);
    fitting.push_back({w, h, false, value});
  };
  for (const ValuedPiece& piece : pieces) {
    add(piece.width + kerf, piece.height + kerf, piece.value);
    if (piece.mayTurn) add(piece.height + kerf, piece.width + kerf, piece.value);
  }
  const auto across = sumsUpTo(width, widths, mostPositions);
  const auto down = sumsUpTo(height, heights, mostPositions);
  if (!across || !down) return std::nullopt;

  const std::size_t rows = down->size();
  std::vector<std::int64_t> best(across->size() * rows, 0);
  const auto at = [&](std::size_t x, std::size_t y) -> std::int64_t& { return best[x * rows + y]; };
  for (const ValuedPiece& piece : fitting) {
    std::int64_t& one = at(lastUpTo(*across, piece.width), lastUpTo(*down, piece.height));
    one = std::max(one, piece.value);
  }
  const auto upright = cutsOf(*across);
  const auto level = cutsOf(*down);
  for (std::size_t x = 1; x < across->size(); ++x) {
    for (std::size_t y = 1; y < rows; ++y) {
      std::int64_t most = std::max({at(x, y), at(x - 1, y), at(x, y - 1)});
      for (const auto& [cut, other] : upright[x]) most = std::max(most, at(cut, y) + at(other, y));
      for (const auto& [cut, other] : level[y]) most = std::max(most, at(x, cut) + at(x, other));
      at(x, y) = most;
    }
  }
  return best.back();
}

}  // namespace core::cutting
