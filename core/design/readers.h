#pragma once
// Readers of the value kinds a job file uses, each reporting at its place.
#include <optional>
#include <set>
#include <string>

#include "core/base/strict_reader.h"
#include "core/design/job.h"

namespace core::design {

using base::Node;
using base::ObjectReader;
using base::Problems;

// The range a length may have.
enum class LengthRange {
  Size,      // more than zero: a width, a thickness, a radius
  Distance,  // zero or more: an offset, an allowance
  Signed,    // a line's gap
};

std::optional<units::ParsedLength> readLengthWithUnit(const Node& node, LengthRange range, Problems& problems);
std::optional<Length> readLength(const Node& node, LengthRange range, Problems& problems);
// Leaves `target` as it is where the key is absent; returns false where it was present and wrong.
bool readInto(const Node& node, LengthRange range, Length& target, Problems& problems);

// Reads an id: "[a-z][a-z0-9-]{0,31}", not reserved, not yet in `taken`. Adds it there.
std::optional<std::string> readId(const Node& node, std::set<std::string>& taken, Problems& problems);

// "100 ml/m2": 0 < spread <= 10 000.
std::optional<double> readSpread(const Node& node, Problems& problems);

// "equal", "4:3" (bottom to top, two positive decimals), "+6 mm" (bottom = top + 6 mm).
std::optional<Weighting> readWeighting(const Node& node, Problems& problems);

Place placeOf(const Node& node);

}  // namespace core::design
