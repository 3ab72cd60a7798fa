#include "tests/recipes/made_up_jobs.h"

#include <algorithm>
#include <vector>

#include "core/base/text.h"
#include "tests/support/catch.h"

namespace tests {
namespace {

using core::craft::ThingKind;

std::string listOf(const std::vector<std::string>& items) { return '[' + core::base::join(items, ", ") + ']'; }

std::string boardsOf(const MadeUp& madeUp) {
  const std::vector<std::string> ids = {"top", "middle", "inmost"};
  std::vector<std::string> boards;
  for (int i = 0; i < madeUp.boards; ++i) {
    const auto at = static_cast<std::size_t>(i);
    const std::string thickness = at < madeUp.thickness.size() ? madeUp.thickness[at] : "1.5 mm";
    const int angle = at < madeUp.angle.size() ? madeUp.angle[at] : 45;
    boards.push_back(R"({"id": ")" + ids[at] + R"(", "thickness": ")" + thickness + '"' +
                     (i > 0 ? R"(, "reveal": "6 mm")" : "") + R"(, "bevel": {"angle": )" + std::to_string(angle) +
                     (madeUp.coloured ? R"(, "colour": "slate"}})" : "}}"));
  }
  return listOf(boards);
}

std::string bandsOf(const MadeUp& madeUp) {
  std::vector<std::string> bands;
  for (int i = 0; i < madeUp.bands; ++i) {
    bands.push_back(R"({"id": ")" + std::string(i == 0 ? "near" : "far") +
                    R"(", "paper": "ripple print", "offset": "16 mm", "width": "10 mm", "trim": "5 mm",
                        "repeat": "20 mm", "motif": "mirror", "grain": "along"})");
  }
  return listOf(bands);
}

std::string linesOf(const MadeUp& madeUp) {
  std::vector<std::string> lines;
  const auto add = [&](const std::string& id, const std::string& along) {
    lines.push_back(R"({"id": ")" + id + R"(", "along": ")" + along +
                    R"(", "gap": "4 mm", "width": "0.5 mm", "colour": "copper"})");
  };
  if (madeUp.lineAlongWindow) add("hair", "window");
  if (madeUp.lineAlongBand) add("rim", "band:near.outer");
  return listOf(lines);
}

std::string leafOf(const MadeUp& madeUp) {
  std::vector<std::string> fields;
  for (const auto& [region, members] : madeUp.leaf) {
    fields.push_back(R"({"id": "field-)" + std::to_string(fields.size() + 1) + R"(", "region": ")" + region + "\", " +
                     members + '}');
  }
  return listOf(fields);
}

std::string techniquesOf(const MadeUp& madeUp) {
  std::vector<std::string> choices;
  for (const auto& [role, id] : madeUp.techniques) choices.push_back('"' + role + "\": \"" + id + '"');
  return '{' + core::base::join(choices, ", ") + '}';
}

std::string spandrelsOf(const MadeUp& madeUp) {
  if (!madeUp.spandrel) return "[]";
  const std::string frame = madeUp.bands > 0 ? R"({"band": "near"}, "under": "2 mm")" : R"({"offset": "20 mm"})";
  return R"([{"id": "crown", "paper": "reed print", "frame": )" + frame + "}]";
}

std::string washesOf(const MadeUp& madeUp) {
  if (madeUp.washOrder.empty()) return "[]";
  return R"([{"id": "tide", "colour": "pale green", "along": ")" +
         std::string(madeUp.bands > 1 ? "band:far.outer" : "window") +
         R"(", "gap": "3 mm", "width": "8 mm", "order": ")" + madeUp.washOrder + "\"}]";
}

std::string textOf(const MadeUp& madeUp) {
  return R"({"format": "mountwright-job/1",
    "artwork": {"width": "200 mm", "height": "260 mm"},
    "mount": {"window": {"shape": )" +
         std::string(madeUp.arched ? R"("arch", "head": "round")" : R"("rectangle")") +
         (madeUp.floats ? R"(, "margin": "5 mm"}, "boards": )" : R"(, "overlap": "3 mm"}, "boards": )") +
         boardsOf(madeUp) + R"(, "borders": {"sides": "110 mm", "weighting": "equal"}}, "bands": )" + bandsOf(madeUp) +
         ", \"lines\": " + linesOf(madeUp) + ", \"spandrels\": " + spandrelsOf(madeUp) +
         ", \"washes\": " + washesOf(madeUp) + ", \"leaf\": " + leafOf(madeUp) +
         ", \"techniques\": " + techniquesOf(madeUp) + ", \"deliver\": \"" + madeUp.deliver +
         "\", \"count\": " + std::to_string(madeUp.count) +
         (madeUp.spacer ? R"(, "package": {"spacer": "5 mm"}})" : "}");
}

// What a technique asks of a property, or `otherwise` where it does not ask.
std::string wanted(const core::craft::Where& where, const std::string& property, const std::string& otherwise) {
  const auto found = where.find(property);
  return found == where.end() ? otherwise : found->second.front();
}

std::string field(const std::string& method, const std::string& size) {
  return R"("method": ")" + method + R"(", "size": ")" + size + '"' +
         (method == "scattered" ? R"(, "coverage": 0.2)" : "");
}

}  // namespace

MadeUp switchingOn(const core::craft::Technique& technique) {
  MadeUp madeUp;
  const core::craft::When& when = technique.when;
  const auto asks = [&](const std::string& property, const std::string& otherwise) {
    return wanted(when.where, property, otherwise);
  };
  switch (when.kind) {
    case ThingKind::Board:
      madeUp.boards = std::max(when.least, asks("place", "only") == "only" ? 1 : 3);
      madeUp.arched = asks("window", "straight") == "shaped";
      break;
    case ThingKind::Bevel: madeUp.coloured = true; break;
    case ThingKind::Band:
    case ThingKind::Strip:
    case ThingKind::Corner: madeUp.bands = 1; break;
    case ThingKind::Line:
      madeUp.lineAlongWindow = true;
      madeUp.arched = asks("course", "straight") == "curved";
      break;
    case ThingKind::Spandrel: madeUp.spandrel = madeUp.arched = true; break;
    case ThingKind::Wash: madeUp.washOrder = asks("order", "linesFirst"); break;
    case ThingKind::Leaf: {
      const bool onBand = asks("region", "face") == "on";
      const std::string method = asks("method", "laid");
      if (onBand) madeUp.bands = 1;
      madeUp.leaf[onBand ? "on:near" : "face"] =
          field(method, asks("size", method == "laid" ? "water" : "methylCellulose"));
      break;
    }
    case ThingKind::Once:
    case ThingKind::Part: break;
  }
  if (!technique.role.empty()) madeUp.techniques[technique.role] = technique.id;
  suit(madeUp, technique);
  return madeUp;
}

void suit(MadeUp& madeUp, const core::craft::Technique& technique) {
  for (const auto& [circumstance, values] : technique.when.circumstances) {
    switch (circumstance) {
      case core::craft::Circumstance::Deliver: madeUp.deliver = values.back(); break;
      case core::craft::Circumstance::Artwork: madeUp.floats = values.front() == "float"; break;
      case core::craft::Circumstance::Spacer: madeUp.spacer = values.front() == "yes"; break;
      case core::craft::Circumstance::Decorated: madeUp.coloured = values.front() == "yes"; break;
    }
  }
}

MadeUp everything(const std::string& washOrder) {
  MadeUp madeUp;
  madeUp.boards = 3;
  madeUp.coloured = madeUp.arched = madeUp.lineAlongBand = true;
  // A spandrel covers the ground a line round the head would run on.
  madeUp.spandrel = washOrder == "linesFirst";
  madeUp.lineAlongWindow = !madeUp.spandrel;
  madeUp.bands = 2;
  madeUp.washOrder = washOrder;
  madeUp.leaf = {{"on:near", field("scattered", "methylCellulose")},
                 {"outside:far", field("scattered", "starch")},
                 {"inside:near", field("laid", "water")},
                 {"on:far", field("laid", "oil")}};
  return madeUp;
}

core::design::Design designOf(const MadeUp& madeUp) {
  auto read = core::design::readDesign(textOf(madeUp));
  for (const auto& problem : read.problems.sorted()) UNSCOPED_INFO(core::base::dump(problem));
  REQUIRE(read.design);
  return *std::move(read.design);
}

}  // namespace tests
