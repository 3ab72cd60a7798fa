// The least change of one value that settles what is wrong with a design, found by trying.
#include <algorithm>
#include <cmath>

#include "app/convert/text.h"
#include "app/designing/builder.h"
#include "app/designing/tr.h"
#include "app/designing/ways.h"
#include "app/words/words.h"
#include "core/design/outer_size.h"
#include "core/units/length_entry.h"

namespace app::designing {

using core::base::Value;
using core::units::Length;
using core::units::UnitSystem;

namespace {

// More fields than these nobody would look for the mistake in.
constexpr std::size_t kMostFields = 6;

// What a rule tells; a maker sets nothing finer.
Length ruleStep(UnitSystem units) {
  constexpr std::int64_t kHalfMillimetre = 500'000;
  return units == UnitSystem::Inches ? core::units::nearestLength(25.4 / 32) : Length::nanometres(kHalfMillimetre);
}

}  // namespace

std::optional<Mend> Ways::mend(const QString& said, const std::vector<const Field*>& fields) {
  const Standing& now = before(true);
  const auto key = now.said.find(said);
  if (key == now.said.end()) return std::nullopt;
  const auto settles = [&](const Value& patch) {
    const auto patched = core::base::patched(m_document, patch);
    if (!patched) return false;
    const Standing after = standing(sized(patched.value()), true);
    return !after.reasons.contains(key->second) &&
           std::includes(now.reasons.begin(), now.reasons.end(), after.reasons.begin(), after.reasons.end());
  };
  const std::size_t count = std::min(fields.size(), kMostFields);
  for (std::size_t i = 0; i < count; ++i) {
    const Field& field = *fields[i];
    if (field.pointer.empty()) continue;
    if (field.kind == Field::Kind::Choice) {
      for (const Option& option : field.options) {
        if (!option.chosen && settles(option.patch))
          return Mend{tr("Make the %1 %2").arg(field.label, option.label), option.patch};
      }
    }
    if (field.kind == Field::Kind::Length) {
      if (auto mend = shorterOrLonger(field, settles)) return mend;
    }
  }
  return std::nullopt;
}

std::optional<Mend> Ways::shorterOrLonger(const Field& field, const std::function<bool(const Value&)>& settles) const {
  const auto entered = core::units::parseLength(convert::fromQt(field.value));
  if (!entered) return std::nullopt;
  const Length step = ruleStep(m_units);
  const auto patchTo = [&](Length length) {
    return putAt(m_document, field.pointer, Value::text(core::units::entryText(length, m_units)));
  };
  const auto fits = [&](std::int64_t steps) { return settles(patchTo(steps * step)); };
  const double present = entered.value().length.inMillimetres() / step.inMillimetres();
  const auto below = static_cast<std::int64_t>(std::ceil(present)) - 1;
  const auto above = static_cast<std::int64_t>(std::floor(present)) + 1;
  // Halves the way between a value that does and one that does not.
  const auto nearest = [&](std::int64_t good, std::int64_t bad) {
    while (std::abs(good - bad) > 1) {
      const std::int64_t middle = (good + bad) / 2;
      (fits(middle) ? good : bad) = middle;
    }
    return good;
  };
  constexpr std::int64_t kNone = 0;
  // In ever longer strides, since what is far enough one way may run into something else.
  const auto sought = [&](std::int64_t from, int way, std::int64_t end) -> std::int64_t {
    std::int64_t bad = from - way;
    for (std::int64_t stride = 1;; stride *= 2) {
      const std::int64_t next = from + way * (stride - 1);
      const bool last = way < 0 ? next <= end : next >= end;
      const std::int64_t tried = last ? end : next;
      if ((tried - bad) * way > 0 && fits(tried)) return nearest(tried, bad);
      if (last) return kNone;
      bad = tried;
    }
  };
  constexpr std::int64_t kLeast = 1;
  constexpr std::int64_t kFar = 200;
  const std::int64_t shorter = below >= kLeast ? sought(below, -1, kLeast) : kNone;
  const std::int64_t longer = sought(above, 1, above + kFar);
  if (shorter == kNone && longer == kNone) return std::nullopt;
  const bool lengthen = shorter == kNone || (longer != kNone && static_cast<double>(longer) - present <
                                                                    present - static_cast<double>(shorter));
  const Length length = (lengthen ? longer : shorter) * step;
  return Mend{tr("Make the %1 %2").arg(field.label, convert::toQt(core::units::entryText(length, m_units))),
              patchTo(length)};
}

}  // namespace app::designing
