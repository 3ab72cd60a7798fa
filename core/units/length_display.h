#pragma once
// The display of lengths: millimetres to 0.1, inches to 1/32 in reduced fractions, marked as approximate where the
// shown value is not the value. Rounding happens here and nowhere else, and is always named.
#include <cstdint>
#include <string>

namespace core::units {

enum class UnitSystem { Millimetres, Inches };

enum class Rounding {
  Down,     // visible and sight sizes, mount to rebate: the work stays covered, the package goes in
  Up,       // stock
  Nearest,  // everything else; halves away from zero
};

// The parts of a shown length, for displays that set them in different sizes.
struct ShownLength {
  bool approximate = false;  // inches only: the value is not on a 1/32
  bool negative = false;
  std::string whole;  // "379.0", or the inches before the fraction; empty for "3/8 in"
  std::int64_t numerator = 0;
  std::int64_t denominator = 0;  // 0: no fraction
  std::string unit;              // "mm" or "in"
};

// A value within 1e-7 of the next step counts as on it, so that the last bit of a sum never costs a tenth.
// Requires a finite value.
ShownLength showLength(double millimetres, UnitSystem system, Rounding rounding);
// "379.0 mm", "12 3/8 in", "≈ 16 1/8 in".
std::string lengthText(double millimetres, UnitSystem system, Rounding rounding);
// The shown value itself, in millimetres: what a far mark is counted from.
double roundedLength(double millimetres, UnitSystem system, Rounding rounding);

}  // namespace core::units
