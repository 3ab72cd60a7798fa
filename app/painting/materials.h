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
Paper paperNamed(const std::string& name, bool repeats);

QColor colourOf(const core::sheets::Matter& matter);

// The tones of torn or laid leaf.
std::array<QColor, 3> leafTones();

// What a ruled line is filled with: a flat colour, or a metal's seven tones along it.
QBrush pigment(const std::string& name, const QRectF& bounds, const Light& light);

}  // namespace app::painting
