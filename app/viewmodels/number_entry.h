#pragma once
// A length as it is keyed in on a pad, digit by digit: millimetres with a point, or inches with a stacked fraction.
#include <QString>
#include <optional>

#include "core/base/message.h"
#include "core/base/result.h"
#include "core/units/length.h"
#include "core/units/length_display.h"

namespace app::viewmodels {

class NumberEntry {
 public:
  explicit NumberEntry(core::units::UnitSystem units = core::units::UnitSystem::Millimetres) : m_units(units) {}

  // These enter a digit, or the mark between whole and fraction: the point, or in inches first the one before the
  // numerator, then the one before the denominator. An entry that cannot mean anything there is ignored.
  void digit(int digit);
  void part();
  // Removes the last entry.
  void erase();
  void clear();
  // Clears the entry and changes to the other unit.
  void turnUnits();

  bool empty() const { return m_whole.isEmpty() && m_upper.isEmpty() && m_place == 0; }
  core::units::UnitSystem units() const { return m_units; }
  QString whole() const;  // "317." while the point is the last thing keyed
  QString numerator() const { return m_upper; }
  // Returns whether a fraction is being entered, perhaps without digits yet.
  bool fraction() const { return m_units == core::units::UnitSystem::Inches && m_place > 0; }
  QString denominator() const { return m_lower; }
  QString unit() const;

  // Returns the entry as a job file writes it: "317.5 mm", "12 3/8 in". Only length() checks whether it is a length.
  std::string text() const;
  // Returns the length keyed in, or what is wrong with it.
  core::base::Result<core::units::Length, core::base::Message> length() const;

 private:
  QString& current();

  core::units::UnitSystem m_units;
  int m_place = 0;  // 0 whole; millimetres: 1 tenths; inches: 1 numerator, 2 denominator
  QString m_whole, m_upper, m_lower;
};

}  // namespace app::viewmodels
