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

class Reckoning {
 public:
  Reckoning(const std::vector<CutPiece>& pieces, const SheetsThere& there, const SheetPlan& plan,
            const std::vector<OtherStock>& others)
      : m_pieces(pieces), m_there(there), m_plan(plan), m_others(others) {}

  Shortage run(const std::vector<Amount>& amounts, const design::Job& job) {
    sheets();
    for (const Amount& amount : amounts) this->amount(amount, job);
    return std::move(m_out);
  }

 private:
  void sheets() {
    std::vector<LeftOver> lacking(m_pieces.size());
    std::map<std::size_t, int> taken;
    for (const StockGroup& group : m_plan.groups) {
      for (const LeftOver& left : group.unplaced) lacking[left.piece] = left;
      for (const PlanSheet& sheet : group.sheets) ++taken[sheet.stock];
    }
    for (std::size_t i = 0; i < m_pieces.size(); ++i) {
      if (!isBought(m_pieces[i].use)) piece(i, lacking[i]);
    }
    for (const auto& [index, count] : taken) {
      if (m_there.isKept(index)) continue;
      const ShortFrom from = m_there.isListed(index) ? ShortFrom::Listed : ShortFrom::Shop;
      m_out.taken.push_back({m_there.at(index).id, from, count});
    }
  }

  void piece(std::size_t index, const LeftOver& left) {
    const CutPiece& piece = m_pieces[index];
    const StockMatch& match = m_plan.matches[index];
    ShortLine line;
    line.id = piece.id;
    line.piece = true;
    line.of = piece.material;
    line.need = piece.count;
    line.haveKnown = Known::Computed;
    line.notes = match.notes;
    if (match.stock.empty()) {
      const bool isListed = anyOf(m_there.listed, kindOf(piece)) || anyOf(m_there.shop, kindOf(piece));
      line.from = isListed ? ShortFrom::Nothing : ShortFrom::Unlisted;
      if (isListed) {
        line.have = 0;
        line.lack = line.need;
      }
    } else {
      line.from = m_there.isListed(match.stock.front()) ? ShortFrom::Listed : ShortFrom::Shop;
      for (const std::size_t i : match.stock) line.stock.push_back(m_there.at(i).id);
      line.have = line.need - left.count;
      line.lack = left.count;
      if (left.count > 0 && left.tooLarge) line.notes.push_back(Message("shortage.too-large"));
      if (left.count > 0 && line.from == ShortFrom::Listed) noteShop(line, piece);
    }
    m_out.lines.push_back(std::move(line));
  }

  // The file's own stock does not suffice: the shop's stock of the same is mentioned, and not used unasked.
  void noteShop(ShortLine& line, const CutPiece& piece) const {
    const auto match = matchStock({piece}, m_there.shop).front();
    std::int64_t sheets = 0;
    for (const std::size_t i : match.stock) sheets += m_there.shop[i].quantity.value_or(0);
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
    for (const OtherStock& other : m_others) {
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

  // Stock that earlier lines use is no longer available for this one.
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
  const SheetsThere& m_there;
  const SheetPlan& m_plan;
  const std::vector<OtherStock>& m_others;
  std::map<std::vector<std::string>, double> m_taken;  // by the stock it is taken from
  Shortage m_out;
};

}  // namespace

bool Shortage::isShort() const {
  return std::any_of(lines.begin(), lines.end(), [](const ShortLine& line) { return line.lack && *line.lack > 0; });
}

Shortage shortageOf(const std::vector<CutPiece>& pieces, const SheetsThere& there, const SheetPlan& plan,
                    const std::vector<Amount>& amounts, const design::Job& job, const std::vector<OtherStock>& others) {
  return Reckoning(pieces, there, plan, others).run(amounts, job);
}

}  // namespace core::materials
