#include "app/designing/usual.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "app/designing/builder.h"
#include "core/base/check.h"
#include "core/units/length_entry.h"

namespace app::designing {

using core::base::Value;
using core::units::Length;

namespace {

struct Row {
  Usual what;
  const char* millimetres;
  const char* inches;
};

// Common practice, no source. A dry end in inches is the least that a band of the usual width needs, and a little more;
// with millimetres the job file's own rule does it (20 mm, or 6 mm more than the width).
constexpr std::array kUsual = {
    Row{Usual::Nothing, "0 mm", "0 in"},
    Row{Usual::Overlap, "3 mm", "1/8 in"},
    Row{Usual::Air, "8 mm", "3/8 in"},
    Row{Usual::Board, "1.5 mm", "1/16 in"},
    Row{Usual::Reveal, "6 mm", "1/4 in"},
    Row{Usual::Border, "70 mm", "2 3/4 in"},
    Row{Usual::BottomMore, "13 mm", "1/2 in"},
    Row{Usual::MountSide, "500 mm", "20 in"},
    Row{Usual::Play, "3 mm", "1/8 in"},
    Row{Usual::Lip, "6 mm", "1/4 in"},
    Row{Usual::Glazing, "2 mm", "3/32 in"},
    Row{Usual::BackMount, "1.5 mm", "1/16 in"},
    Row{Usual::Backing, "3 mm", "1/8 in"},
    Row{Usual::Fixing, "3 mm", "1/8 in"},
    Row{Usual::BandGround, "10 mm", "3/8 in"},
    Row{Usual::BandWidth, "12 mm", "1/2 in"},
    Row{Usual::BandTrim, "6 mm", "1/4 in"},
    Row{Usual::BandDryEnd, "", "7/8 in"},
    Row{Usual::LineWidth, "1 mm", "1/32 in"},
    Row{Usual::LineGround, "5 mm", "1/4 in"},
    Row{Usual::WashGround, "12 mm", "1/2 in"},
    Row{Usual::WashWidth, "14 mm", "1/2 in"},
    Row{Usual::SpandrelFrame, "10 mm", "3/8 in"},
    Row{Usual::StepOfBands, "2 mm", "1/8 in"},
    Row{Usual::StepOfLines, "3 mm", "1/8 in"},
    Row{Usual::StepOfShapes, "1 mm", "1/8 in"},
};

// Where a fresh design has what.
constexpr std::array kOfAFreshDesign = {
    std::pair{"/mount/window/overlap", Usual::Overlap},
    std::pair{"/mount/boards/0/thickness", Usual::Board},
    std::pair{"/mount/borders/sides", Usual::Border},
};

// What a fresh design of inches has besides: with millimetres it is the job file's own and need not be written.
constexpr std::array kOfInchesBesides = {
    std::pair{"/mount/rebate/allowanceTotal", Usual::Play}, std::pair{"/mount/rebate/cover", Usual::Lip},
    std::pair{"/package/glazing", Usual::Glazing},          std::pair{"/package/backMount", Usual::BackMount},
    std::pair{"/package/backing", Usual::Backing},          std::pair{"/package/fixing", Usual::Fixing},
};

const char* entered(Usual what, UnitSystem units) {
  for (const Row& row : kUsual) {
    if (row.what == what) return units == UnitSystem::Inches ? row.inches : row.millimetres;
  }
  return "";
}

Length lengthOf(Usual what, UnitSystem units) {
  const auto parsed = core::units::parseLength(usual(what, units));
  ENSURE(parsed.ok());
  return parsed.value().length;
}

UnitSystem otherThan(UnitSystem units) {
  return units == UnitSystem::Inches ? UnitSystem::Millimetres : UnitSystem::Inches;
}

bool isUsual(const Value& document, const char* pointer, Usual what, UnitSystem units) {
  const Value* value = core::base::at(document, pointer);
  return value != nullptr && value->kind() == Value::Kind::Text && value->asText() == entered(what, units);
}

// Applies a patch to the document and appends it to the others. One that does not apply is left out.
void follow(Value& document, Value& patch, const Value& more) {
  auto patched = core::base::patched(document, more);
  if (!patched) return;
  document = std::move(patched).value();
  for (const Value& operation : more.items()) patch.append(operation);
}

void writeUsual(Value& document, Value& patch, UnitSystem units) {
  for (const auto& [pointer, what] : kOfAFreshDesign) {
    follow(document, patch, putAt(document, pointer, Value::text(entered(what, units))));
  }
  for (const auto& [pointer, what] : kOfInchesBesides) {
    const bool there = core::base::at(document, pointer) != nullptr;
    if (units == UnitSystem::Inches && !there) {
      follow(document, patch, putAt(document, pointer, Value::text(entered(what, units))));
    } else if (units == UnitSystem::Millimetres && isUsual(document, pointer, what, UnitSystem::Inches)) {
      follow(document, patch, patchOf({removeFrom(pointer)}));
    }
  }
}

}  // namespace

std::string usual(Usual what, UnitSystem units) { return entered(what, units); }

std::vector<std::string> ladder(Usual from, Usual step, UnitSystem units) {
  constexpr int kRungs = 16;
  std::vector<std::string> rungs;
  for (int i = 0; i < kRungs; ++i) {
    rungs.push_back(core::units::entryText(lengthOf(from, units) + i * lengthOf(step, units), units));
  }
  return rungs;
}

std::string wholeInSteps(double millimetres, UnitSystem units) {
  const Length step = lengthOf(Usual::StepOfShapes, units);
  const auto steps = static_cast<std::int64_t>(std::round(millimetres / step.inMillimetres()));
  return core::units::entryText(std::max<std::int64_t>(1, steps) * step, units);
}

std::optional<UnitSystem> unitsOf(const Value& document) {
  const Value* width = core::base::at(document, "/artwork/width");
  if (width == nullptr || width->kind() != Value::Kind::Text) return std::nullopt;
  const auto parsed = core::units::parseLength(width->asText());
  if (!parsed) return std::nullopt;
  return parsed.value().unit == core::units::LengthUnit::Inch ? UnitSystem::Inches : UnitSystem::Millimetres;
}

Value withUsual(Value document, UnitSystem units) {
  Value patch = Value::array();
  writeUsual(document, patch, units);
  return document;
}

Value inTheUnitsOf(const Value& document, Value patch) {
  if (unitsOf(document)) return patch;
  const auto after = core::base::patched(document, patch);
  const auto units = after ? unitsOf(after.value()) : std::nullopt;
  if (!units) return patch;
  const bool untouched = std::all_of(kOfAFreshDesign.begin(), kOfAFreshDesign.end(), [&](const auto& row) {
    return isUsual(document, row.first, row.second, otherThan(*units));
  });
  if (!untouched) return patch;
  Value changed = after.value();
  writeUsual(changed, patch, *units);
  return patch;
}

}  // namespace app::designing
