#pragma once
// One sheet filled by rule of thumb: piece after piece goes into the corner of one of the parts still free, and that
// part is cut in two beside it.
#include <cstdint>
#include <vector>

#include "core/cutting/slicing.h"

namespace core::cutting {

// A piece's size with the kerf added, as it lies on the sheet.
struct PieceSize {
  std::int64_t width = 0, height = 0;
  bool mayTurn = false;
  bool turned = false;  // against its kind, as it is
  double area = 0;
};

struct FillRule {
  enum class Choice { SmallestPart, NarrowestGap, ShortestLongGap, LargestPart };
  enum class Split { WholeAlongLonger, WholeAlongShorter, EvenParts, Upright, Level };
  static constexpr int kChoices = 4;
  static constexpr int kSplits = 5;
  Choice choice = Choice::SmallestPart;
  Split split = Split::WholeAlongLonger;
};

// Meant to be filled over and over: it keeps its memory.
class SheetFilling {
 public:
  // Pieces are tried in the order of their kinds in `order`, as many of each as are `left`. Sizes with the kerf added.
  void fill(std::int64_t width, std::int64_t height, const std::vector<PieceSize>& sizes, const std::vector<int>& order,
            FillRule rule, const std::vector<int>& left);

  double area() const { return m_area; }
  const std::vector<int>& placed() const { return m_placed; }  // kinds
  std::vector<Slice> slices() const;                           // none where nothing fitted

 private:
  struct Free {
    std::int64_t width = 0, height = 0;
    int node = 0;
    double area = 0;
  };

  bool place(const PieceSize& size, int kind);
  template <typename Score>
  bool placeBy(const PieceSize& size, int kind, Score score);
  void cut(const Free& part, int kind, bool turned, std::int64_t width, std::int64_t height);
  bool isUprightFirst(std::int64_t width, std::int64_t height, std::int64_t right, std::int64_t below) const;
  int add();
  void keep(std::int64_t width, std::int64_t height, int node);
  int collect(int node, std::vector<Slice>& kept) const;

  FillRule m_rule;
  double m_area = 0;
  std::vector<int> m_placed;
  std::int64_t m_leastWidth = 0, m_leastHeight = 0;  // of the pieces that may still follow
  std::int64_t m_widest = 0, m_tallest = 0;          // no free part is wider or taller
  std::vector<Slice> m_nodes;
  std::vector<Free> m_free;
};

}  // namespace core::cutting
