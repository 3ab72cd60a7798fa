#pragma once
// How bright a material is: by the lamp, on a slope, and sunk into the cloth while it is still to come.
#include <QImage>

#include "app/painting/inks.h"
#include "core/sheets/matter.h"

namespace app::painting {

// What is to come sinks into the cloth: less of it where it is fine, more where it is broad.
enum class Breadth { Fine, Broad };

class Light {
 public:
  Light(const Inks& inks, core::sheets::Standing standing)
      : m_cloth(inks.cloth.isValid() ? inks.cloth : inks.ground),
        m_lamp(inks.byLamp()),
        m_toCome(standing == core::sheets::Standing::ToCome) {}

  // Returns the colour as it is seen; what lets something through stays so.
  QColor on(const QColor& material, Breadth breadth = Breadth::Broad) const;
  // Does the same to every pixel of a picture that lets nothing through.
  void fallOn(QImage& picture, Breadth breadth) const;

  friend bool operator==(const Light&, const Light&) = default;

 private:
  QColor m_cloth;
  bool m_lamp;
  bool m_toCome;
};

// Returns what a mark is made in: on a light material by day's ink, by lamp too, on a dark one by the lamp's; and the
// same of the line to be made.
QColor inkOn(const QColor& material);
QColor workedOn(const QColor& material);

// Returns the colour on a slope that falls away from the light or towards it; the light comes from the top left. A
// slope faces the opening it leads down to, so that it is dark above and left of it.
QColor sloped(const QColor& material, const core::sheets::Point& outwards);

}  // namespace app::painting
