#pragma once
// The colours a drawing is made with, given by the screen it stands on.
#include <QColor>

namespace app::painting {

struct Inks {
  QColor ink;
  QColor pencil;
  QColor worked;
  QColor ground;
  double hairline = 1;  // width of a pencil line, in pixels; ink is three times that
  QColor cloth = {};    // what pencilled materials sink into; invalid: the ground

  bool byLamp() const { return ground.lightnessF() < 0.5F; }
};

// The colours between two; `share` of the second.
QColor mixed(const QColor& one, const QColor& other, double share);

}  // namespace app::painting
