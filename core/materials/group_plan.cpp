#include "core/materials/group_plan.h"

#include <algorithm>
#include <map>

namespace core::materials::detail {
namespace {

using base::Message;
using design::SheetSide;
using design::Stock;
using design::StockKind;

SheetSide longSide(const Stock& stock) { return stock.width >= stock.height ? SheetSide::Width : SheetSide::Height; }

// The side the pattern runs along and the one the fibres run along. What is not stated of the two is taken from the
// other, or from the long side.
SheetSide patternSide(const Stock& stock) {
  return stock.pattern ? *stock.pattern : stock.grain.value_or(longSide(stock));
}
SheetSide fibreSide(const Stock& stock) { return stock.grain ? *stock.grain : stock.pattern.value_or(longSide(stock)); }

cutting::Area mirrored(const cutting::Area& area) { return {area.y, area.x, area.height, area.width}; }

bool worthKeeping(const cutting::Area& area, StockKind kind) {
  const Length shorter = std::min(area.width, area.height);
  const Length longer = std::max(area.width, area.height);
  if (kind == StockKind::Board) return shorter >= kKeptBoard;
  return shorter >= kKeptPaper && longer >= kKeptPaperLong;
}

bool mindsFibres(const CutPiece& piece) { return !piece.patterned && piece.grain != PieceGrain::Any; }

// Sheets are handed to the cutting with their pattern along their width, or their fibres where no piece is patterned;
// the result is turned with them.
class Group {
 public:
  Group(const std::vector<CutPiece>& pieces, const std::vector<StockMatch>& matches, const SheetsThere& there,
        StockGroup& group)
      : m_pieces(pieces), m_matches(matches), m_there(there), m_group(group) {
    for (const std::size_t i : group.pieces) m_isPatterned = m_isPatterned || pieces[i].patterned;
  }

  void plan() {
    for (const std::size_t i : m_group.pieces) {
      for (int number = 1; number <= m_pieces[i].count; ++number) {
        m_wanted.push_back(wanted(m_pieces[i]));
        m_origin.emplace_back(i, number);
      }
    }
    for (const std::size_t i : m_group.stock) {
      note(i);
      m_sheets.push_back(sheetOf(i));
    }
    const cutting::CuttingPlan plan = cutting::cutSheets(m_wanted, m_sheets);
    std::map<std::size_t, int> numbers;
    for (const cutting::CutSheet& sheet : plan.sheets) addSheet(sheet, ++numbers[sheet.stock]);
    std::map<std::size_t, int> unplaced;
    for (const std::size_t i : plan.unplaced) ++unplaced[m_origin[i].first];
    for (const auto& [piece, count] : unplaced) m_group.unplaced.push_back({piece, count, !fitsAny(m_pieces[piece])});
    m_group.exact = plan.exact;
    m_group.byPrice = plan.byPrice;
    m_group.worth = plan.worth;
    m_group.bound = plan.bound;
    m_group.gap = plan.gap();
  }

 private:
  SheetSide axisOf(const Stock& stock) const { return m_isPatterned ? patternSide(stock) : fibreSide(stock); }
  bool isTurned(const Stock& stock) const { return axisOf(stock) == SheetSide::Height; }

  template <typename Asks>
  bool servesOne(std::size_t stock, Asks asks) const {
    return std::any_of(m_group.pieces.begin(), m_group.pieces.end(), [&](std::size_t i) {
      const auto& from = m_matches[i].stock;
      return std::find(from.begin(), from.end(), stock) != from.end() && asks(m_pieces[i]);
    });
  }

  void note(std::size_t index) {
    const Stock& stock = m_there.at(index);
    const auto say = [&](const char* id) { m_group.notes.push_back(Message(id).with("stock", stock.id)); };
    const auto saySide = [&](const char* id, SheetSide side) {
      m_group.notes.push_back(
          Message(id).with("stock", stock.id).with("side", side == SheetSide::Width ? "width" : "height"));
    };
    if (!stock.pattern && servesOne(index, [](const CutPiece& piece) { return piece.patterned; })) {
      saySide("materials.pattern-unknown", patternSide(stock));
    }
    if (!stock.grain && servesOne(index, [](const CutPiece& piece) { return piece.grain != PieceGrain::Any; })) {
      saySide("materials.grain-unknown", fibreSide(stock));
    }
    const bool isAcross = stock.grain && *stock.grain != patternSide(stock);
    const auto isAgainst = [&](const CutPiece& piece) {
      return piece.patterned && piece.grain != PieceGrain::Any && (piece.grain == PieceGrain::Height) != isAcross;
    };
    if (stock.grain && servesOne(index, isAgainst)) say("materials.grain-against-pattern");
  }

  // Returns whether the piece is passed on with its height in place of its width.
  static bool standsUp(const CutPiece& piece) { return mindsFibres(piece) && piece.grain == PieceGrain::Height; }

  static cutting::WantedPiece wanted(const CutPiece& piece) {
    cutting::WantedPiece one;
    one.id = one.of = piece.id;
    one.width = piece.neededWidth();
    one.height = piece.height;
    if (standsUp(piece)) std::swap(one.width, one.height);
    one.withFibres = mindsFibres(piece);
    one.mayTurn = !piece.patterned && piece.grain == PieceGrain::Any;
    return one;
  }

  cutting::StockSheet sheetOf(std::size_t index) const {
    const Stock& stock = m_there.at(index);
    const bool turned = isTurned(stock);
    cutting::StockSheet sheet;
    sheet.id = stock.id;
    sheet.width = turned ? stock.height : stock.width;
    sheet.height = turned ? stock.width : stock.height;
    sheet.margin = stock.usableMargin;
    sheet.kerf = stock.kerf;
    sheet.quantity = stock.quantity;
    if (stock.price) sheet.price = stock.price->approximately();
    sheet.offcut = stock.offcut;
    sheet.fibresUpright = fibreSide(stock) != axisOf(stock);
    servesOne(index, [&](const CutPiece& piece) {
      sheet.serves.push_back(piece.id);
      return false;
    });
    return sheet;
  }

  bool fitsAny(const CutPiece& piece) const {
    const cutting::WantedPiece one = wanted(piece);
    return std::any_of(m_sheets.begin(), m_sheets.end(), [&](const cutting::StockSheet& sheet) {
      return std::find(sheet.serves.begin(), sheet.serves.end(), piece.id) != sheet.serves.end() && fits(one, sheet);
    });
  }

  void addSheet(const cutting::CutSheet& cut, int number) {
    const std::size_t index = m_group.stock[cut.stock];
    const Stock& stock = m_there.at(index);
    const bool turned = isTurned(stock);
    const auto back = [&](const cutting::Area& area) { return turned ? mirrored(area) : area; };
    PlanSheet sheet;
    sheet.stock = index;
    sheet.number = number;
    for (const cutting::PlacedPiece& placed : cut.pieces) {
      const cutting::WantedPiece& one = m_wanted[placed.piece];
      const auto [piece, numberOfPiece] = m_origin[placed.piece];
      const cutting::Area at = {placed.x, placed.y, placed.turned ? one.height : one.width,
                                placed.turned ? one.width : one.height};
      const bool upright = (standsUp(m_pieces[piece]) != placed.turned) != turned;
      sheet.pieces.push_back({piece, numberOfPiece, back(at), upright});
    }
    for (const cutting::SheetCut& one : cut.cuts)
      sheet.cuts.push_back({back(one.part), one.upright != turned, one.fence});
    for (const cutting::Area& area : cut.rest) {
      if (worthKeeping(area, stock.kind)) sheet.offcuts.push_back(back(area));
    }
    m_group.sheets.push_back(std::move(sheet));
  }

  const std::vector<CutPiece>& m_pieces;
  const std::vector<StockMatch>& m_matches;
  const SheetsThere& m_there;
  StockGroup& m_group;
  bool m_isPatterned = false;
  std::vector<cutting::StockSheet> m_sheets;  // one for each of the group's stock
  std::vector<cutting::WantedPiece> m_wanted;
  std::vector<std::pair<std::size_t, int>> m_origin;  // piece and number of each wanted
};

}  // namespace

void planGroup(const std::vector<CutPiece>& pieces, const std::vector<StockMatch>& matches, const SheetsThere& there,
               StockGroup& group) {
  Group(pieces, matches, there, group).plan();
}

}  // namespace core::materials::detail
