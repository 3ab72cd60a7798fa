#include "app/viewmodels/number_entry.h"

#include "core/units/length.h"

namespace app::viewmodels {
namespace {

using core::units::UnitSystem;

// No mount is ten metres wide, no rule tells hundredths, no fraction is finer than a sixty-fourth.
constexpr int kMostWhole = 4;
constexpr int kMostPart = 2;

}  // namespace

QString& NumberEntry::current() { return m_place == 0 ? m_whole : m_place == 1 ? m_upper : m_lower; }

void NumberEntry::digit(int digit) {
  QString& part = current();
  if (digit < 0 || digit > 9 || part.size() >= (m_place == 0 ? kMostWhole : kMostPart)) return;
  if (m_place == 0 && part == QStringLiteral("0")) part.clear();
  part += QString::number(digit);
}

void NumberEntry::part() {
  const bool inches = m_units == UnitSystem::Inches;
  if (m_place == 0) {
    m_place = 1;
    if (!inches && m_whole.isEmpty()) m_whole = QStringLiteral("0");
  } else if (inches && m_place == 1 && !m_upper.isEmpty()) {
    m_place = 2;
  }
}

void NumberEntry::erase() {
  QString& part = current();
  if (!part.isEmpty()) {
    part.chop(1);
  } else if (m_place > 0) {
    --m_place;
  }
}

void NumberEntry::clear() { *this = NumberEntry(m_units); }

void NumberEntry::turnUnits() {
  *this = NumberEntry(m_units == UnitSystem::Inches ? UnitSystem::Millimetres : UnitSystem::Inches);
}

QString NumberEntry::whole() const {
  if (m_units == UnitSystem::Inches || m_place == 0) return m_whole;
  return m_whole + QLatin1Char('.') + m_upper;
}

QString NumberEntry::unit() const {
  return m_units == UnitSystem::Inches ? QStringLiteral("in") : QStringLiteral("mm");
}

std::string NumberEntry::text() const {
  QString text = m_whole;
  if (m_units == UnitSystem::Millimetres) {
    if (!m_upper.isEmpty()) text += QLatin1Char('.') + m_upper;
  } else if (m_place > 0 && !(m_upper.isEmpty() && m_lower.isEmpty())) {
    if (!text.isEmpty()) text += QLatin1Char(' ');
    text += m_upper + QLatin1Char('/') + m_lower;
  }
  return (text + QLatin1Char(' ') + unit()).toStdString();
}

core::base::Result<core::units::Length, core::base::Message> NumberEntry::length() const {
  const bool upper = m_units == UnitSystem::Inches && m_place > 0 && !m_upper.isEmpty();
  if (upper && m_lower.isEmpty()) return core::base::Message("entry.half-a-fraction");
  auto parsed = core::units::parseLength(text());
  if (!parsed) return std::move(parsed).error();
  return parsed.value().length;
}

}  // namespace app::viewmodels
