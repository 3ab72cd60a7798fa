#include "core/materials/fill_sheets.h"

#include <algorithm>
#include <limits>
#include <map>

namespace core::materials {
namespace {

// Of more kinds of sheet no more than so many are tried for one choice.
constexpr int kMostTried = 8;

double product(std::int64_t a, std::int64_t b) { return static_cast<double>(a) * static_cast<double>(b); }

}  // namespace

Filler::Filler(const CuttingProblem& problem, const std::int64_t* kerf) : m_problem(problem) {
  std::map<std::int64_t, std::size_t> known;
  const auto areaOfSheet = [&](int kind) {
    return product(problem.sheets[kind].width + m_kerfs[kind], problem.sheets[kind].height + m_kerfs[kind]);
  };
  for (std::size_t kind = 0; kind < problem.sheets.size(); ++kind) {
    m_kerfs.push_back(kerf != nullptr ? *kerf : problem.sheets[kind].kerf);
    const auto [place, isFresh] = known.emplace(m_kerfs.back(), m_sizes.size());
    if (isFresh) {
      m_sizes.emplace_back();
      for (const PieceKind& piece : problem.pieces) {
        m_sizes.back().push_back({piece.width + m_kerfs.back(), piece.height + m_kerfs.back(), piece.mayTurn});
      }
    }
    m_sizesOf.push_back(place->second);
    (problem.sheets[kind].offcut ? m_offcuts : m_new).push_back(static_cast<int>(kind));
  }
  for (const PieceSize& size : m_sizes.empty() ? std::vector<PieceSize>{} : m_sizes.front()) {
    m_areas.push_back(product(size.width, size.height));
  }
  const auto ratioOf = [&](int kind) { return static_cast<double>(problem.sheets[kind].worth) / areaOfSheet(kind); };
  std::stable_sort(m_offcuts.begin(), m_offcuts.end(), [&](int a, int b) { return areaOfSheet(a) > areaOfSheet(b); });
  std::stable_sort(m_new.begin(), m_new.end(), [&](int a, int b) { return ratioOf(a) < ratioOf(b); });
  if (!m_new.empty()) m_leastRatio = ratioOf(m_new.front());
}

std::vector<SlicedSheet> Filler::fill(const Way& way, std::vector<int>& left, std::vector<int>& onHand) const {
  std::vector<SlicedSheet> sheets;
  Tried tried, best;
  double area = 0;
  int count = 0;
  for (const int kind : way.order) {
    area += left[kind] * m_areas[kind];
    count += left[kind];
  }
  const auto take = [&](int kind, Tried& taken) {
    --onHand[kind];
    area -= areaOf(taken.slices);
    for (const Slice& slice : taken.slices) count -= slice.kind >= 0;
    left.swap(taken.left);
    sheets.push_back({kind, std::move(taken.slices)});
  };
  const int offcuts = static_cast<int>(m_offcuts.size());
  for (int i = 0; i < offcuts && count > 0; ++i) {
    const int kind = m_offcuts[way.smallOffcutsFirst ? offcuts - 1 - i : i];
    while (count > 0 && onHand[kind] > 0 && tryOn(kind, way, left, tried)) take(kind, tried);
  }
  while (count > 0) {
    int bestKind = -1;
    double bestScore = std::numeric_limits<double>::infinity();
    double bestArea = 0;
    int triedOn = 0;
    for (const int kind : m_new) {
      if (onHand[kind] == 0 || !tryOn(kind, way, left, tried)) continue;
      const double placed = areaOf(tried.slices);
      const double worth = static_cast<double>(m_problem.sheets[kind].worth);
      const bool isAll = std::all_of(way.order.begin(), way.order.end(), [&](int k) { return tried.left[k] == 0; });
      const double score = worth + (isAll ? 0 : (area - placed) * m_leastRatio * way.waste);
      if (score < bestScore || (score == bestScore && placed > bestArea)) {
        bestScore = score;
        bestArea = placed;
        bestKind = kind;
        std::swap(best, tried);
      }
      if (++triedOn >= kMostTried) break;
    }
    if (bestKind < 0) break;
    take(bestKind, best);
  }
  return sheets;
}

bool Filler::tryOn(int kind, const Way& way, const std::vector<int>& left, Tried& tried) const {
  const SheetKind& sheet = m_problem.sheets[kind];
  const std::int64_t kerf = m_kerfs[kind];
  tried.left = left;
  tried.slices =
      fillSheet(sheet.width + kerf, sheet.height + kerf, m_sizes[m_sizesOf[kind]], way.order, way.rule, tried.left);
  return !tried.slices.empty();
}

double Filler::areaOf(const std::vector<Slice>& slices) const {
  double area = 0;
  for (const Slice& slice : slices) {
    if (slice.kind >= 0) area += m_areas[slice.kind];
  }
  return area;
}

double Filler::areaOf(const SlicedSheet& sheet) const {
  const SheetKind& kind = m_problem.sheets[sheet.sheet];
  return areaOf(sheet.slices) / product(kind.width, kind.height);
}

}  // namespace core::materials
