#pragma once
// What the tests of this folder share.
#include "tests/support/catch.h"
#include "tests/support/forms.h"

namespace tests {

// Requires an entry that fits.
inline core::geometry::WindowForm made(const ShapeEntry& entry, double width, double height) {
  auto form = core::geometry::construct(entry, width, height);
  if (!form) FAIL(form.error().key << ": " << core::base::dump(form.error().message));
  return std::move(form).value();
}

inline core::geometry::WindowForm made(const NamedForm& form) {
  INFO(form.name);
  return made(form.entry, form.width, form.height);
}

// The greatest distance between the ends and middles of two outlines, segment by segment; infinite where they differ
// in kind.
inline double apart(const core::geometry::Outline& a, const core::geometry::Outline& b) {
  if (a.segments().size() != b.segments().size()) return INFINITY;
  double most = 0;
  for (std::size_t i = 0; i < a.segments().size(); ++i) {
    if (a.segments()[i].index() != b.segments()[i].index()) return INFINITY;
    for (const double share : {0.0, 0.25, 0.5, 0.75, 1.0}) {
      most = std::max(most, distance(pointAt(a.segments()[i], share), pointAt(b.segments()[i], share)));
    }
  }
  return most;
}

// Whether every segment begins where the one before it ends, to the bit for straights and arcs.
inline bool isClosed(const core::geometry::Outline& outline) {
  const auto& segments = outline.segments();
  for (std::size_t i = 0; i < segments.size(); ++i) {
    const auto end = endOf(segments[i]);
    const auto start = startOf(segments[(i + 1) % segments.size()]);
    if (!(end == start) && !std::holds_alternative<core::geometry::OvalArc>(segments[i])) return false;
    if (distance(end, start) > 1e-9) return false;
  }
  return !segments.empty();
}

// The straights and the arcs in order.
template <typename Kind>
std::vector<Kind> allOf(const core::geometry::Outline& outline) {
  std::vector<Kind> found;
  for (const auto& segment : outline.segments()) {
    if (const auto* one = std::get_if<Kind>(&segment)) found.push_back(*one);
  }
  return found;
}

}  // namespace tests
