#pragma once
// What each material looks like in full light.
#include <QBrush>
#include <QColor>
#include <QRectF>
#include <array>
#include <string>

#include "app/painting/light.h"
#include "core/sheets/matter.h"

namespace app::painting {

// Papers by the words of their names; the drawing of each is our own.
enum class Pattern { Wave, Reed, Scale, Rope, Key, Ripple, Comb, Laid, Lozenge, Plain };

struct Paper {
  Pattern pattern = Pattern::Plain;
  QColor ground;
  QColor figure;
};

// A paper whose name tells no pattern has a lozenge where it has a repeat, and is plain otherwise.
// Its ground is `own` where that is valid.
Paper paperNamed(const std::string& name, bool repeats, const QColor& own = {});

// `own`: the colour that the material's maker gave it; invalid for none.
QColor colourOf(const core::sheets::Matter& matter, const QColor& own = {});

// The tones of torn or laid leaf.
std::array<QColor, 3> leafTones();

// What a ruled line is filled with: a flat colour, or a metal's seven tones along it.
// `own` is its colour where that is valid.
QBrush pigment(const std::string& name, const QRectF& bounds, const Light& light, const QColor& own = {});

}  // namespace app::painting
