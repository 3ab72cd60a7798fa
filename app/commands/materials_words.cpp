// The words of a cutting list, for people and for JSON alike.
#include <QStringList>

#include "app/commands/materials_parts.h"
#include "app/words/words.h"
#include "core/base/text.h"
#include "core/units/length_entry.h"

namespace app::commands {

using core::base::Message;
using core::materials::Amount;
using core::materials::AmountKind;
using core::materials::CostKind;
using core::materials::CostLine;
using core::materials::CutPiece;
using core::units::Length;
using core::units::Rounding;
using core::units::UnitSystem;

QString Materials::said(const Message& message) const { return words::text(message, units); }

QString Materials::name(const CutPiece& piece) const { return words::pieceName(piece); }

QString Materials::name(const Amount& amount) const {
  switch (amount.kind) {
    case AmountKind::Leaf: return said(Message("materials.leaf-of").with("id", amount.of));
    case AmountKind::Size: return said(Message("materials.size-of").with("id", amount.of));
    case AmountKind::Paste: return said(Message("materials.paste"));
    case AmountKind::Paint: return said(Message("materials.paint-of").with("id", amount.of));
  }
  return {};
}

QString Materials::name(const CostLine& line) const {
  switch (line.kind) {
    case CostKind::Sheets: return said(Message("materials.cost-sheets").with("id", line.of));
    case CostKind::Leaf: return said(Message("materials.cost-leaf"));
    case CostKind::Size: return said(Message("materials.cost-size"));
    case CostKind::Paste: return said(Message("materials.paste"));
    case CostKind::Paint: return said(Message("materials.cost-paint"));
    case CostKind::Labour: return said(Message("materials.cost-labour"));
  }
  return {};
}

std::string Materials::side(const CutPiece& piece, Length length) const {
  return core::units::lengthText(length.inMillimetres(), units, piece.ofPaper() ? Rounding::Up : Rounding::Down);
}

std::string Materials::nearest(Length length) const {
  return core::units::lengthText(length.inMillimetres(), units, Rounding::Nearest);
}

std::string Materials::up(Length length) const {
  return core::units::lengthText(length.inMillimetres(), units, Rounding::Up);
}

std::string Materials::entered(Length length, Rounding rounding) const {
  return core::units::enteredText(length, units, rounding);
}

std::string Materials::amount(const Amount& amount) const {
  if (amount.kind != AmountKind::Leaf) return core::base::fixedNumber(amount.value, 1) + " ml";
  return said(Message("materials.leaves").with("count", core::base::fixedNumber(amount.value, 0))).toStdString();
}

std::string Materials::area(double squareMillimetres) const {
  constexpr double kSquareInch = 25.4 * 25.4;
  return units == UnitSystem::Millimetres ? core::base::fixedNumber(squareMillimetres, 1) + " mm\u00b2"
                                          : core::base::fixedNumber(squareMillimetres / kSquareInch, 2) + " in\u00b2";
}

std::string Materials::money(core::units::Money money) const {
  const std::string& currency = design.job.currency;
  return core::units::shownText(money) + (currency.empty() ? "" : ' ' + currency);
}

QString Materials::notPriced() const {
  QStringList names;
  for (const std::string& id : quote.notPriced) {
    QString found = QString::fromStdString(id);
    for (const CutPiece& piece : pieces) {
      if (piece.id == id) found = name(piece);
    }
    CostLine line;
    for (const CostKind kind : {CostKind::Leaf, CostKind::Size, CostKind::Paste, CostKind::Paint, CostKind::Labour}) {
      line.kind = kind;
      if (core::materials::name(kind) == id) found = name(line);
    }
    line.kind = CostKind::Sheets;
    for (const core::design::Stock& one : design.job.stock) {
      line.of = one.id;
      if ("sheets." + one.id == id) found = name(line);
    }
    names << found;
  }
  return names.join(QStringLiteral("; "));
}

Message Materials::lack(const core::materials::LeftOver& left) const {
  return Message(left.tooLarge ? "materials.too-large" : "materials.too-few")
      .with("name", name(pieces[left.piece]).toStdString())
      .with("count", static_cast<std::int64_t>(left.count));
}

}  // namespace app::commands
