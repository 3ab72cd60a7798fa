#pragma once
// Every way guillotine cuts can bring the pieces of a bundle together, as the rectangles that hold them: of each
// bundle the sizes of which none is both narrower and lower than another.
//
// Complete: whatever tree of cuts a sheet has, its first cut parts the bundle in two, each in a rectangle no smaller
// than one of its own front; beside or above each other these make the rectangle of the whole.
#include <cstdint>
#include <utility>
#include <vector>

#include "core/cutting/bundles.h"
#include "core/cutting/cutting_problem.h"
#include "core/cutting/slicing.h"

namespace core::cutting {

// Lengths with the kerf added. Its origin is a part of the bundle, with one of that part's sizes and one of the rest's.
struct BundleSize {
  std::int64_t width = 0, height = 0;
  int part = 0;  // zero: one piece
  int partSize = 0, restSize = 0;
  bool beside = false;
  bool turned = false;
};

class Fronts {
 public:
  // Serves the sheets of one manner: `like` is one of them, `rooms` are their sizes, kerf added. Bundles that fit none
  // of them are left out.
  Fronts(const CuttingProblem& problem, const Bundles& bundles, const SheetKind& like,
         std::vector<std::pair<std::int64_t, std::int64_t>> rooms);

  // Narrowest first.
  const std::vector<BundleSize>& of(int bundle) const { return m_fronts[bundle]; }
  bool fit(int bundle, std::int64_t width, std::int64_t height) const;
  // Lays out the size that leaves the largest rest whole. Requires that it fits.
  std::vector<Slice> layOut(int bundle, std::int64_t width, std::int64_t height) const;

 private:
  void addPiece(int kind, const PieceKind& piece, const SheetKind& like);
  void addUnions(int bundle);
  void addBeside(int bundle, int part);
  void addAbove(int bundle, int part);
  void offer(const BundleSize& size);
  void settle();
  bool isRoomFor(std::int64_t width, std::int64_t height) const;
  int build(int bundle, int size, std::vector<Slice>& slices) const;

  const Bundles& m_bundles;
  std::vector<std::pair<std::int64_t, std::int64_t>> m_rooms;
  std::vector<std::vector<BundleSize>> m_fronts;
  std::vector<int> m_kindOf;  // of a bundle of one piece
  std::vector<BundleSize> m_front, m_offered;
};

}  // namespace core::cutting
