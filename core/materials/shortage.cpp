#include "core/materials/shortage.h"

#include <algorithm>
#include <map>
#include <set>

namespace core::materials {
namespace {

using base::Message;
using design::Stock;
using design::StockKind;

StockKind kindOf(const CutPiece& piece) { return piece.ofPaper() ? StockKind::Paper : StockKind::Board; }

bool anyOf(const std::vector<Stock>& stock, StockKind kind) {
  return std::any_of(stock.begin(), stock.end(), [&](const Stock& one) { return one.kind == kind; });
}

std::string sizeName(design::SizeKind kind) {
  switch (kind) {
    case design::SizeKind::MethylCellulose: return "methylCellulose";
    case design::SizeKind::Starch: return "starch";
    case design::SizeKind::Water: return "water";
    case design::SizeKind::Oil: return "oil";
  }
  return "";
}

// Some of the pieces, laid out on some of the stock.
struct Part {
  std::vector<CutPiece> pieces;
  std::vector<std::size_t> lines;  // of the pieces
  SheetPlan plan;
};

class Reckoning {
 public:
  Reckoning(const std::vector<CutPiece>& pieces, const std::vector<Stock>& listed, const Having& having)
      : m_pieces(pieces), m_listed(listed), m_having(having) {}

  Shortage run(const std::vector<Amount>& amounts, const design::Job& job) {
    sheets();
    for (const Amount& amount : amounts) this->amount(amount, job);
    return std::move(m_out);
  }

 private:
  void sheets() {
    Part byList, byShop;
    const auto matches = matchStock(m_pieces, m_listed);
    for (std::size_t i = 0; i < m_pieces.size(); ++i) {
      if (m_pieces[i].use == PieceUse::Glazing) continue;
      Part& part = matches[i].stock.empty() ? byShop : byList;
      part.pieces.push_back(m_pieces[i]);
      part.lines.push_back(m_out.lines.size());
      ShortLine line;
      line.id = m_pieces[i].id;
      line.piece = true;
      line.of = m_pieces[i].material;
      line.need = m_pieces[i].count;
      line.haveKnown = Known::Computed;
      m_out.lines.push_back(std::move(line));
    }
    std::vector<Stock> offcuts = m_having.offcuts;
    lay(byList, m_listed, offcuts, ShortFrom::Listed);
    lay(byShop, m_having.sheets, offcuts, ShortFrom::Shop);
  }

  // Lays the part out and takes the offcuts it used from those that are left.
  void lay(Part& part, const std::vector<Stock>& stock, std::vector<Stock>& offcuts, ShortFrom from) {
    if (part.pieces.empty()) return;
    part.plan = planSheets(part.pieces, stock, offcuts);
    std::vector<int> lacking(part.pieces.size(), 0);
    std::vector<bool> tooLarge(part.pieces.size(), false);
    std::set<std::size_t> used;
    std::map<std::size_t, int> taken;
    for (const StockGroup& group : part.plan.groups) {
      for (const LeftOver& left : group.unplaced) {
        lacking[left.piece] += left.count;
        tooLarge[left.piece] = left.tooLarge;
      }
      for (const PlanSheet& sheet : group.sheets) {
        if (sheet.stock < stock.size()) {
          ++taken[sheet.stock];
        } else {
          used.insert(sheet.stock - stock.size());
        }
      }
    }
    for (std::size_t i = 0; i < part.pieces.size(); ++i) {
      settle(m_out.lines[part.lines[i]], part, i, stock, offcuts, lacking[i], tooLarge[i], from);
    }
    for (const auto& [index, count] : taken) m_out.taken.push_back({stock[index].id, from, count});
    std::vector<Stock> left;
    for (std::size_t i = 0; i < offcuts.size(); ++i) {
      if (!used.contains(i)) left.push_back(offcuts[i]);
    }
    offcuts = std::move(left);
  }

  void settle(ShortLine& line, const Part& part, std::size_t index, const std::vector<Stock>& stock,
              const std::vector<Stock>& offcuts, int lacking, bool tooLarge, ShortFrom from) const {
    const CutPiece& piece = part.pieces[index];
    const StockMatch& match = part.plan.matches[index];
    line.notes = match.notes;
    if (match.stock.empty()) {
      const bool listed = anyOf(m_listed, kindOf(piece)) || anyOf(m_having.sheets, kindOf(piece));
      line.from = listed ? ShortFrom::Nothing : ShortFrom::Unlisted;
      if (!listed) return;
      line.have = 0;
      line.lack = line.need;
      return;
    }
    line.from = from;
    for (const std::size_t i : match.stock) {
      line.stock.push_back(i < stock.size() ? stock[i].id : offcuts[i - stock.size()].id);
    }
    line.have = line.need - lacking;
    line.lack = lacking;
    if (lacking > 0 && tooLarge) line.notes.push_back(Message("shortage.too-large"));
    if (lacking > 0 && from == ShortFrom::Listed) noteShop(line, piece);
  }

  // The file's own stock does not suffice: what the shop has of the same is said, and not used unasked.
  void noteShop(ShortLine& line, const CutPiece& piece) const {
    const auto match = matchStock({piece}, m_having.sheets).front();
    std::int64_t sheets = 0;
    for (const std::size_t i : match.stock) sheets += m_having.sheets[i].quantity.value_or(0);
    if (sheets > 0) line.notes.push_back(Message("shortage.shop-has").with("count", sheets));
  }

  void amount(const Amount& amount, const design::Job& job) {
    ShortLine line;
    line.id = amount.id;
    line.kind = amount.kind;
    line.of = amount.kind == AmountKind::Size ? sizeOf(job, amount.of) : amount.of;
    line.need = amount.value;
    std::set<std::string> names;
    double there = 0;
    bool ofKind = false, unweighed = false;
    for (const Having::Other& other : m_having.others) {
      if (other.kind != amount.kind) continue;
      ofKind = true;
      const bool named = amount.kind == AmountKind::Size || amount.kind == AmountKind::Paint;
      if (named && other.name != line.of) continue;
      line.stock.push_back(other.id);
      names.insert(other.name);
      if (other.amount) {
        there += *other.amount;
      } else {
        unweighed = true;
        line.notes.push_back(Message("shortage.in-grams").with("name", other.name));
      }
    }
    line.from = !ofKind ? ShortFrom::Unlisted : line.stock.empty() ? ShortFrom::Nothing : ShortFrom::Shop;
    if (names.size() > 1) line.notes.push_back(Message("shortage.which-is-not-said"));
    if (ofKind) weigh(line, there, unweighed);
    m_out.lines.push_back(std::move(line));
  }

  // What earlier lines take of the same stock is no longer there for this one.
  void weigh(ShortLine& line, double there, bool unweighed) {
    double& taken = m_taken[line.stock];
    const double left = std::max(0.0, there - taken);
    if (taken > 0 && !line.stock.empty()) line.notes.push_back(Message("shortage.shared"));
    taken += line.need;
    if (unweighed && left < line.need) return;
    line.have = left;
    line.lack = std::max(0.0, line.need - left);
  }

  static std::string sizeOf(const design::Job& job, const std::string& field) {
    const auto found = std::find_if(job.leaf.begin(), job.leaf.end(), [&](const auto& one) { return one.id == field; });
    return found == job.leaf.end() ? "" : sizeName(found->size);
  }

  const std::vector<CutPiece>& m_pieces;
  const std::vector<Stock>& m_listed;
  const Having& m_having;
  std::map<std::vector<std::string>, double> m_taken;  // by the stock it is taken from
  Shortage m_out;
};

}  // namespace

bool Shortage::isShort() const {
  return std::any_of(lines.begin(), lines.end(), [](const ShortLine& line) { return line.lack && *line.lack > 0; });
}

Shortage shortageOf(const std::vector<CutPiece>& pieces, const std::vector<Stock>& listed,
                    const std::vector<Amount>& amounts, const design::Job& job, const Having& having) {
  return Reckoning(pieces, listed, having).run(amounts, job);
}

}  // namespace core::materials
