#pragma once
// A sheet's layout as a tree of cuts: pieces at the leaves, each other node two parts side by side or one above the
// other. It holds no lengths, so the same tree can be laid out with any kerf it has room for.
#include <cstdint>
#include <vector>

namespace core::cutting {

struct Slice {
  int first = -1, second = -1;  // nodes; none: a piece
  bool beside = false;          // the parts lie side by side; else the second lies below
  int kind = -1;                // of piece
  bool turned = false;          // against the kind
};

struct SlicedSheet {
  int sheet = 0;              // kind
  std::vector<Slice> slices;  // children before parents; the last is the root
};

struct SlicedPlan {
  std::vector<SlicedSheet> sheets;
  std::vector<int> left;  // pieces not placed, of each kind
  int leftCount = 0;
  std::int64_t worth = 0;  // units

  // Fewer left over, else less worth, else fewer sheets.
  bool isBetterThan(const SlicedPlan& other) const {
    if (leftCount != other.leftCount) return leftCount < other.leftCount;
    if (worth != other.worth) return worth < other.worth;
    return sheets.size() < other.sheets.size();
  }
};

}  // namespace core::cutting
