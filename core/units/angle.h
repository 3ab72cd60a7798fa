#pragma once
// Bevel angles in degrees from the board's face, 30 to 90. The exact values at 30, 45 and 90 degrees are
// returned as such, so that a 45-degree bevel in 1.5 mm board is 1.5 mm wide and not 1.5000000000000002.
namespace core::units {

class Angle {
 public:
  constexpr Angle() = default;
  static constexpr Angle degrees(double value) { return Angle(value); }
  constexpr double inDegrees() const { return m_degrees; }
  // Error at most one unit in the last place. Requires 0 < angle <= 90.
  double sine() const;
  // Requires 0 < angle < 90.
  double tangent() const;
  friend constexpr bool operator==(Angle, Angle) = default;

 private:
  constexpr explicit Angle(double value) : m_degrees(value) {}
  double m_degrees = 45;
};

}  // namespace core::units
