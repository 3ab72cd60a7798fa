// "materials" for people: five tables, and a line for whatever should be looked at.
#include <algorithm>

#include "app/commands/materials_parts.h"
#include "app/commands/saying.h"
#include "app/words/words.h"
#include "core/base/text.h"

namespace app::commands {
namespace {

using core::base::Message;
using core::cutting::Area;
using core::materials::CostKind;
using core::materials::CutPiece;
using core::materials::MatchedBy;
using core::materials::PieceGrain;
using core::materials::PieceUse;
using core::materials::StockGroup;
using core::materials::StockMatch;
using core::units::Rounding;

class MaterialsSpeaker {
 public:
  MaterialsSpeaker(std::ostream& out, const Materials& materials) : m_out(out), m_materials(materials) {}

  void run() {
    heading(Message("materials.pieces"));
    sayPieces();
    if (!m_materials.matches.empty()) {
      heading(Message("materials.match"));
      for (const BandMatch& band : m_materials.matches) sayMatch(m_out, m_materials, band);
    }
    if (!m_materials.plan.groups.empty()) {
      heading(Message("materials.sheets"));
      for (const StockGroup& group : m_materials.plan.groups) sayGroup(group);
    }
    if (!m_materials.amounts.empty()) {
      heading(Message("materials.amounts"));
      sayAmounts();
    }
    if (!m_materials.quote.lines.empty()) {
      heading(Message("materials.costs"));
      sayCosts();
    }
  }

 private:
  QString said(const Message& message) const { return m_materials.said(message); }
  void heading(const Message& message) {
    if (m_begun) sayLine(m_out, {});
    m_begun = true;
    sayLine(m_out, said(message));
  }
  void line(const QString& text) { sayLine(m_out, QStringLiteral("  ") + text); }
  void notes(const std::vector<Message>& messages) {
    for (const Message& message : messages) {
      line(said(Message("command.notice").with("text", said(message).toStdString())));
    }
  }

  QString size(const std::string& width, const std::string& height) const {
    return said(Message("materials.size").with("width", width).with("height", height));
  }

  QString grain(const CutPiece& piece) const {
    const bool strip = piece.use == PieceUse::StripHorizontal || piece.use == PieceUse::StripVertical;
    switch (piece.grain) {
      case PieceGrain::Any: return {};
      case PieceGrain::Width: return said(Message(strip ? "materials.grain-long" : "materials.grain-width"));
      case PieceGrain::Height: return said(Message(strip ? "materials.grain-short" : "materials.grain-height"));
    }
    return {};
  }

  QString from(const StockMatch& match) const {
    std::vector<std::string> ids;
    for (const std::size_t i : match.stock) ids.push_back(m_materials.stock(i).id);
    const std::string stock = core::base::join(ids, ", ");
    switch (match.by) {
      case MatchedBy::Nothing: return said(Message("materials.without-stock"));
      case MatchedBy::Material: return said(Message("materials.by-material").with("stock", stock));
      case MatchedBy::Id: return said(Message("materials.by-id").with("stock", stock));
      case MatchedBy::OnlyPaper: return said(Message("materials.by-only-paper").with("stock", stock));
      case MatchedBy::Thickness: return said(Message("materials.by-thickness").with("stock", stock));
      case MatchedBy::NoThickness: return said(Message("materials.by-no-thickness").with("stock", stock));
    }
    return {};
  }

  void sayPieces() {
    std::vector<QStringList> rows;
    std::vector<Message> remarks;
    for (std::size_t i = 0; i < m_materials.pieces.size(); ++i) {
      const CutPiece& piece = m_materials.pieces[i];
      const StockMatch& match = m_materials.plan.matches[i];
      const QString thickness = piece.thickness
                                    ? QString::fromStdString(m_materials.entered(*piece.thickness, Rounding::Nearest))
                                    : QString();
      rows.push_back({QStringLiteral("  ") + m_materials.name(piece), QString::number(piece.count),
                      size(m_materials.side(piece, piece.width), m_materials.side(piece, piece.height)), thickness,
                      grain(piece), m_materials.design.job.stock.empty() ? QString() : from(match)});
      for (const Message& note : match.notes) {
        if (std::find(remarks.begin(), remarks.end(), note) == remarks.end()) remarks.push_back(note);
      }
    }
    sayTable(m_out, rows, {Align::Left, Align::Right, Align::Left, Align::Right, Align::Left, Align::Left});
    saySpacer();
    for (const CutPiece& piece : m_materials.pieces) {
      if (!piece.patterned) continue;
      line(said(Message("materials.allowance")
                    .with("name", m_materials.name(piece).toStdString())
                    .with("allowance", m_materials.entered(piece.allowance))));
    }
    notes(remarks);
  }

  // Strips are bought by the length.
  void saySpacer() {
    core::units::Length length;
    const CutPiece* one = nullptr;
    for (const CutPiece& piece : m_materials.pieces) {
      if (piece.use != PieceUse::SpacerHorizontal && piece.use != PieceUse::SpacerVertical) continue;
      length = length + piece.count * piece.width;
      one = &piece;
    }
    if (one == nullptr) return;
    line(said(Message("materials.spacer")
                  .with("length", m_materials.up(length))
                  .with("width", m_materials.side(*one, one->height))
                  .with("thickness", m_materials.nearest(*one->thickness))));
  }

  void sayGroup(const StockGroup& group) {
    for (const auto& sheet : group.sheets) saySheet(sheet);
    std::vector<std::string> ids;
    for (const std::size_t i : group.stock) ids.push_back(m_materials.stock(i).id);
    const std::string stock = core::base::join(ids, ", ");
    constexpr double kHundred = 100;
    if (group.exact) {
      line(said(Message("materials.proven").with("stock", stock)));
    } else if (!group.sheets.empty()) {
      line(said(Message("materials.within")
                    .with("stock", stock)
                    .with("percent", core::base::fixedNumber(group.gap * kHundred, 1))));
    }
    notes(group.notes);
    for (const auto& left : group.unplaced) notes({m_materials.lack(left)});
  }

  void saySheet(const core::materials::PlanSheet& sheet) {
    const core::design::Stock& stock = m_materials.stock(sheet.stock);
    line(said(Message(stock.offcut ? "materials.offcut-sheet" : "materials.sheet")
                  .with("stock", stock.id)
                  .with("width", m_materials.entered(stock.width))
                  .with("height", m_materials.entered(stock.height))
                  .with("number", static_cast<std::int64_t>(sheet.number))));
    const QString inner = QStringLiteral("  ");
    if (stock.usableMargin > core::units::Length()) {
      line(inner + said(Message("materials.trim").with("margin", m_materials.entered(stock.usableMargin))));
    }
    std::vector<QStringList> rows;
    for (const auto& placed : sheet.pieces) {
      const CutPiece& piece = m_materials.pieces[placed.piece];
      const QString name = piece.count == 1 ? m_materials.name(piece)
                                            : m_materials.name(piece) + QStringLiteral(" #%1").arg(placed.number);
      rows.push_back({inner + inner + name,
                      size(m_materials.side(piece, placed.at.width), m_materials.side(piece, placed.at.height)),
                      said(Message("materials.at")
                               .with("x", m_materials.nearest(placed.at.x))
                               .with("y", m_materials.nearest(placed.at.y)))});
    }
    sayTable(m_out, rows, {Align::Left, Align::Left, Align::Left});
    std::int64_t number = 0;
    for (const auto& cut : sheet.cuts) {
      line(inner + said(Message(cut.upright ? "materials.cut-upright" : "materials.cut-level")
                            .with("number", ++number)
                            .with("width", m_materials.nearest(cut.part.width))
                            .with("height", m_materials.nearest(cut.part.height))
                            .with("fence", m_materials.nearest(cut.fence))));
    }
    for (const Area& area : sheet.offcuts) {
      line(inner + said(Message("materials.keep")
                            .with("width", m_materials.nearest(area.width))
                            .with("height", m_materials.nearest(area.height))));
    }
  }

  void sayAmounts() {
    std::vector<QStringList> rows;
    for (const auto& amount : m_materials.amounts) {
      const std::string area = m_materials.area(amount.area);
      constexpr double kHundred = 100;
      const Message rests = amount.kind == core::materials::AmountKind::Leaf
                                ? Message("materials.for-area").with("area", area)
                                : Message("materials.spread")
                                      .with("area", area)
                                      .with("spread", amount.spread)
                                      .with("percent", amount.potLoss * kHundred);
      rows.push_back({QStringLiteral("  ") + m_materials.name(amount),
                      QString::fromStdString(m_materials.amount(amount)), said(rests)});
    }
    sayTable(m_out, rows, {Align::Left, Align::Right, Align::Left});
  }

  QString counted(const core::materials::CostLine& line) const {
    const std::string price = m_materials.money(line.price);
    switch (line.kind) {
      case CostKind::Sheets:
        return said(Message("materials.sheets-at")
                        .with("count", line.quantity)
                        .with("price", price)
                        .with("percent", core::base::fixedNumber(static_cast<double>(line.share) / 1e4, 1))
                        .with("share", m_materials.money(line.byShare)));
      case CostKind::Leaf:
        return said(Message("materials.leaves-at").with("count", line.quantity).with("price", price));
      case CostKind::Size:
      case CostKind::Paste:
      case CostKind::Paint:
        return said(Message("materials.litres-at")
                        .with("count", core::base::fixedNumber(static_cast<double>(line.quantity) / 1e3, 1))
                        .with("price", price));
      case CostKind::Labour: {
        const QString time = words::duration(core::units::Duration::milliseconds(line.quantity));
        return said(Message("materials.hours-at").with("time", time.toStdString()).with("price", price));
      }
    }
    return {};
  }

  void sayCosts() {
    const core::materials::Quote& quote = m_materials.quote;
    std::vector<QStringList> rows;
    for (const auto& line : quote.lines) {
      rows.push_back({QStringLiteral("  ") + m_materials.name(line),
                      QString::fromStdString(m_materials.money(line.cost)), counted(line)});
    }
    rows.push_back({QStringLiteral("  ") + said(Message("materials.total")),
                    QString::fromStdString(m_materials.money(quote.total)),
                    said(Message("materials.total-rests").with("share", m_materials.money(quote.totalByShare)))});
    sayTable(m_out, rows, {Align::Left, Align::Right, Align::Left});
    if (!quote.notPriced.empty()) {
      line(said(Message("materials.not-priced").with("names", m_materials.notPriced().toStdString())));
    }
  }

  std::ostream& m_out;
  const Materials& m_materials;
  bool m_begun = false;
};

}  // namespace

void sayMaterials(std::ostream& out, const Materials& materials) { MaterialsSpeaker(out, materials).run(); }

}  // namespace app::commands
