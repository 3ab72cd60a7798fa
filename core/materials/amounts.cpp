#include "core/materials/amounts.h"

#include <algorithm>

namespace core::materials {
namespace {

using design::Job;
using design::Layout;

constexpr double kSquareMillimetres = 1e6;  // in a square metre

class Collector {
 public:
  explicit Collector(std::vector<Amount>& amounts) : m_amounts(amounts) {}

  // Adds an area to what is spread over all of that kind and name.
  void cover(AmountKind kind, const std::string& of, double area, double spread, std::string figure) {
    Amount& amount = find(kind, of);
    amount.spread = spread;
    amount.potLoss = kPotLoss;
    amount.area += area;
    amount.value = amount.area / kSquareMillimetres * spread * (1 + kPotLoss);
    amount.figures.push_back(std::move(figure));
  }

 private:
  Amount& find(AmountKind kind, const std::string& of) {
    const auto found = std::find_if(m_amounts.begin(), m_amounts.end(),
                                    [&](const Amount& one) { return one.kind == kind && one.of == of; });
    if (found != m_amounts.end()) return *found;
    Amount& amount = m_amounts.emplace_back();
    amount.kind = kind;
    amount.of = of;
    amount.id = std::string(name(kind)) + (of.empty() ? "" : '.' + of);
    return amount;
  }

  std::vector<Amount>& m_amounts;
};

void addLeaf(const Job& job, const Layout& layout, std::vector<Amount>& amounts) {
  for (std::size_t i = 0; i < layout.leaf.size() && i < job.leaf.size(); ++i) {
    const design::Leaf& leaf = job.leaf[i];
    const design::LeafLayout& placed = layout.leaf[i];
    const std::string figures = "leaf." + placed.id;
    amounts.push_back({AmountKind::Leaf, figures, placed.id, placed.sheets, placed.area, 0, 0, {figures + ".sheets"}});
    amounts.push_back({AmountKind::Size,
                       "size." + placed.id,
                       placed.id,
                       placed.size,
                       placed.area,
                       leaf.spread,
                       leaf.potLoss,
                       {figures + ".size"}});
  }
}

}  // namespace

std::vector<Amount> amountsOf(const Job& job, const Layout& layout) {
  std::vector<Amount> amounts;
  addLeaf(job, layout, amounts);
  Collector out(amounts);
  for (const design::BandLayout& band : layout.bands) {
    out.cover(AmountKind::Paste, "", band.area, kPasteSpread, "band." + band.id + ".area");
  }
  for (const design::SpandrelLayout& spandrel : layout.spandrels) {
    out.cover(AmountKind::Paste, "", spandrel.area, kPasteSpread, "spandrel." + spandrel.id + ".area");
  }
  for (std::size_t i = 0; i < layout.boards.size() && i < job.boards.size(); ++i) {
    if (!job.boards[i].bevelColour) continue;
    out.cover(AmountKind::Paint, *job.boards[i].bevelColour, layout.boards[i].bevelArea, kPaintSpread,
              "board." + layout.boards[i].id + ".bevel.area");
  }
  for (const design::Line& line : job.lines) {
    const design::LineLayout* placed = layout.line(line.id);
    if (placed == nullptr) continue;
    out.cover(AmountKind::Paint, line.colour, placed->total * placed->width, kPaintSpread,
              "line." + line.id + ".total");
  }
  for (const design::Wash& wash : job.washes) {
    const design::WashLayout* placed = layout.wash(wash.id);
    if (placed == nullptr) continue;
    out.cover(AmountKind::Paint, wash.colour, placed->area, kPaintSpread, "wash." + wash.id + ".area");
  }
  amounts.erase(std::remove_if(amounts.begin(), amounts.end(), [](const Amount& one) { return one.value <= 0; }),
                amounts.end());
  for (Amount& amount : amounts) {
    amount.value *= job.count;
    amount.area *= job.count;
  }
  return amounts;
}

std::string_view name(AmountKind kind) {
  switch (kind) {
    case AmountKind::Leaf: return "leaf";
    case AmountKind::Size: return "size";
    case AmountKind::Paste: return "paste";
    case AmountKind::Paint: return "paint";
  }
  return "";
}

}  // namespace core::materials
