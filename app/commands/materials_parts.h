#pragma once
// The output of "materials", in two forms, and the words both use. Only materials.cpp calls these.
#include <QString>
#include <ostream>

#include "core/base/json.h"
#include "core/design/design.h"
#include "core/materials/cost.h"
#include "core/materials/repeat_match.h"
#include "core/materials/strip_order.h"
#include "core/units/length_display.h"

namespace app::commands {

// The match of a patterned band's corners, and its strips as they are cut along the paper.
struct BandMatch {
  std::size_t band = 0;
  core::materials::RepeatMatch match;
  core::materials::StripOrder order;
};

struct Materials {
  const core::design::Design& design;
  core::units::UnitSystem units;
  std::vector<core::materials::CutPiece> pieces;
  core::materials::SheetPlan plan;
  std::vector<core::materials::Amount> amounts;
  core::materials::Quote quote;
  std::vector<BandMatch> matches;  // of bands with a repeat

  const core::design::Stock& stock(std::size_t index) const { return design.job.stock[index]; }
  QString said(const core::base::Message& message) const;
  QString name(const core::materials::CutPiece& piece) const;  // "inner band, left and right"
  QString name(const core::materials::Amount& amount) const;
  QString name(const core::materials::CostLine& line) const;
  // A piece's own side: board and glass down, as the figures show them, since they go into a rebate; paper up.
  std::string side(const core::materials::CutPiece& piece, core::units::Length length) const;
  std::string nearest(core::units::Length length) const;  // places and fences
  std::string up(core::units::Length length) const;       // what is to be bought of something
  // Sheets, allowances, thicknesses: what the job file says.
  std::string entered(core::units::Length length, core::units::Rounding rounding = core::units::Rounding::Up) const;
  std::string amount(const core::materials::Amount& amount) const;  // "4 leaves", "2.7 ml"
  std::string area(double squareMillimetres) const;
  std::string money(core::units::Money money) const;  // "18.50 GBP"
  // Pieces and lines of the cost that have no price.
  QString notPriced() const;
  core::base::Message lack(const core::materials::LeftOver& left) const;
};

core::base::Value matchJson(const Materials& materials, const BandMatch& band);
void sayMatch(std::ostream& out, const Materials& materials, const BandMatch& band);

core::base::Value materialsJson(const Materials& materials);
void sayMaterials(std::ostream& out, const Materials& materials);

}  // namespace app::commands
