#include "core/materials/cost.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace core::materials {
namespace {

using design::Job;
using units::Money;

constexpr std::int64_t kMillionth = 1'000'000;
constexpr std::int64_t kMicrolitresPerLitre = 1'000'000;
constexpr std::int64_t kMillisecondsPerHour = 3'600'000;

// The nearest whole number, and what is beyond counting at the end of it.
std::int64_t whole(double value) { return std::llround(std::clamp(value, 0.0, 1e18)); }

double areaOf(Length width, Length height) { return width.inMillimetres() * height.inMillimetres(); }

class Reckoner {
 public:
  Reckoner(const Job& job, Quote& quote) : m_job(job), m_quote(quote) {}

  void sheets(const SheetPlan& plan) {
    struct Used {
      std::int64_t sheets = 0;
      double area = 0;
    };
    std::map<std::size_t, Used> byStock;
    for (const StockGroup& group : plan.groups) {
      for (const PlanSheet& sheet : group.sheets) {
        Used& used = byStock[sheet.stock];
        ++used.sheets;
        for (const PieceOnSheet& piece : sheet.pieces) used.area += areaOf(piece.at.width, piece.at.height);
      }
    }
    for (const auto& [index, used] : byStock) {
      const design::Stock& stock = m_job.stock[index];
      if (stock.offcut) continue;
      CostLine line;
      line.kind = CostKind::Sheets;
      line.id = "sheets." + stock.id;
      line.of = stock.id;
      line.quantity = used.sheets;
      const double all = areaOf(stock.width, stock.height) * static_cast<double>(used.sheets);
      line.share = std::min(kMillionth, whole(used.area / all * static_cast<double>(kMillionth)));
      add(std::move(line), stock.price);
    }
  }

  void other(CostKind kind, std::int64_t quantity, std::int64_t per, const std::optional<Money>& price) {
    if (quantity == 0) return;
    CostLine line;
    line.kind = kind;
    line.id = name(kind);
    line.quantity = quantity;
    line.per = per;
    add(std::move(line), price);
  }

 private:
  void add(CostLine line, const std::optional<Money>& price) {
    if (!price) {
      m_quote.notPriced.push_back(line.id);
      return;
    }
    line.price = *price;
    line.cost = line.price.times(line.quantity, line.per);
    line.byShare = line.cost.times(line.share, kMillionth);
    m_quote.total = m_quote.total + line.cost;
    m_quote.totalByShare = m_quote.totalByShare + line.byShare;
    m_quote.lines.push_back(std::move(line));
  }

  const Job& m_job;
  Quote& m_quote;
};

double sumOf(const std::vector<Amount>& amounts, AmountKind kind) {
  double sum = 0;
  for (const Amount& amount : amounts) sum += amount.kind == kind ? amount.value : 0;
  return sum;
}

void addPiecesWithoutStock(const std::vector<CutPiece>& pieces, const SheetPlan& plan, Quote& quote) {
  std::vector<bool> lacks(pieces.size(), false);
  for (std::size_t i = 0; i < pieces.size(); ++i) lacks[i] = plan.matches[i].stock.empty();
  for (const StockGroup& group : plan.groups) {
    for (const LeftOver& left : group.unplaced) lacks[left.piece] = true;
  }
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (lacks[i]) quote.notPriced.push_back(pieces[i].id);
  }
}

}  // namespace

Quote quoteOf(const Job& job, const std::vector<CutPiece>& pieces, const SheetPlan& plan,
              const std::vector<Amount>& amounts, std::optional<units::Duration> handsOn) {
  Quote quote;
  addPiecesWithoutStock(pieces, plan, quote);
  Reckoner reckoner(job, quote);
  reckoner.sheets(plan);
  const auto litres = [&](AmountKind kind) { return whole(sumOf(amounts, kind) * 1000); };
  reckoner.other(CostKind::Leaf, whole(sumOf(amounts, AmountKind::Leaf)), 1, job.prices.leaf);
  reckoner.other(CostKind::Size, litres(AmountKind::Size), kMicrolitresPerLitre, job.prices.size);
  reckoner.other(CostKind::Paste, litres(AmountKind::Paste), kMicrolitresPerLitre, job.prices.paste);
  reckoner.other(CostKind::Paint, litres(AmountKind::Paint), kMicrolitresPerLitre, job.prices.paint);
  if (handsOn) {
    reckoner.other(CostKind::Labour, handsOn->inMilliseconds(), kMillisecondsPerHour, job.prices.labour);
  } else {
    quote.notPriced.emplace_back(name(CostKind::Labour));
  }
  return quote;
}

std::string_view name(CostKind kind) {
  switch (kind) {
    case CostKind::Sheets: return "sheets";
    case CostKind::Leaf: return "leaf";
    case CostKind::Size: return "size";
    case CostKind::Paste: return "paste";
    case CostKind::Paint: return "paint";
    case CostKind::Labour: return "labour";
  }
  return "";
}

}  // namespace core::materials
