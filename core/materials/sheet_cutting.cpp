#include "core/materials/sheet_cutting.h"

#include <algorithm>
#include <numeric>

#include "core/base/check.h"

namespace core::materials {
namespace {

double areaOf(Length width, Length height) { return width.inMillimetres() * height.inMillimetres(); }

// A sheet being cut: each piece goes into the first part that holds it, and the part is cut down to it.
class Sheet {
 public:
  Sheet(std::size_t index, const StockSheet& stock) : m_kerf(stock.kerf) {
    cut.stock = index;
    cut.rest.push_back({Length(), Length(), stock.width - 2 * stock.margin, stock.height - 2 * stock.margin});
  }

  bool place(std::size_t index, const WantedPiece& piece) {
    for (std::size_t i = 0; i < cut.rest.size(); ++i) {
      const Area part = cut.rest[i];
      for (const bool turned : {false, true}) {
        if (turned && !piece.mayTurn) continue;
        const Length width = turned ? piece.height : piece.width;
        const Length height = turned ? piece.width : piece.height;
        if (width > part.width || height > part.height) continue;
        cut.pieces.push_back({index, part.x, part.y, turned});
        cut.rest.erase(cut.rest.begin() + static_cast<std::ptrdiff_t>(i));
        divide(part, width, height);
        return true;
      }
    }
    return false;
  }

  CutSheet cut;

 private:
  void divide(const Area& part, Length width, Length height) {
    Area row = part;
    if (height < part.height) {
      cut.cuts.push_back({part, false, height});
      row.height = height;
      const Length left = part.height - height - m_kerf;
      if (left > Length()) cut.rest.push_back({part.x, part.y + height + m_kerf, part.width, left});
    }
    if (width < part.width) {
      cut.cuts.push_back({row, true, width});
      const Length left = part.width - width - m_kerf;
      if (left > Length()) cut.rest.push_back({part.x + width + m_kerf, part.y, left, height});
    }
    std::stable_sort(cut.rest.begin(), cut.rest.end(), [](const Area& a, const Area& b) {
      return areaOf(a.width, a.height) > areaOf(b.width, b.height);
    });
  }

  Length m_kerf;
};

}  // namespace

CuttingPlan cutSheets(const std::vector<WantedPiece>& pieces, const std::vector<StockSheet>& stock) {
  CuttingPlan plan;
  std::vector<std::size_t> order(pieces.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return areaOf(pieces[a].width, pieces[a].height) > areaOf(pieces[b].width, pieces[b].height);
  });
  const bool priced = std::all_of(stock.begin(), stock.end(), [](const StockSheet& sheet) { return sheet.price; });
  const auto worth = [&](const StockSheet& sheet) {
    if (sheet.offcut) return 0.0;
    return priced ? *sheet.price : areaOf(sheet.width, sheet.height);
  };
  std::vector<std::size_t> kinds(stock.size());
  std::iota(kinds.begin(), kinds.end(), std::size_t{0});
  std::stable_sort(kinds.begin(), kinds.end(), [&](std::size_t a, std::size_t b) {
    return std::make_pair(!stock[a].offcut, worth(stock[a])) < std::make_pair(!stock[b].offcut, worth(stock[b]));
  });
  std::vector<int> used(stock.size(), 0);
  std::vector<Sheet> sheets;
  for (const std::size_t piece : order) {
    bool placed =
        std::any_of(sheets.begin(), sheets.end(), [&](Sheet& sheet) { return sheet.place(piece, pieces[piece]); });
    for (std::size_t i = 0; i < kinds.size() && !placed; ++i) {
      const StockSheet& kind = stock[kinds[i]];
      if (kind.quantity && used[kinds[i]] >= *kind.quantity) continue;
      Sheet fresh(kinds[i], kind);
      placed = fresh.place(piece, pieces[piece]);
      if (!placed) continue;
      ++used[kinds[i]];
      sheets.push_back(std::move(fresh));
    }
    if (!placed) plan.unplaced.push_back(piece);
  }
  std::stable_sort(sheets.begin(), sheets.end(), [&](const Sheet& a, const Sheet& b) {
    return stock[a.cut.stock].offcut && !stock[b.cut.stock].offcut;
  });
  for (Sheet& sheet : sheets) {
    plan.worth += worth(stock[sheet.cut.stock]);
    plan.sheets.push_back(std::move(sheet.cut));
  }
  return plan;
}

}  // namespace core::materials
