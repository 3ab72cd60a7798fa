#include "core/materials/stock_match.h"

#include <algorithm>
#include <set>
#include <tuple>

#include "core/base/text.h"

namespace core::materials {
namespace {

using base::Message;
using design::Stock;
using design::StockKind;

// A name as an id would say it.
std::string asId(std::string text) {
  for (char& c : text) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    if (c == ' ') c = '-';
  }
  return text;
}

bool isNamed(const Stock& stock, const std::string& material) {
  return stock.material.empty() ? stock.id == asId(material) : stock.material == material;
}

bool isAsThick(const std::optional<Length>& stock, const std::optional<Length>& piece) {
  if (!stock || !piece) return false;
  const Length apart = *stock < *piece ? *piece - *stock : *stock - *piece;
  return apart <= kSameThickness;
}

class Matcher {
 public:
  Matcher(const std::vector<CutPiece>& pieces, const std::vector<Stock>& stock)
      : m_pieces(pieces), m_stock(stock), m_matches(pieces.size()) {}

  std::vector<StockMatch> run() {
    for (std::size_t i = 0; i < m_pieces.size(); ++i) {
      if (m_pieces[i].ofPaper()) {
        matchPaper(i);
      } else if (!isBought(m_pieces[i].use)) {
        matchBoard(i);
      }
    }
    for (std::size_t i = 0; i < m_stock.size(); ++i) settleThickness(i);
    return std::move(m_matches);
  }

 private:
  template <typename Serves>
  std::vector<std::size_t> stockThat(StockKind kind, Serves serves) const {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < m_stock.size(); ++i) {
      if (m_stock[i].kind == kind && serves(m_stock[i])) found.push_back(i);
    }
    return found;
  }

  MatchedBy byName(const std::vector<std::size_t>& found) const {
    const bool stated = std::any_of(found.begin(), found.end(), [&](auto i) { return !m_stock[i].material.empty(); });
    return stated ? MatchedBy::Material : MatchedBy::Id;
  }

  void matchPaper(std::size_t index) {
    const CutPiece& piece = m_pieces[index];
    StockMatch& match = m_matches[index];
    match.stock = stockThat(StockKind::Paper, [&](const Stock& one) { return isNamed(one, piece.material); });
    if (!match.stock.empty()) {
      match.by = byName(match.stock);
      return;
    }
    const auto papers = stockThat(StockKind::Paper, [](const Stock&) { return true; });
    const bool onePaper = std::all_of(m_pieces.begin(), m_pieces.end(), [&](const CutPiece& other) {
      return !other.ofPaper() || other.material == piece.material;
    });
    if (!onePaper || papers.size() != 1 || !m_stock[papers[0]].material.empty()) return;
    match.stock = papers;
    match.by = MatchedBy::OnlyPaper;
    match.notes.push_back(
        Message("materials.only-paper").with("stock", m_stock[papers[0]].id).with("paper", piece.material));
  }

  void matchBoard(std::size_t index) {
    const CutPiece& piece = m_pieces[index];
    StockMatch& match = m_matches[index];
    const auto fits = [&](const Stock& one) { return piece.material.empty() || isNamed(one, piece.material); };
    match.stock = stockThat(StockKind::Board,
                            [&](const Stock& one) { return fits(one) && isAsThick(one.thickness, piece.thickness); });
    const bool stated = !match.stock.empty();
    if (!stated && piece.use != PieceUse::Backing) {
      match.stock = stockThat(StockKind::Board, [&](const Stock& one) { return fits(one) && !one.thickness; });
    }
    if (match.stock.empty()) return;
    if (!piece.material.empty()) {
      match.by = byName(match.stock);
      return;
    }
    match.by = stated ? MatchedBy::Thickness : MatchedBy::NoThickness;
    std::set<std::string> materials;
    for (const std::size_t i : match.stock) materials.insert(m_stock[i].material);
    if (materials.size() < 2) return;
    const std::vector<std::string> names(materials.begin(), materials.end());
    match.notes.push_back(Message("materials.several-materials").with("materials", base::join(said(names), ", ")));
  }

  static std::vector<std::string> said(std::vector<std::string> names) {
    names.erase(std::remove(names.begin(), names.end(), ""), names.end());
    return names;
  }

  // A sheet has one thickness: stock that states none cannot serve two.
  void settleThickness(std::size_t index) {
    if (m_stock[index].kind != StockKind::Board || m_stock[index].thickness) return;
    std::set<Length> wanted;
    for (std::size_t i = 0; i < m_pieces.size(); ++i) {
      const auto& from = m_matches[i].stock;
      if (std::find(from.begin(), from.end(), index) != from.end()) wanted.insert(*m_pieces[i].thickness);
    }
    if (wanted.size() < 2) return;
    for (StockMatch& match : m_matches) {
      const auto found = std::find(match.stock.begin(), match.stock.end(), index);
      if (found == match.stock.end()) continue;
      match.stock.erase(found);
      if (match.stock.empty()) match.by = MatchedBy::Nothing;
      match.notes.push_back(Message("materials.thickness-unsaid").with("stock", m_stock[index].id));
    }
  }

  const std::vector<CutPiece>& m_pieces;
  const std::vector<Stock>& m_stock;
  std::vector<StockMatch> m_matches;
};

bool servesBoard(const Stock& offcut, const CutPiece& piece, const StockMatch& match, const std::vector<Stock>& stock) {
  if (!isAsThick(offcut.thickness, piece.thickness)) return false;
  if (!piece.material.empty()) return offcut.material == piece.material;
  return match.stock.empty() || std::any_of(match.stock.begin(), match.stock.end(), [&](std::size_t i) {
           return i < stock.size() && stock[i].material == offcut.material;
         });
}

bool serves(const Stock& offcut, const CutPiece& piece, const StockMatch& match, const std::vector<Stock>& stock) {
  if (isBought(piece.use)) return false;
  if (piece.ofPaper()) return offcut.kind == StockKind::Paper && offcut.material == piece.material;
  return offcut.kind == StockKind::Board && servesBoard(offcut, piece, match, stock);
}

// Named one by one, so that a new member does not go unnoticed.
auto saidOf(const Stock& stock) {
  const auto& [place, id, kind, width, height, thickness, material, grain, pattern, margin, kerf, quantity, price,
               offcut] = stock;
  static_cast<void>(place);
  return std::tie(id, kind, width, height, thickness, material, grain, pattern, margin, kerf, quantity, price, offcut);
}

void addKept(std::vector<StockMatch>& matches, const std::vector<CutPiece>& pieces, const std::vector<Stock>& stock,
             const std::vector<Stock>& kept) {
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    StockMatch& match = matches[i];
    const StockMatch before = match;
    for (std::size_t k = 0; k < kept.size(); ++k) {
      if (serves(kept[k], pieces[i], before, stock)) match.stock.push_back(stock.size() + k);
    }
    if (match.by != MatchedBy::Nothing || match.stock.empty()) continue;
    match.by = pieces[i].ofPaper() || !pieces[i].material.empty() ? MatchedBy::Material : MatchedBy::Thickness;
  }
}

}  // namespace

bool operator==(const SheetsThere& a, const SheetsThere& b) {
  const auto areAlike = [](const std::vector<Stock>& one, const std::vector<Stock>& other) {
    return std::equal(one.begin(), one.end(), other.begin(), other.end(),
                      [](const Stock& x, const Stock& y) { return saidOf(x) == saidOf(y); });
  };
  return areAlike(a.listed, b.listed) && areAlike(a.shop, b.shop) && areAlike(a.kept, b.kept);
}

const Stock& SheetsThere::at(std::size_t index) const {
  if (index < listed.size()) return listed[index];
  index -= listed.size();
  return index < shop.size() ? shop[index] : kept.at(index - shop.size());
}

std::vector<StockMatch> matchStock(const std::vector<CutPiece>& pieces, const std::vector<Stock>& stock) {
  return Matcher(pieces, stock).run();
}

std::vector<StockMatch> matchSheets(const std::vector<CutPiece>& pieces, const SheetsThere& there) {
  std::vector<StockMatch> matches = matchStock(pieces, there.listed);
  std::vector<CutPiece> unlisted;
  std::vector<std::size_t> origin;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (!matches[i].stock.empty()) continue;
    unlisted.push_back(pieces[i]);
    origin.push_back(i);
  }
  std::vector<StockMatch> byShop = matchStock(unlisted, there.shop);
  for (std::size_t i = 0; i < origin.size(); ++i) {
    StockMatch& match = matches[origin[i]];
    match.by = byShop[i].by;
    for (const std::size_t sheet : byShop[i].stock) match.stock.push_back(there.listed.size() + sheet);
    match.notes.insert(match.notes.end(), byShop[i].notes.begin(), byShop[i].notes.end());
  }
  std::vector<Stock> stock = there.listed;
  stock.insert(stock.end(), there.shop.begin(), there.shop.end());
  addKept(matches, pieces, stock, there.kept);
  return matches;
}

std::string_view name(MatchedBy by) {
  switch (by) {
    case MatchedBy::Nothing: return "nothing";
    case MatchedBy::Material: return "material";
    case MatchedBy::Id: return "id";
    case MatchedBy::OnlyPaper: return "only-paper";
    case MatchedBy::Thickness: return "thickness";
    case MatchedBy::NoThickness: return "no-thickness";
  }
  return "";
}

}  // namespace core::materials
