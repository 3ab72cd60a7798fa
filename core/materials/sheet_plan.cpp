#include "core/materials/sheet_plan.h"

#include <algorithm>
#include <map>

namespace core::materials {
namespace {

using base::Message;
using design::SheetSide;
using design::Stock;
using design::StockKind;

SheetSide longSide(const Stock& stock) { return stock.width >= stock.height ? SheetSide::Width : SheetSide::Height; }

Area mirrored(const Area& area) { return {area.y, area.x, area.height, area.width}; }

bool worthKeeping(const Area& area, StockKind kind) {
  const Length shorter = std::min(area.width, area.height);
  const Length longer = std::max(area.width, area.height);
  if (kind == StockKind::Board) return shorter >= kKeptBoard;
  return shorter >= kKeptPaper && longer >= kKeptPaperLong;
}

// Pieces of one group on its stock. Sheets are handed to the cutting with the direction that matters (the pattern's
// where there are patterned pieces, else the fibres') along their width, and what comes back is turned with them.
class Group {
 public:
  Group(const std::vector<CutPiece>& pieces, const std::vector<Stock>& stock, std::vector<int>& used, StockGroup& group)
      : m_pieces(pieces), m_stock(stock), m_used(used), m_group(group) {
    for (const std::size_t i : group.pieces) {
      m_patterned = m_patterned || pieces[i].patterned;
      m_grained = m_grained || (!pieces[i].patterned && pieces[i].grain != PieceGrain::Any);
    }
  }

  void plan() {
    chooseStock();
    for (const std::size_t i : m_group.pieces) {
      for (int number = 1; number <= m_pieces[i].count; ++number) {
        m_wanted.push_back(wanted(m_pieces[i], number));
        m_origin.emplace_back(i, number);
      }
    }
    std::vector<StockSheet> sheets;
    for (const std::size_t i : m_chosen) sheets.push_back(sheetOf(i));
    const CuttingPlan plan = cutSheets(m_wanted, sheets);
    for (const CutSheet& sheet : plan.sheets) addSheet(sheet);
    std::map<std::size_t, int> unplaced;
    for (const std::size_t i : plan.unplaced) ++unplaced[m_origin[i].first];
    for (const auto& [piece, count] : unplaced) m_group.unplaced.push_back({piece, count, !fitsAny(piece)});
    m_group.exact = plan.exact;
    m_group.worth = plan.worth;
    m_group.bound = plan.bound;
    m_group.gap = plan.gap();
    m_group.byPrice = std::all_of(sheets.begin(), sheets.end(), [](const StockSheet& one) { return one.price; });
  }

 private:
  SheetSide axisOf(const Stock& stock) const {
    if (m_patterned && stock.pattern) return *stock.pattern;
    return stock.grain.value_or(longSide(stock));
  }
  bool isTurned(std::size_t stock) const { return axisOf(m_stock[stock]) == SheetSide::Height; }
  // Whether the fibres run across the direction that lies along the width.
  bool grainAcross(const Stock& stock) const { return stock.grain && *stock.grain != axisOf(stock); }

  // All pieces lie the same way on every sheet, so sheets whose fibres and pattern cross where those of the first do
  // not cannot serve with it.
  void chooseStock() {
    const Stock& first = m_stock[m_group.stock.front()];
    m_across = m_patterned && grainAcross(first);
    for (const std::size_t i : m_group.stock) {
      const Stock& stock = m_stock[i];
      if (m_grained && m_patterned && grainAcross(stock) != m_across) {
        m_group.notes.push_back(Message("materials.grain-unlike").with("stock", stock.id).with("other", first.id));
        continue;
      }
      m_chosen.push_back(i);
      if (m_patterned && !stock.pattern) {
        m_group.notes.push_back(Message("materials.pattern-unknown").with("stock", stock.id).with("side", side(stock)));
      }
      if (!stock.grain && wishesGrain()) {
        m_group.notes.push_back(Message("materials.grain-unknown").with("stock", stock.id).with("side", side(stock)));
      }
      if (stock.grain && againstPattern(stock)) {
        m_group.notes.push_back(Message("materials.grain-against-pattern").with("stock", stock.id));
      }
    }
  }

  std::string side(const Stock& stock) const { return axisOf(stock) == SheetSide::Width ? "width" : "height"; }

  bool wishesGrain() const {
    return std::any_of(m_group.pieces.begin(), m_group.pieces.end(),
                       [&](std::size_t i) { return m_pieces[i].grain != PieceGrain::Any; });
  }

  bool againstPattern(const Stock& stock) const {
    return std::any_of(m_group.pieces.begin(), m_group.pieces.end(), [&](std::size_t i) {
      if (!m_pieces[i].patterned || m_pieces[i].grain == PieceGrain::Any) return false;
      return (m_pieces[i].grain == PieceGrain::Height) != grainAcross(stock);
    });
  }

  // Whether the piece's height, not its width, goes along the width of the sheet as it is handed over.
  bool standsUp(const CutPiece& piece) const {
    if (piece.patterned || piece.grain == PieceGrain::Any) return false;
    return (piece.grain == PieceGrain::Height) != m_across;
  }

  WantedPiece wanted(const CutPiece& piece, int number) const {
    WantedPiece one;
    one.id = piece.id + '#' + std::to_string(number);
    one.width = piece.neededWidth();
    one.height = piece.height;
    if (standsUp(piece)) std::swap(one.width, one.height);
    one.mayTurn = !piece.patterned && piece.grain == PieceGrain::Any;
    return one;
  }

  StockSheet sheetOf(std::size_t index) const {
    const Stock& stock = m_stock[index];
    StockSheet sheet;
    sheet.id = stock.id;
    sheet.width = isTurned(index) ? stock.height : stock.width;
    sheet.height = isTurned(index) ? stock.width : stock.height;
    sheet.margin = stock.usableMargin;
    sheet.kerf = stock.kerf;
    if (stock.quantity) sheet.quantity = std::max(0, *stock.quantity - m_used[index]);
    if (stock.price) sheet.price = stock.price->approximately();
    sheet.offcut = stock.offcut;
    return sheet;
  }

  bool fitsAny(std::size_t piece) const {
    const WantedPiece one = wanted(m_pieces[piece], 1);
    return std::any_of(m_chosen.begin(), m_chosen.end(), [&](std::size_t i) {
      const StockSheet sheet = sheetOf(i);
      const Length width = sheet.width - 2 * sheet.margin;
      const Length height = sheet.height - 2 * sheet.margin;
      return (one.width <= width && one.height <= height) ||
             (one.mayTurn && one.height <= width && one.width <= height);
    });
  }

  void addSheet(const CutSheet& cut) {
    const std::size_t stock = m_chosen[cut.stock];
    const bool turned = isTurned(stock);
    const auto back = [&](const Area& area) { return turned ? mirrored(area) : area; };
    PlanSheet sheet;
    sheet.stock = stock;
    sheet.number = ++m_used[stock];
    for (const PlacedPiece& placed : cut.pieces) {
      const WantedPiece& one = m_wanted[placed.piece];
      const auto [piece, number] = m_origin[placed.piece];
      const Area at = {placed.x, placed.y, placed.turned ? one.height : one.width,
                       placed.turned ? one.width : one.height};
      const bool upright = (standsUp(m_pieces[piece]) != placed.turned) != turned;
      sheet.pieces.push_back({piece, number, back(at), upright});
    }
    for (const SheetCut& one : cut.cuts) sheet.cuts.push_back({back(one.part), one.upright != turned, one.fence});
    for (const Area& area : cut.rest) {
      if (worthKeeping(area, m_stock[stock].kind)) sheet.offcuts.push_back(back(area));
    }
    m_group.sheets.push_back(std::move(sheet));
  }

  const std::vector<CutPiece>& m_pieces;
  const std::vector<Stock>& m_stock;
  std::vector<int>& m_used;
  StockGroup& m_group;
  bool m_patterned = false;
  bool m_grained = false;  // a piece without pattern minds the fibres
  bool m_across = false;   // fibres run across the pattern
  std::vector<std::size_t> m_chosen;
  std::vector<WantedPiece> m_wanted;
  std::vector<std::pair<std::size_t, int>> m_origin;  // piece and number of each wanted
};

}  // namespace

bool SheetPlan::isShort() const {
  return std::any_of(groups.begin(), groups.end(), [](const StockGroup& group) { return !group.unplaced.empty(); });
}

SheetPlan planSheets(const std::vector<CutPiece>& pieces, const std::vector<Stock>& listed,
                     const std::vector<Stock>& kept) {
  SheetPlan plan;
  plan.matches = matchStock(pieces, listed);
  matchKept(plan.matches, pieces, listed, kept);
  std::vector<Stock> stock = listed;
  stock.insert(stock.end(), kept.begin(), kept.end());
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const auto& from = plan.matches[i].stock;
    if (from.empty()) continue;
    const auto found = std::find_if(plan.groups.begin(), plan.groups.end(),
                                    [&](const StockGroup& group) { return group.stock == from; });
    StockGroup& group = found == plan.groups.end() ? plan.groups.emplace_back() : *found;
    group.stock = from;
    group.pieces.push_back(i);
  }
  std::stable_sort(plan.groups.begin(), plan.groups.end(),
                   [](const StockGroup& a, const StockGroup& b) { return a.stock.size() < b.stock.size(); });
  std::vector<int> used(stock.size(), 0);
  for (StockGroup& group : plan.groups) Group(pieces, stock, used, group).plan();
  return plan;
}

}  // namespace core::materials
