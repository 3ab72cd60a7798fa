#include "core/cutting/fill_sheets.h"

#include <algorithm>
#include <limits>
#include <map>

namespace core::cutting {
namespace {

// At most this many kinds of sheet are tried for one choice.
constexpr int kMostTried = 8;
// The side of what a sheet does not serve: it fits nowhere.
constexpr std::int64_t kNowhere = std::int64_t{1} << 60;

double product(std::int64_t a, std::int64_t b) { return static_cast<double>(a) * static_cast<double>(b); }

}  // namespace

Filler::Filler(const CuttingProblem& problem, const std::int64_t* kerf) : m_problem(problem) {
  std::map<SheetManner, std::size_t> known;
  const auto areaOfSheet = [&](int kind) {
    return product(problem.sheets[kind].width + m_kerfs[kind], problem.sheets[kind].height + m_kerfs[kind]);
  };
  for (std::size_t kind = 0; kind < problem.sheets.size(); ++kind) {
    m_kerfs.push_back(kerf != nullptr ? *kerf : problem.sheets[kind].kerf);
    const auto [place, isFresh] = known.emplace(mannerOf(problem.sheets[kind]), m_sizes.size());
    if (isFresh) {
      m_sizes.emplace_back();
      for (const PieceKind& piece : problem.pieces) {
        const double area = product(piece.width + m_kerfs.back(), piece.height + m_kerfs.back());
        if (const auto lies = lying(piece, problem.sheets[kind])) {
          m_sizes.back().push_back(
              {lies->width + m_kerfs.back(), lies->height + m_kerfs.back(), lies->mayTurn, lies->turned, area});
        } else {
          m_sizes.back().push_back({kNowhere, kNowhere, false, false, area});
        }
      }
    }
    m_sizesOf.push_back(place->second);
    (problem.sheets[kind].offcut ? m_offcuts : m_new).push_back(static_cast<int>(kind));
  }
  const auto ratioOf = [&](int kind) { return static_cast<double>(problem.sheets[kind].worth) / areaOfSheet(kind); };
  std::stable_sort(m_offcuts.begin(), m_offcuts.end(), [&](int a, int b) { return areaOfSheet(a) > areaOfSheet(b); });
  std::stable_sort(m_new.begin(), m_new.end(), [&](int a, int b) { return ratioOf(a) < ratioOf(b); });
  if (!m_new.empty()) m_leastRatio = ratioOf(m_new.front());
}

std::vector<SlicedSheet> Filler::fill(const Way& way, std::vector<int>& left, std::vector<int>& onHand) const {
  std::vector<SlicedSheet> sheets;
  SheetFilling scratch, tried, best;
  double area = 0;
  std::size_t count = 0;
  for (const int kind : way.order) {
    area += left[kind] * m_sizes.front()[kind].area;
    count += static_cast<std::size_t>(left[kind]);
  }
  const auto take = [&](int kind, const SheetFilling& filling) {
    --onHand[kind];
    area -= filling.area();
    count -= filling.placed().size();
    for (const int piece : filling.placed()) --left[piece];
    sheets.push_back({kind, filling.slices()});
  };
  const int offcuts = static_cast<int>(m_offcuts.size());
  for (int i = 0; i < offcuts && count > 0; ++i) {
    const int kind = m_offcuts[way.smallOffcutsFirst ? offcuts - 1 - i : i];
    while (count > 0 && onHand[kind] > 0) {
      fillBest(kind, way, left, tried, scratch);
      if (tried.placed().empty()) break;
      take(kind, tried);
    }
  }
  while (count > 0) {
    int bestKind = -1;
    double bestScore = std::numeric_limits<double>::infinity();
    int triedOn = 0;
    for (const int kind : m_new) {
      if (onHand[kind] == 0) continue;
      fillBest(kind, way, left, tried, scratch);
      if (tried.placed().empty()) continue;
      const double others = tried.placed().size() == count ? 0 : (area - tried.area()) * m_leastRatio * way.waste;
      const double score = static_cast<double>(m_problem.sheets[kind].worth) + others;
      if (score < bestScore || (score == bestScore && tried.area() > best.area())) {
        bestScore = score;
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

void Filler::fillBest(int kind, const Way& way, const std::vector<int>& left, SheetFilling& best,
                      SheetFilling& tried) const {
  const SheetKind& sheet = m_problem.sheets[kind];
  for (std::size_t i = 0; i < way.rules.size(); ++i) {
    SheetFilling& filling = i == 0 ? best : tried;
    filling.fill(sheet.width + m_kerfs[kind], sheet.height + m_kerfs[kind], m_sizes[m_sizesOf[kind]], way.order,
                 way.rules[i], left);
    if (i > 0 && tried.area() > best.area()) std::swap(best, tried);
  }
}

double Filler::fullness(const SlicedSheet& sheet) const {
  const SheetKind& kind = m_problem.sheets[sheet.sheet];
  double area = 0;
  for (const Slice& slice : sheet.slices) {
    if (slice.kind >= 0) area += m_sizes[m_sizesOf[sheet.sheet]][slice.kind].area;
  }
  return area / product(kind.width, kind.height);
}

}  // namespace core::cutting
