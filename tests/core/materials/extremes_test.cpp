// Every length of the demo jobs at its ends, alone and together, through everything that is computed of a job.
#include "core/base/json.h"
#include "core/design/design.h"
#include "core/materials/amounts.h"
#include "core/materials/cost.h"
#include "core/materials/cutting_list.h"
#include "core/materials/sheet_plan.h"
#include "core/materials/shortage.h"
#include "tests/support/catch.h"
#include "tests/support/files.h"

using namespace core;

namespace {

using base::Value;

// Everything the commands and the desk compute of a job that was read.
void computeAll(const design::Design& design) {
  const auto pieces = materials::cuttingList(design.job, design.layout);
  const materials::SheetsThere listed{.listed = design.job.stock};
  const auto plan = materials::planSheets(pieces, listed);
  const auto amounts = materials::amountsOf(design.job, design.layout);
  (void)materials::quoteOf(design.job, pieces, plan, amounts, units::Duration::minutes(10));
  // The same sheets lying in the shop, which serves what the file lists nothing for.
  const materials::SheetsThere shop{.shop = design.job.stock};
  (void)materials::shortageOf(pieces, listed, plan, amounts, design.job, {});
  (void)materials::shortageOf(pieces, shop, materials::planSheets(pieces, shop), amounts, design.job, {});
  for (const auto& piece : pieces) {
    CHECK(piece.neededWidth() > units::Length());
    CHECK(piece.neededWidth() <= units::kLongestLength);
    CHECK(piece.height <= units::kLongestLength);
  }
}

}  // namespace

TEST_CASE("no length at its end and no number at its end breaks what is computed of a job", "[limits]") {
  const std::vector<std::string> extremes = {"0 mm", "0.000001 mm", "0.1 mm", "9990 mm", "9999.999999 mm", "10000 mm"};
  std::size_t read = 0;
  for (const char* name : {"pilots-chart", "heron", "tide-table"}) {
    const auto json =
        base::parseJson(*tests::readWholeFile(std::string(PROJECT_ROOT) + "/recipes/jobs/" + name + ".job.json"));
    REQUIRE(json.readable);
    // Every place of a length, by itself at each end and together with every other.
    std::vector<std::string> places;
    const auto gather = [&](const auto& self, const Value& value, const std::string& pointer) -> void {
      if (value.kind() == Value::Kind::Text && units::parseLength(value.asText())) places.push_back(pointer);
      if (value.kind() == Value::Kind::Object) {
        for (const auto& [key, member] : value.members()) self(self, member, base::pointerTo(pointer, key));
      }
      if (value.kind() == Value::Kind::Array) {
        for (std::size_t i = 0; i < value.items().size(); ++i)
          self(self, value.items()[i], base::pointerTo(pointer, i));
      }
    };
    gather(gather, json.root, "");
    REQUIRE(places.size() > 10);
    const auto replace = [&](const std::string& place, const std::string& length) {
      return Value::object()
          .set("op", Value::text("replace"))
          .set("path", Value::text(place))
          .set("value", Value::text(length));
    };
    const auto compute = [&](const Value& patch) {
      const auto changed = base::patched(json.root, patch);
      REQUIRE(changed);
      const auto design = design::readDesign(base::writeJson(changed.value(), 0)).design;
      if (!design) return;
      ++read;
      computeAll(*design);
    };
    for (const std::string& place : places) {
      for (const std::string& length : extremes) {
        INFO(name << ' ' << place << ' ' << length);
        compute(Value::array().append(replace(place, length)));
      }
    }
    std::uint32_t state = 7;
    const auto dice = [&](std::size_t sides) {
      state = state * 1'664'525 + 1'013'904'223;
      return static_cast<std::size_t>(state >> 8) % sides;
    };
    for (int round = 0; round < 200; ++round) {
      Value patch = Value::array();
      for (const std::string& place : places) {
        if (dice(12) == 0) patch.append(replace(place, extremes[dice(extremes.size())]));
      }
      INFO(name << ' ' << base::writeJson(patch, 0));
      compute(patch);
    }
  }
  // Enough of them are jobs for the rest to mean something.
  CHECK(read > 150);
}
