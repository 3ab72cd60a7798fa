#include "core/units/angle.h"

#include <cmath>
#include <numbers>

#include "core/base/check.h"

namespace core::units {

double Angle::sine() const {
  ENSURE(m_degrees > 0 && m_degrees <= 90);
  if (m_degrees == 30) return 0.5;
  if (m_degrees == 90) return 1;
  return std::sin(m_degrees * std::numbers::pi / 180);
}

double Angle::tangent() const {
  ENSURE(m_degrees > 0 && m_degrees < 90);
  if (m_degrees == 45) return 1;
  return std::tan(m_degrees * std::numbers::pi / 180);
}

}  // namespace core::units
