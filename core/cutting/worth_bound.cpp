#include "core/cutting/worth_bound.h"

#include <algorithm>
#include <cmath>

#include "core/cutting/cover.h"
#include "core/cutting/most_worth.h"
#include "core/cutting/stretched_bound.h"

namespace core::cutting {
namespace {

constexpr std::size_t kMostPositions = 120;
constexpr int kMostTables = 40;           // of what a sheet can hold at most
constexpr std::size_t kMostRivals = 200;  // kinds of pieces looked at for some that cannot share a sheet
// Areas are counted in squares of this side, so that those of all pieces together stay below 2^62.
constexpr std::int64_t kMicrometre = 1000;
constexpr std::int64_t kMillimetre = 1'000'000;
constexpr int kManyPieces = 5000;
constexpr double kRounding =
    1e-11;  // above what ten thousand operations in double can be off by, in parts of the whole
constexpr double kRoundingOfShares = 1e-9;

class Bounding {
 public:
  Bounding(const CuttingProblem& problem, const std::vector<int>& counts, const std::int64_t* kerf)
      : m_problem(problem), m_counts(counts), m_side(problem.pieceCount() > kManyPieces ? kMillimetre : kMicrometre) {
    for (const SheetKind& sheet : problem.sheets) {
      m_kerfs.push_back(kerf != nullptr ? *kerf : sheet.kerf);
      m_leastKerf = m_kerfs.size() == 1 ? m_kerfs.back() : std::min(m_leastKerf, m_kerfs.back());
    }
    for (std::size_t t = 0; t < m_kerfs.size(); ++t) {
      const SheetKind& sheet = problem.sheets[t];
      m_rooms.push_back(upwards(sheet.width + m_kerfs[t]) * upwards(sheet.height + m_kerfs[t]));
    }
    for (const PieceKind& piece : problem.pieces) {
      m_areas.push_back((piece.width + m_leastKerf) / m_side * ((piece.height + m_leastKerf) / m_side));
    }
  }

  Bounds bounds(bool isQuick) {
    byValue(m_areas, false);
    byRates();
    byRivals();
    if (!isQuick) {
      byTables();
      byStretching();
    }
    m_best.worth = std::max(m_best.worth, reachable(m_best.worth));
    return m_best;
  }

 private:
  std::int64_t upwards(std::int64_t length) const { return (length + m_side - 1) / m_side; }

  // Give every piece a value. A sheet holds no more value than its area (where the values are areas), than all pieces
  // that fit it, than the most that guillotine cuts can get out of it. The sheets used must hold the value of all; what
  // the offcuts can hold at most has to come out of new sheets in no case more than the rest.
  //
  // Areas: grown by the least kerf, pieces lie without overlap in a sheet grown by its own kerf. Piece sides are
  // rounded down and sheet sides up, to micrometres.
  void byValue(const std::vector<std::int64_t>& values, bool isTable) {
    std::int64_t need = 0;
    for (std::size_t i = 0; i < values.size(); ++i) need += values[i] * m_counts[i];
    std::vector<Room> fresh, any;
    std::int64_t inOffcuts = 0;
    for (std::size_t t = 0; t < m_problem.sheets.size(); ++t) {
      const SheetKind& sheet = m_problem.sheets[t];
      const std::int64_t room = std::min(need, roomFor(values, t, isTable));
      if (sheet.offcut && room > 0) {
        inOffcuts = sheet.quantity > need / room ? need : std::min(need, inOffcuts + room * sheet.quantity);
      }
      if (!sheet.offcut) fresh.push_back({room, sheet.worth, sheet.quantity});
      any.push_back({room, 1, sheet.quantity});
    }
    raise(leastCost(fresh, need - inOffcuts), leastCost(any, need));
  }

  std::int64_t roomFor(const std::vector<std::int64_t>& values, std::size_t t, bool isTable) {
    const SheetKind& sheet = m_problem.sheets[t];
    std::int64_t room = 0;
    std::vector<ValuedPiece> pieces;
    bool areAreas = true;
    for (std::size_t i = 0; i < values.size(); ++i) {
      const PieceKind& piece = m_problem.pieces[i];
      if (values[i] == 0 || m_counts[i] == 0 || !fits(piece, sheet)) continue;
      areAreas = areAreas && values[i] == m_areas[i];
      room += values[i] * m_counts[i];
      const auto lies = lying(piece, sheet);
      pieces.push_back({lies->width, lies->height, lies->mayTurn, values[i]});
    }
    if (areAreas) room = std::min(room, m_rooms[t]);
    if (!isTable || room == 0 || m_tables >= kMostTables) return room;
    const auto most = mostWorth(sheet.width, sheet.height, m_kerfs[t], pieces, kMostPositions);
    m_tables += most.has_value();
    return most ? std::min(room, *most) : room;
  }

  // The larger pieces alone, by area and by number: what is left between them is lost where nothing else is counted.
  void byTables() {
    std::int64_t largest = 0;
    for (const std::int64_t room : m_rooms) largest = std::max(largest, room);
    std::size_t before = 0;
    for (const int part : {2, 3, 4, 6, 0}) {
      std::vector<std::int64_t> areas(m_areas.size(), 0);
      std::vector<std::int64_t> ones(m_areas.size(), 0);
      std::size_t chosen = 0;
      for (std::size_t i = 0; i < m_areas.size(); ++i) {
        if (m_counts[i] == 0 || (part != 0 && m_areas[i] < largest / part)) continue;
        areas[i] = m_areas[i];
        ones[i] = 1;
        ++chosen;
      }
      if (chosen == before) continue;
      before = chosen;
      byValue(areas, true);
      byValue(ones, true);
    }
  }

  // Worth shared out by area: a sheet that holds less area than it could costs more for each. So a piece costs at
  // least its area at the best rate among the sheets it fits; offcuts take the dearest area they might.
  void byRates() {
    struct Part {
      double rate, area;
    };
    std::vector<Part> forOffcuts;
    double worth = 0;
    for (std::size_t i = 0; i < m_areas.size(); ++i) {
      double rate = -1;
      bool fitsOffcut = false;
      for (std::size_t t = 0; t < m_rooms.size(); ++t) {
        const SheetKind& sheet = m_problem.sheets[t];
        if (!fits(m_problem.pieces[i], sheet)) continue;
        fitsOffcut = fitsOffcut || sheet.offcut;
        const double its = static_cast<double>(sheet.worth) / static_cast<double>(m_rooms[t]);
        if (!sheet.offcut && (rate < 0 || its < rate)) rate = its;
      }
      if (rate < 0) continue;
      const double area = static_cast<double>(m_areas[i]) * m_counts[i];
      worth += rate * area;
      if (fitsOffcut) forOffcuts.push_back({rate, area});
    }
    const double gross = worth;
    double inOffcuts = 0;
    for (std::size_t t = 0; t < m_rooms.size(); ++t) {
      const SheetKind& sheet = m_problem.sheets[t];
      if (sheet.offcut) inOffcuts += static_cast<double>(m_rooms[t]) * sheet.quantity;
    }
    std::sort(forOffcuts.begin(), forOffcuts.end(), [](const Part& a, const Part& b) { return a.rate > b.rate; });
    for (const Part& part : forOffcuts) {
      const double saved = std::min(inOffcuts, part.area);
      worth -= saved * part.rate;
      inOffcuts -= saved;
    }
    const double total = worth - gross * kRounding - kRounding;
    raise(total > 0 ? static_cast<std::int64_t>(std::ceil(total)) : 0, 0);
  }

  // Offcuts cost nothing, so what they could hold at most is charged and taken off again: by area at the least rate of
  // new sheets, or nothing.
  void byStretching() {
    double rate = -1;
    for (std::size_t t = 0; t < m_rooms.size(); ++t) {
      const SheetKind& sheet = m_problem.sheets[t];
      const double its = static_cast<double>(sheet.worth) / static_cast<double>(m_rooms[t]);
      if (!sheet.offcut && (rate < 0 || its < rate)) rate = its;
    }
    const bool areOffcuts = m_problem.sheets.front().offcut;
    for (const double charged : {0.0, std::max(rate, 0.0)}) {
      std::vector<double> costs;
      double offcuts = 0;
      for (std::size_t t = 0; t < m_rooms.size(); ++t) {
        const SheetKind& sheet = m_problem.sheets[t];
        costs.push_back(sheet.offcut ? charged * static_cast<double>(m_rooms[t]) : static_cast<double>(sheet.worth));
        if (sheet.offcut) offcuts += costs.back() * sheet.quantity;
      }
      const double total = stretchedBound(m_problem, m_counts, m_kerfs, costs);
      const double net = total - offcuts - (total + offcuts) * kRoundingOfShares - kRoundingOfShares;
      if (net > 0) raise(static_cast<std::int64_t>(std::ceil(net)), 0);
      if (!areOffcuts) break;
    }
    const double sheets = stretchedBound(m_problem, m_counts, m_kerfs, std::vector<double>(m_rooms.size(), 1.0));
    raise(0, static_cast<std::int64_t>(std::ceil(sheets * (1 - kRoundingOfShares) - kRoundingOfShares)));
  }

  // Worth comes in whole sheets: the least that any number of them come to from `least` up.
  std::int64_t reachable(std::int64_t least) const {
    std::vector<Room> whole;
    for (const SheetKind& sheet : m_problem.sheets) {
      if (!sheet.offcut) whole.push_back({sheet.worth, sheet.worth, sheet.quantity});
    }
    const std::int64_t cost = leastCost(std::move(whole), least);
    return cost == kNotEnough ? least : cost;
  }

  // Pieces of which no two go on any one sheet: each has a sheet of its own, new ones cost at least the cheapest it
  // fits, and as many as there are offcuts are spared at the most.
  void byRivals() {
    std::vector<std::size_t> kinds;
    for (std::size_t i = 0; i < m_areas.size(); ++i) {
      if (m_counts[i] > 0) kinds.push_back(i);
    }
    std::stable_sort(kinds.begin(), kinds.end(), [&](std::size_t a, std::size_t b) { return m_areas[a] > m_areas[b]; });
    kinds.resize(std::min(kinds.size(), kMostRivals));
    std::vector<std::size_t> rivals;
    std::vector<std::int64_t> spared;
    std::int64_t worth = 0;
    int sheets = 0;
    int offcuts = 0;
    for (const SheetKind& sheet : m_problem.sheets) offcuts += sheet.offcut ? sheet.quantity : 0;
    for (const std::size_t kind : kinds) {
      if (std::any_of(rivals.begin(), rivals.end(), [&](std::size_t rival) { return canShare(rival, kind); })) continue;
      rivals.push_back(kind);
      const int count = canShare(kind, kind) ? 1 : m_counts[kind];
      sheets += count;
      std::int64_t cheapest = -1;
      bool fitsOffcut = false;
      for (const SheetKind& sheet : m_problem.sheets) {
        if (!fits(m_problem.pieces[kind], sheet)) continue;
        fitsOffcut = fitsOffcut || sheet.offcut;
        if (!sheet.offcut && (cheapest < 0 || sheet.worth < cheapest)) cheapest = sheet.worth;
      }
      for (int i = 0; cheapest > 0 && i < count; ++i) {
        worth += cheapest;
        if (fitsOffcut) spared.push_back(cheapest);
      }
    }
    std::sort(spared.rbegin(), spared.rend());
    for (int i = 0; i < std::min<int>(offcuts, static_cast<int>(spared.size())); ++i) worth -= spared[i];
    raise(worth, sheets);
  }

  bool canShare(std::size_t a, std::size_t b) const {
    for (std::size_t t = 0; t < m_kerfs.size(); ++t) {
      const auto first = lying(m_problem.pieces[a], m_problem.sheets[t]);
      const auto second = lying(m_problem.pieces[b], m_problem.sheets[t]);
      if (!first || !second) continue;
      const std::int64_t width = m_problem.sheets[t].width;
      const std::int64_t height = m_problem.sheets[t].height;
      for (const bool turnFirst : {false, true}) {
        for (const bool turnSecond : {false, true}) {
          if ((turnFirst && !first->mayTurn) || (turnSecond && !second->mayTurn)) continue;
          const std::int64_t w1 = turnFirst ? first->height : first->width;
          const std::int64_t h1 = turnFirst ? first->width : first->height;
          const std::int64_t w2 = turnSecond ? second->height : second->width;
          const std::int64_t h2 = turnSecond ? second->width : second->height;
          if (w1 + m_kerfs[t] + w2 <= width && std::max(h1, h2) <= height) return true;
          if (h1 + m_kerfs[t] + h2 <= height && std::max(w1, w2) <= width) return true;
        }
      }
    }
    return false;
  }

  void raise(std::int64_t worth, std::int64_t sheets) {
    m_best.worth = std::max(m_best.worth, worth);
    m_best.sheets = static_cast<int>(std::max<std::int64_t>(m_best.sheets, std::min<std::int64_t>(sheets, 1 << 30)));
  }

  const CuttingProblem& m_problem;
  const std::vector<int>& m_counts;
  std::vector<std::int64_t> m_kerfs;
  std::int64_t m_leastKerf = 0;
  std::int64_t m_side;
  std::vector<std::int64_t> m_rooms, m_areas;  // kerf added
  Bounds m_best;
  int m_tables = 0;
};

}  // namespace

Bounds boundsOf(const CuttingProblem& problem, const std::vector<int>& counts, const std::int64_t* kerf, bool isQuick) {
  return Bounding(problem, counts, kerf).bounds(isQuick);
}

}  // namespace core::cutting
