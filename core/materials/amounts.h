#pragma once
// How much leaf, size, paste and paint a job takes, each with the figures it is computed from. Areas are the figures'
// own.
#include <string>
#include <string_view>
#include <vector>

#include "core/design/job.h"
#include "core/design/layout.h"

namespace core::materials {

// Common practice, no source: a millilitre of paste covers 100 cm2, and a small job loses half as much again in pot and
// brush. Paint the same a coat, and two coats.
inline constexpr double kPasteSpread = 100;  // ml/m2
inline constexpr double kPaintSpread = 200;  // ml/m2
inline constexpr double kPotLoss = 0.5;

enum class AmountKind { Leaf, Size, Paste, Paint };

struct Amount {
  AmountKind kind = AmountKind::Paste;
  std::string id;                    // "leaf.field", "size.field", "paste", "paint.copper"
  std::string of;                    // the leaf field, the colour; "" for paste
  double value = 0;                  // whole leaves; else millilitres
  double area = 0;                   // mm2 covered
  double spread = 0, potLoss = 0;    // ml/m2, as a share; of leaf nothing
  std::vector<std::string> figures;  // it is computed from
};

// Returns leaf and size of each field, paste for all bands and spandrels, and paint by colour (coloured bevels, lines
// and washes) in the order the job names them. Amounts of zero are left out.
std::vector<Amount> amountsOf(const design::Job& job, const design::Layout& layout);

std::string_view name(AmountKind kind);  // "leaf", "size", "paste", "paint"

}  // namespace core::materials
